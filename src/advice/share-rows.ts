import type { LogRow } from "../joblog/model/definition.ts";
import type { LogSnapshot } from "../joblog/model/log-snapshot.ts";
import { folded } from "../joblog/model/same-text.ts";

/** A claim in a bath. */
interface Visit {
  readonly bath: string;
  readonly claim: string;
}

interface NewShare {
  readonly table: "shares";
  readonly row: LogRow<"shares">;
}

const keyOf = ({ bath, claim }: Visit): string => JSON.stringify([folded(bath), folded(claim)]);

/** The visits that rows tell of; a row without bath or claim tells of none. */
export function visitsIn(rows: readonly { readonly cells: LogRow<"loads"> | LogRow<"shares"> }[]): readonly Visit[] {
  const visits = new Map<string, Visit>();
  for (const { cells } of rows) {
    if (cells.bath === undefined || cells.claim === undefined) continue;
    const visit = { bath: String(cells.bath), claim: String(cells.claim) };
    if (!visits.has(keyOf(visit))) visits.set(keyOf(visit), visit);
  }
  return [...visits.values()];
}

/** The rows that Shares lacks for loads: without one a claim pays nothing for the bath. */
export function missingShares(
  log: LogSnapshot,
  loads: readonly { readonly cells: LogRow<"loads"> }[] = log.rows.loads,
): readonly NewShare[] {
  const listed = new Set(visitsIn(log.rows.shares).map(keyOf));
  return visitsIn(loads)
    .filter((visit) => !listed.has(keyOf(visit)))
    .map(({ bath, claim }) => ({ table: "shares", row: { bath, claim } }));
}

/** Those of them whose bath and claim the log knows: a slip in a name is put right in its load, not copied into Shares. */
export function sharesToAdd(log: LogSnapshot): readonly NewShare[] {
  const baths = new Set(log.rows.baths.map(({ cells }) => folded(String(cells.bath ?? ""))));
  const claims = new Set(log.rows.claims.map(({ cells }) => folded(String(cells.claim ?? ""))));
  return missingShares(log).filter(
    ({ row }) => baths.has(folded(String(row.bath ?? ""))) && claims.has(folded(String(row.claim ?? ""))),
  );
}
