import type { Host } from "../../../../src/workbench/host/create-host.ts";
import { ExcelError } from "../../../../src/workbench/host/excel-error.ts";

/** How many steps of each trip change something; trips that carry nothing are left out. */
export type Trips = readonly number[];

/** Counts while `work` runs. */
export async function tripsOf(host: Host, work: () => Promise<unknown>): Promise<Trips> {
  const { session } = host;
  const execute = session.execute.bind(session);
  const trips: number[] = [];
  session.execute = (steps) => {
    if (steps.length > 0) trips.push(steps.filter(({ kind }) => kind === "change").length);
    execute(steps);
  };
  try {
    await work();
  } finally {
    session.execute = execute;
  }
  return trips;
}

/** Where Excel stops: in this trip, counted from 0, after so many of its changes. */
export interface Place {
  readonly trip: number;
  readonly changes: number;
}

/** Every state that a workbook can be left in between two changes, the whole batch without an answer included. */
export const placesIn = (trips: Trips): readonly Place[] =>
  trips.flatMap((count, trip) => Array.from({ length: count + 1 }, (_, changes) => ({ trip, changes })));

/** Excel stops once and goes on with the next trip, or stays away. */
export type Manner = "once" | "for good";

/** Excel stops there while `work` runs; gives what `work` was rejected with, if it was. */
export async function brokenOff(
  host: Host,
  { trip, changes }: Place,
  code: string,
  manner: Manner,
  work: () => Promise<unknown>,
): Promise<unknown> {
  const { session } = host;
  const execute = session.execute.bind(session);
  let at = -1;
  session.execute = (steps) => {
    if (steps.length > 0) at += 1;
    if (steps.length === 0 || at < trip || (at > trip && manner === "once")) {
      execute(steps);
      return;
    }
    if (at === trip) {
      const places = steps.flatMap(({ kind }, index) => (kind === "change" ? [index] : []));
      execute(steps.slice(0, places[changes] ?? steps.length));
    }
    // The stand-in itself raises but few of Excel's codes.
    throw Object.assign(new ExcelError("GeneralException", "The request failed."), { code });
  };
  try {
    return await work().then(
      () => undefined,
      (error: unknown) => error,
    );
  } finally {
    session.execute = execute;
  }
}
