import type { Cells, LogDefinition } from "../../joblog/model/definition.ts";
import { findField } from "../../joblog/model/references.ts";
import { cellValue } from "../cell-text.ts";
import { systemOf } from "../table-columns.ts";
import { loadAppendTarget, refuseIfReadOnly } from "./append-target.ts";
import { type AnyChange, loadChanges, planChanges } from "./cell-changes.ts";
import type { LogEdit } from "./log-edit.ts";
import { type PlannedTable, planTable } from "./plan-rows.ts";
import type { FilledCells, Receipt, WrittenRow } from "./receipt.ts";

function grow({ target, extra }: PlannedTable): void {
  const { body, worksheet } = target;
  const { rowIndex, columnIndex, rowCount, columnCount } = body;
  target.table.resize(worksheet.getRangeByIndexes(rowIndex - 1, columnIndex, rowCount + 1 + extra, columnCount));
  worksheet
    .getRangeByIndexes(rowIndex + rowCount, columnIndex, extra, columnCount)
    .copyFrom(worksheet.getRangeByIndexes(rowIndex + rowCount - 1, columnIndex, 1, columnCount), "Formats");
}

function write({ target, lines, fills }: PlannedTable): void {
  const { rowIndex, columnIndex, columnCount } = target.body;
  for (const { position, at, value } of fills) {
    target.worksheet.getRangeByIndexes(rowIndex + position, columnIndex + at, 1, 1).values = [[cellValue(value)]];
  }
  for (const { position, line } of lines) {
    target.worksheet.getRangeByIndexes(rowIndex + position, columnIndex, 1, columnCount).formulas = [[...line]];
  }
}

function filledCells({ target, fills }: PlannedTable): readonly FilledCells[] {
  const table = target.definition.id;
  const byPosition = new Map<number, FilledCells>();
  for (const { position, key, column, value } of fills) {
    const cells: Cells = {
      ...byPosition.get(position)?.cells,
      [column]: value,
    };
    byPosition.set(position, { table, position, key, cells });
  }
  return [...byPosition.values()];
}

function receiptFor(planned: readonly PlannedTable[], changes: readonly AnyChange[]): Receipt {
  return {
    rows: planned.flatMap(({ target, lines }) =>
      lines.map(({ position, row }): WrittenRow => ({
        table: target.definition.id,
        position,
        cells: row,
        grown: position >= target.body.rowCount,
      })),
    ),
    fills: planned.flatMap(filledCells),
    changes,
  };
}

/**
 * Writes an edit to one or more tables: one read trip, one write trip; a third only where Excel did not
 * grow a table as told. What is read does not grow with the log, but for the columns that a fill looks
 * at. Everything that can be checked is checked before the first cell is written. A row goes beneath
 * the last one that holds something typed; calculated columns get their formulas. Nothing that is
 * written already is overwritten but the cells of `changes`; of these the receipt speaks of rows, not of named cells.
 */
export async function writeEdit(context: Excel.RequestContext, log: LogDefinition, edit: LogEdit): Promise<Receipt> {
  const { rows = [], fills = [], changes = [], fields = {} } = edit;
  const unitCell = context.workbook.names.getItem(findField(log, "unitSystem").name).getRange().load("values");
  context.workbook.load("readOnly");
  const targets = [...new Set([...rows, ...fills].map(({ table }) => table))].map((table) =>
    loadAppendTarget(
      context,
      log,
      table,
      rows.filter((one) => one.table === table).map(({ row }) => row),
      fills.filter((one) => one.table === table),
    ),
  );
  const loaded = loadChanges(context, log, { fields, rows: changes });
  await context.sync();
  refuseIfReadOnly(context.workbook);
  const system = systemOf(unitCell.values[0]?.[0]);
  const planned = targets.map((target) => planTable(target, log, system));
  const changesToWrite = planChanges(loaded, log, system);
  for (const one of planned) if (one.extra > 0) grow(one);
  for (const one of planned) write(one);
  for (const change of changesToWrite) change();
  const counts = planned.map(({ target, extra }) => ({
    wanted: target.body.rowCount + extra,
    count: target.table.rows.getCount(),
    target,
  }));
  await context.sync();
  const short = counts.filter(({ wanted, count }) => count.value < wanted);
  for (const { wanted, target } of short) {
    const { rowIndex, columnIndex, columnCount } = target.body;
    target.table.resize(target.worksheet.getRangeByIndexes(rowIndex - 1, columnIndex, wanted + 1, columnCount));
  }
  if (short.length > 0) await context.sync();
  return receiptFor(planned, changes);
}
