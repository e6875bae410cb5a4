import type { TableId } from "../../joblog/formula/log-types.ts";
import type { Cells, LogDefinition, LogRow } from "../../joblog/model/definition.ts";
import { LogProblem } from "../office-problems.ts";
import { columnBodies, loadColumn, type LoadedColumn, type LoadedTable, loadTable } from "./loaded-table.ts";

/** Cells of an earlier row, found by its key in the table's first column, that are filled in if they are blank. */
export type BlankFill = {
  readonly [Table in TableId]: { readonly table: Table; readonly key: string; readonly cells: LogRow<Table> };
}[TableId];

/** What is filled in of a row, whichever table it stands in. */
interface RowFill {
  readonly key: string;
  readonly cells: Cells;
}

/** A table as one read trip found it, and what is to go into it. Of its cells only a few are read, however long it is. */
export interface AppendTarget extends LoadedTable {
  readonly below: Excel.Range;
  /** The part of each input column that holds something, by its extent alone. */
  readonly used: readonly LoadedColumn[];
  /** Whole columns, only those that a fill fills in. */
  readonly read: readonly LoadedColumn[];
  readonly rows: readonly Cells[];
  readonly fills: readonly RowFill[];
}

/** Asks for everything that planning needs; readable after the next sync. */
export function loadAppendTarget(
  context: Excel.RequestContext,
  log: LogDefinition,
  id: TableId,
  rows: readonly Cells[],
  fills: readonly RowFill[],
): AppendTarget {
  const found = loadTable(context, log, id);
  const { table, definition } = found;
  const body = found.body.load("rowIndex,rowCount,columnCount");
  const inputs = rows.length === 0 ? [] : definition.columns.filter(({ role }) => role === "input");
  const looked = definition.columns.filter((column) => fills.some(({ cells }) => cells[column.id] !== undefined));
  return {
    ...found,
    body,
    below: body.getRowsBelow(Math.max(1, rows.length)).load("values"),
    used: inputs.flatMap((column) =>
      columnBodies(table, column).map((range) => ({
        column,
        range: range.getUsedRangeOrNullObject(true).load("rowIndex,rowCount"),
      })),
    ),
    read: looked.flatMap((column) => loadColumn(table, column)),
    rows,
    fills,
  };
}

/** Throws a LogProblem where the sheet is protected. */
export function refuseIfLocked(worksheet: Excel.Worksheet): void {
  if (!worksheet.protection.protected) return;
  throw new LogProblem({
    what: `The sheet ${worksheet.name} is protected, so nothing was written.`,
    remedy: "Unprotect it (Review, Unprotect Sheet), then try again. Your entry stays here.",
  });
}

/** Throws a LogProblem where the workbook cannot be written. */
export function refuseIfReadOnly(workbook: Excel.Workbook): void {
  if (!workbook.readOnly) return;
  throw new LogProblem({
    what: "This workbook is open for reading only.",
    remedy: "Save a copy (File, Save a Copy) and record there. Your entry stays here.",
  });
}
