/** Words that Excel shows while a function has not answered yet. */
const unfinished: readonly unknown[] = ["#BUSY!", "#GETTING_DATA", "#CONNECT!"];

const patience = 5000;
const step = 100;

/** A cell's values one after another, each with when it was first seen after the start. */
export interface Sighting {
  readonly value: unknown;
  readonly after: number;
}

interface Watching {
  readonly context: Excel.RequestContext;
  readonly cell: Excel.Range;
  readonly pause: (milliseconds: number) => Promise<void>;
}

/** Reads the cell for 5 s, or until it has shown an `end` for a second. */
export async function watchCell(
  { context, cell, pause }: Watching,
  isEnd: (value: unknown) => boolean,
): Promise<readonly Sighting[]> {
  const start = performance.now();
  const sightings: Sighting[] = [];
  const look = async (at: number): Promise<void> => {
    cell.load("values");
    await context.sync();
    const value: unknown = cell.values[0]?.[0];
    if (at === 0 || sightings.at(-1)?.value !== value)
      sightings.push({ value, after: Math.round(performance.now() - start) });
    const steadySince = sightings.at(-1)?.after ?? 0;
    const steady = isEnd(value) && performance.now() - start - steadySince > 1000;
    if (steady || at >= patience) return;
    await pause(step);
    await look(at + step);
  };
  await look(0);
  return sightings;
}

/** A cell's value once Excel has worked it out, or what it shows after 5 s. */
export async function settledValue({ context, cell, pause }: Watching): Promise<unknown> {
  const look = async (at: number): Promise<unknown> => {
    cell.load("values");
    await context.sync();
    const value: unknown = cell.values[0]?.[0];
    if (!unfinished.includes(value) || at >= patience) return value;
    await pause(step);
    return look(at + step);
  };
  return look(0);
}
