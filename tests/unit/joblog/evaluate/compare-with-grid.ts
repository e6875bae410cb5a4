import { asShown, type Scalar } from "../../../../src/joblog/evaluate/cell-value.ts";
import { EvaluatedLog } from "../../../../src/joblog/evaluate/evaluated-log.ts";
import type { TableId } from "../../../../src/joblog/formula/log-types.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import type { Cells, RowValue } from "../../../../src/joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";

/** What two programs make of the same formulas: cells that they agree on, and the others in words. */
export interface Comparison {
  readonly agreed: number;
  readonly unlike: readonly string[];
}

/** How far two programs may be apart in a number, relative to it: they add up in other orders. */
const tolerance = 1e-9;

function same(ours: RowValue | undefined, theirs: RowValue | undefined): boolean {
  if (typeof ours !== "number" || typeof theirs !== "number") return ours === theirs;
  return Math.abs(ours - theirs) <= tolerance * Math.max(1, Math.abs(theirs));
}

const rowsOf = (log: LogSnapshot, table: TableId): readonly AnyRow[] => log.rows[table];

/** Works every computed cell and field of a log out anew and lays it beside what the grid shows. */
export function compareWithGrid(log: LogSnapshot): Comparison {
  const worked = new EvaluatedLog(jobLog, log, [], "everything");
  const held: Cells = log.fields;
  const unlike: string[] = [];
  let agreed = 0;
  const compare = (where: string, value: Scalar | undefined, grid: RowValue | undefined): void => {
    const ours = value === undefined ? "no such cell" : asShown(value);
    if (same(ours, grid)) agreed += 1;
    else unlike.push(`${where}: ${String(ours)} here, ${String(grid)} in the grid`);
  };
  for (const { tables, fields } of jobLog.sheets) {
    for (const { id: table, columns } of tables)
      for (const { id, role } of columns)
        if (role === "computed")
          for (const { position, cells } of rowsOf(log, table))
            compare(`${table}.${id} in row ${String(position)}`, worked.cell(table, id, position), cells[id]);
    for (const { id, formula } of fields) if (formula !== undefined) compare(id, worked.named(id), held[id]);
  }
  return { agreed, unlike };
}
