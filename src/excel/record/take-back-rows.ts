import type { TableId } from "../../joblog/formula/log-types.ts";
import type { Cells, ColumnDefinition, LogDefinition, RowValue } from "../../joblog/model/definition.ts";
import { findField } from "../../joblog/model/references.ts";
import { LogProblem } from "../office-problems.ts";
import { columnPositions, systemOf } from "../table-columns.ts";
import { refuseIfLocked, refuseIfReadOnly, tableOf } from "./append-target.ts";
import { type AnyChange, loadChanges, planChanges } from "./cell-changes.ts";
import type { FilledCells, Receipt, WrittenRow } from "./receipt.ts";

interface LoadedTable {
  readonly id: TableId;
  readonly table: Excel.Table;
  readonly worksheet: Excel.Worksheet;
  readonly headers: Excel.Range;
  readonly body: Excel.Range;
  readonly rows: ReadonlyMap<number, Excel.Range>;
}

const changedSince = (table: string): LogProblem =>
  new LogProblem({
    what: `The last entry (table ${table}) was changed since, moved by sorting or deleted, so it was not taken back. Nothing was changed.`,
    remedy: "Correct it in the sheet, or delete its row there.",
  });

/** The rows by their present cells; a row beyond the table's end gives cells that do not match. */
function load(
  context: Excel.RequestContext,
  log: LogDefinition,
  id: TableId,
  positions: readonly number[],
): LoadedTable {
  const table = context.workbook.tables.getItem(tableOf(log, id).table.name);
  const { worksheet } = table;
  worksheet.load("name");
  worksheet.protection.load("protected");
  const body = table.getDataBodyRange().load("rowIndex,columnIndex,rowCount,columnCount");
  return {
    id,
    table,
    worksheet,
    headers: table.getHeaderRowRange().load("values"),
    body,
    rows: new Map(positions.map((position) => [position, body.getRow(0).getOffsetRange(position, 0).load("values")])),
  };
}

/** Whether every cell still holds what was written; `undefined` was left blank. */
function isUnchanged(
  line: readonly unknown[],
  cells: Cells,
  columns: readonly (readonly [ColumnDefinition, number])[],
): boolean {
  return columns.every(([column, at]) => line[at] === (cells[column.id] ?? ""));
}

/** Data rows, last first, that may be cut off the end of a table: those that it grew for and that are still its last. */
function cutRows(rows: readonly WrittenRow[], rowCount: number): ReadonlySet<WrittenRow> {
  const cut = new Set<WrittenRow>();
  for (const row of [...rows].sort((a, b) => b.position - a.position)) {
    if (!row.grown || row.position !== rowCount - 1 - cut.size) break;
    cut.add(row);
  }
  return cut;
}

/** Columns that people type into, with their places in the table. */
type Inputs = readonly (readonly [ColumnDefinition, number])[];

function blank({ worksheet, body }: LoadedTable, position: number, columns: Inputs): void {
  for (const [, at] of columns)
    worksheet.getRangeByIndexes(body.rowIndex + position, body.columnIndex + at, 1, 1).clear("Contents");
}

/** Rows at the end go with all they hold; others are blanked, and the next entry takes them if they are the last. */
function removeRows(found: LoadedTable, rows: readonly WrittenRow[], inputs: Inputs): void {
  const { table, worksheet, body } = found;
  const { rowIndex, columnIndex, rowCount, columnCount } = body;
  const cut = cutRows(rows, rowCount);
  for (const row of rows) if (!cut.has(row)) blank(found, row.position, inputs);
  if (cut.size === 0) return;
  table.resize(worksheet.getRangeByIndexes(rowIndex - 1, columnIndex, rowCount + 1 - cut.size, columnCount));
  worksheet.getRangeByIndexes(rowIndex + rowCount - cut.size, columnIndex, cut.size, columnCount).clear();
}

function given(cells: Cells): readonly [string, RowValue | undefined][] {
  return Object.entries(cells).filter(([, value]) => value !== undefined);
}

function refuseIfChanged(
  found: LoadedTable,
  name: string,
  rows: readonly WrittenRow[],
  fills: readonly FilledCells[],
  inputs: Inputs,
): void {
  const line = (position: number): readonly unknown[] => found.rows.get(position)?.values[0] ?? [];
  const [key] = inputs;
  const unchangedFill = ({ position, key: text, cells }: FilledCells): boolean => {
    const filled = inputs.filter(([column]) => cells[column.id] !== undefined);
    return key !== undefined && String(line(position)[key[1]]) === text && isUnchanged(line(position), cells, filled);
  };
  const whole = rows.every(
    ({ position, cells }) => position < found.body.rowCount && isUnchanged(line(position), cells, inputs),
  );
  if (!whole || !fills.every(unchangedFill)) throw changedSince(name);
}

function undone(change: AnyChange): AnyChange {
  const cells = Object.entries(change.cells).map(
    ([id, { before, after }]) => [id, { before: after, after: before }] as const,
  );
  return { ...change, cells: Object.fromEntries(cells) };
}

/**
 * Takes one entry back: its rows are emptied (cut off where the table had grown for them), the cells
 * that it filled in are blank again, those that it changed hold what they held before. One read trip, one write trip. Throws a LogProblem, with nothing
 * changed, where any of its cells holds something else by now.
 */
export async function removeEntry(
  context: Excel.RequestContext,
  log: LogDefinition,
  { rows, fills, changes }: Receipt,
  sending: () => void,
): Promise<void> {
  const unitCell = context.workbook.names.getItem(findField(log, "unitSystem").name).getRange().load("values");
  context.workbook.load("readOnly");
  const ids = [...new Set([...rows, ...fills].map(({ table }) => table))];
  const tables = ids.map((id) =>
    load(
      context,
      log,
      id,
      [...rows, ...fills].filter(({ table }) => table === id).map(({ position }) => position),
    ),
  );
  const changed = loadChanges(context, log, { rows: changes.map(undone) });
  await context.sync();
  refuseIfReadOnly(context.workbook);
  const system = systemOf(unitCell.values[0]?.[0]);
  const undo = planChanges(changed, log, system);
  const work = tables.map((found) => {
    const { table, sheet } = tableOf(log, found.id);
    const inputs: Inputs = [...columnPositions(table, sheet.name, found.headers.values[0] ?? [], system)].filter(
      ([{ role }]) => role === "input",
    );
    const ofTable = {
      rows: rows.filter((one) => one.table === found.id),
      fills: fills.filter((one) => one.table === found.id),
    };
    refuseIfLocked(found.worksheet);
    refuseIfChanged(found, table.name, ofTable.rows, ofTable.fills, inputs);
    return { found, inputs, ...ofTable };
  });
  for (const { found, inputs, rows: written, fills: filled } of work) {
    for (const { position, cells } of filled) {
      const ids = new Set(given(cells).map(([id]) => id));
      blank(
        found,
        position,
        inputs.filter(([{ id }]) => ids.has(id)),
      );
    }
    removeRows(found, written, inputs);
  }
  for (const one of undo) one();
  sending();
  await context.sync();
}
