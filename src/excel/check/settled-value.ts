import { spelled } from "./excel-check.ts";

/** Words that Excel shows while a function has not answered yet, or is not registered yet. */
const unfinished: readonly unknown[] = ["#BUSY!", "#GETTING_DATA", "#CONNECT!", "#NAME?"];

const patience = 5000;
const step = 100;

/** A cell's values one after another, each with when it was first seen after the start. */
export interface Sighting {
  readonly value: unknown;
  readonly after: number;
}

/** The part of a range that is used. */
interface WatchedCell {
  readonly load: (property: "values") => unknown;
  readonly values: readonly (readonly unknown[])[];
}

interface Watching {
  readonly context: { readonly sync: () => Promise<unknown> };
  readonly cell: WatchedCell;
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

/** "#BUSY! after 5 ms, then 2 after 130 ms" */
export const timeLine = (sightings: readonly Sighting[]): string =>
  sightings.map(({ value, after }) => `${spelled(value)} after ${String(after)} ms`).join(", then ");

/** Whether the value came, and before it nothing but words of waiting. */
export const neverAnother = (sightings: readonly Sighting[], value: number): boolean =>
  sightings.at(-1)?.value === value && sightings.every((one) => one.value === value || unfinished.includes(one.value));
