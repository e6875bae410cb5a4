import type { RowCounts, SettledCounts, Write } from "./recalculation.ts";

/** A busy shop's log with so many readings: a bath is read some thirty times before it is changed out. */
export function shopCounts(readings: number): RowCounts {
  const baths = Math.ceil(readings / 30);
  return {
    claims: baths,
    tanks: 2,
    waters: 2,
    concentrates: 2,
    baths,
    benchTests: baths * 4,
    readings,
    additions: baths * 8,
    loads: readings,
    items: readings,
    meterChecks: Math.ceil(readings / 10),
    care: baths * 3,
    stockMoves: baths,
    releases: baths,
    costLines: baths * 2,
  };
}

/** All but a few baths in use are closed and settled, with their rows. */
export function settledCounts(counts: RowCounts, inUse: number): SettledCounts {
  const { baths = 0 } = counts;
  const share = Math.max(0, baths - inUse) / baths;
  return Object.fromEntries(
    (["baths", "readings", "additions", "releases"] as const).map((table) => [
      table,
      Math.floor((counts[table] ?? 0) * share),
    ]),
  );
}

/** What each kind of entry writes. */
export const entryWrites = {
  reading: { adds: { readings: 1 } },
  "top-up": { adds: { additions: 1 } },
  "pH after a top-up": { changes: { additions: ["phAfter", "minutesMixed"] } },
  load: { adds: { loads: 1 } },
  item: { adds: { items: 1 } },
  "bench test": { adds: { benchTests: 4 } },
  care: { adds: { care: 1 } },
  "cost line": { adds: { costLines: 1 } },
  "count in": { adds: { itemCounts: 1 } },
  "stock move": { adds: { stockMoves: 1 } },
  release: { adds: { releases: 1 } },
  "meter check": { adds: { meterChecks: 1 } },
  "reading corrected": { changesFirst: { readings: ["ph"] } },
  // The pane writes the bath's row with the readings.
  baseline: {
    adds: { readings: 3 },
    changes: {
      baths: ["baseline", "baselineTemperature", "baselineSetAt", "baselineSetBy", "baselineFrom", "baselineAsRead"],
    },
  },
  "change-out": { changes: { baths: ["closed", "closeReason"] } },
  charge: { adds: { baths: 1, additions: 2 } },
} as const satisfies Readonly<Record<string, Write>>;

export type EntryKind = keyof typeof entryWrites;
