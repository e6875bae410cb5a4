import type { Cells, LogDefinition } from "../../joblog/model/definition.ts";
import { findField } from "../../joblog/model/references.ts";
import { cellValue } from "../cell-text.ts";
import { systemOf } from "../table-columns.ts";
import { loadAppendTarget, refuseIfReadOnly } from "./append-target.ts";
import { type AnyChange, loadChanges, planChanges } from "./cell-changes.ts";
import { dressRows, growTable } from "./grow-table.ts";
import type { LogEdit } from "./log-edit.ts";
import { type PlannedTable, planTable } from "./plan-rows.ts";
import type { FilledCells, Receipt, WrittenRow } from "./receipt.ts";

/** Places that stand side by side, as first place and count. */
function runsOf(places: readonly number[]): readonly { readonly at: number; readonly count: number }[] {
  const runs: { at: number; count: number }[] = [];
  for (const at of places) {
    const last = runs.at(-1);
    if (last !== undefined && last.at + last.count === at) last.count += 1;
    else runs.push({ at, count: 1 });
  }
  return runs;
}

/** The first line's formulas for the lines under it. */
function copyFormulas({ target, lines, computed }: PlannedTable): void {
  const [first, ...rest] = lines;
  if (first === undefined || rest.length === 0) return;
  const { rowIndex, columnIndex } = target.body;
  const top = rowIndex + first.position;
  for (const { at, count } of runsOf(computed)) {
    const source = target.worksheet.getRangeByIndexes(top, columnIndex + at, 1, count);
    target.worksheet.getRangeByIndexes(top + 1, columnIndex + at, rest.length, count).copyFrom(source, "Formulas");
  }
}

function write(planned: PlannedTable): void {
  const { target, lines, fills } = planned;
  const { rowIndex, columnIndex, columnCount } = target.body;
  for (const { position, at, value } of fills) {
    target.worksheet.getRangeByIndexes(rowIndex + position, columnIndex + at, 1, 1).values = [[cellValue(value)]];
  }
  for (const { position, line } of lines) {
    target.worksheet.getRangeByIndexes(rowIndex + position, columnIndex, 1, columnCount).formulas = [[...line]];
  }
  copyFormulas(planned);
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
 * Writes an edit to one or more tables: one read trip, one write trip; more only where Excel did not
 * grow a table as told, or left its new rows without rules and looks. `sending` is called when the rows go out. What is read does not grow with the log, but for the columns that a fill looks
 * at. Everything that can be checked is checked before the first cell is written. A row goes beneath
 * the last one that holds something typed; calculated columns get their formulas. Nothing that is
 * written already is overwritten but the cells of `changes`; of these the receipt speaks of rows, not of named cells.
 */
export async function writeEdit(
  context: Excel.RequestContext,
  log: LogDefinition,
  edit: LogEdit,
  sending: () => void,
): Promise<Receipt> {
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
  const grown = planned.filter(({ extra }) => extra > 0).map(growTable);
  for (const one of planned) write(one);
  for (const change of changesToWrite) change();
  const counts = planned.map(({ target, extra }) => ({
    wanted: target.body.rowCount + extra,
    count: target.table.rows.getCount(),
    target,
  }));
  sending();
  await context.sync();
  const short = counts.filter(({ wanted, count }) => count.value < wanted);
  for (const { wanted, target } of short) {
    const { rowIndex, columnIndex, columnCount } = target.body;
    target.table.resize(target.worksheet.getRangeByIndexes(rowIndex - 1, columnIndex, wanted + 1, columnCount));
  }
  if (short.length > 0) await context.sync();
  await dressRows(context, grown);
  return receiptFor(planned, changes);
}
