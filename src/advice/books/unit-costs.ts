import type { LogRow, NewRow } from "../../joblog/model/definition.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { draftedLog } from "../drafted-row.ts";

interface Addition {
  readonly table: "additions";
  readonly row: LogRow<"additions">;
}

/** Rows that are about to be recorded, each addition among them with the unit cost that a later price is to leave alone. */
export function withUnitCosts(rows: readonly Addition[], log: LogSnapshot): readonly Addition[];
export function withUnitCosts(rows: readonly NewRow[], log: LogSnapshot): readonly NewRow[];
export function withUnitCosts(rows: readonly NewRow[], log: LogSnapshot): readonly NewRow[] {
  const drafted = draftedLog(log, rows);
  const additions = rows.filter(({ table }) => table === "additions");
  return rows.map((added) =>
    added.table === "additions"
      ? {
          ...added,
          row: { ...added.row, unitCost: drafted.added("additions", additions.indexOf(added)).number("averageThen") },
        }
      : added,
  );
}
