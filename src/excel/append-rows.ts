import type { LogDefinition } from "../joblog/definition.ts";
import { findField } from "../joblog/references.ts";
import { loadGround, planTable, type BlankFill, type Ground, type NewRow } from "./append-ground.ts";
import { LogProblem } from "./office-problems.ts";
import { systemOf } from "./table-columns.ts";

function grow(ground: Ground, extra: number): void {
  const { body, worksheet } = ground;
  const { rowIndex, columnIndex, rowCount, columnCount } = body;
  ground.table.resize(worksheet.getRangeByIndexes(rowIndex - 1, columnIndex, rowCount + 1 + extra, columnCount));
  worksheet
    .getRangeByIndexes(rowIndex + rowCount, columnIndex, extra, columnCount)
    .copyFrom(worksheet.getRangeByIndexes(rowIndex + rowCount - 1, columnIndex, 1, columnCount), "Formats");
}

/**
 * Writes rows to one or more tables: one read trip, one write trip, one look that Excel grew the tables.
 * Everything that can be checked is checked before the first cell is written. A row goes to the first
 * line without input, else beneath the table; calculated columns get their formulas. Nothing that is
 * written already is overwritten.
 */
export async function writeRows(context: Excel.RequestContext, log: LogDefinition, rows: readonly NewRow[], fills: readonly BlankFill[]): Promise<void> {
  const unitCell = context.workbook.names.getItem(findField(log, "unitSystem").name).getRange().load("values");
  context.workbook.load("readOnly");
  const grounds = [...new Set([...rows, ...fills].map(({ table }) => table))].map((table) =>
    loadGround(
      context,
      log,
      table,
      rows.filter((one) => one.table === table).map(({ row }) => row),
      fills.filter((one) => one.table === table),
    ),
  );
  await context.sync();
  if (context.workbook.readOnly) {
    throw new LogProblem({ what: "This workbook is open for reading only.", remedy: "Save a copy (File, Save a Copy) and record there. Your entry stays here." });
  }
  const system = systemOf(unitCell.values[0]?.[0]);
  const planned = grounds.map((ground) => planTable(ground, log, system));
  for (const { ground, extra } of planned) if (extra > 0) grow(ground, extra);
  for (const { ground, lines, fills: blanks } of planned) {
    const { rowIndex, columnIndex, columnCount } = ground.body;
    for (const { index, at, value } of blanks) {
      ground.worksheet.getRangeByIndexes(rowIndex + index, columnIndex + at, 1, 1).values = [[value]];
    }
    for (const { index, line } of lines) {
      ground.worksheet.getRangeByIndexes(rowIndex + index, columnIndex, 1, columnCount).formulas = [line];
    }
  }
  const counts = planned.map(({ ground, extra }) => ({ wanted: ground.body.rowCount + extra, count: ground.table.rows.getCount(), ground }));
  await context.sync();
  const short = counts.filter(({ wanted, count }) => count.value < wanted);
  for (const { wanted, ground } of short) {
    const { rowIndex, columnIndex, columnCount } = ground.body;
    ground.table.resize(ground.worksheet.getRangeByIndexes(rowIndex - 1, columnIndex, wanted + 1, columnCount));
  }
  if (short.length > 0) await context.sync();
}
