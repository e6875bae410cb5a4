/** More rows for a table, with the lists, limits and looks of the rows above. */
import { bodyOf, cellsAt, type SizeChange } from "./planned-write.ts";

interface InputColumn {
  readonly at: number;
  readonly above: Excel.DataValidation;
  readonly below: Excel.DataValidation;
}

/** A table that has grown in the trip at hand, and what that trip reads of its last former row and its last row. */
export interface GrownTable {
  readonly size: SizeChange;
  readonly above: Excel.Range;
  readonly below: Excel.Range;
  readonly columns: readonly InputColumn[];
}

/** Queues another size: rows are added beneath the table, or its last ones let go as they are. */
export function changeSize(workbook: Excel.Workbook, name: string, extra: number): void {
  const table = workbook.tables.getItem(name);
  table.resize(table.getRange().getResizedRange(extra, 0));
}

/**
 * Queues the growth. Excel dresses rows that a person types under a table; that it does so for `Table.resize` stands in
 * no document, so the same trip reads whether it did.
 */
export function growTable(workbook: Excel.Workbook, size: SizeChange): GrownTable {
  const ruleOf = (row: Excel.Range, at: number): Excel.DataValidation => row.getCell(0, at).dataValidation.load("type");
  const lastRow = (): Excel.Range => bodyOf(workbook, size.table).getLastRow();
  const above = lastRow().load("numberFormat");
  const rules = size.inputs.map((at) => ruleOf(above, at));
  changeSize(workbook, size.table, size.extra);
  const below = lastRow().load("numberFormat");
  return {
    size,
    above,
    below,
    columns: size.inputs.map((at, index) => ({
      at,
      above: rules[index] ?? ruleOf(above, at),
      below: ruleOf(below, at),
    })),
  };
}

/** Excel does not grow a table as told in every case; what it left out is asked for once more. */
export async function growForCertain(
  context: Excel.RequestContext,
  sizes: readonly SizeChange[],
  counts: readonly OfficeExtension.ClientResult<number>[],
): Promise<void> {
  const short = sizes.filter(({ rowCount, extra }, index) => (counts[index]?.value ?? 0) < rowCount + extra);
  for (const { table: name, rowCount, extra } of short) {
    const table = context.workbook.tables.getItem(name);
    table.resize(table.getHeaderRowRange().getResizedRange(rowCount + extra, 0));
  }
  if (short.length > 0) await context.sync();
}

/** Excel's words for a range whose cells have different rules, or some of them none. */
const severalRules: readonly string[] = ["Inconsistent", "MixedCriteria"];

/**
 * After the trip that grew the tables: where Excel did not dress the new rows, looks are copied from the row above, and
 * a column's rule is set anew on the whole column, so that it stays one rule. Rules that differ from row to row are the
 * shop's own and stay as they are. No trip where nothing is wanting.
 */
export async function dressRows(context: Excel.RequestContext, grown: readonly GrownTable[]): Promise<void> {
  const bare = grown.filter(({ above, below }) => String(above.numberFormat[0]) !== String(below.numberFormat[0]));
  const loose = grown.flatMap(({ size, columns }) =>
    columns.filter(({ above, below }) => above.type !== below.type).map(({ at }) => ({ size, at })),
  );
  if (bare.length + loose.length === 0) return;
  for (const { size } of bare) {
    const added = bodyOf(context.workbook, size.table)
      .getLastRow()
      .getOffsetRange(1 - size.extra, 0)
      .getResizedRange(size.extra - 1, 0);
    added.copyFrom(added.getRow(0).getOffsetRange(-1, 0), "Formats");
  }
  const rules = loose.map(({ size: { table, rowCount, extra }, at }) => {
    const body = bodyOf(context.workbook, table);
    return {
      whole: cellsAt(body, { position: 0, at }, rowCount + extra, 1),
      rule: cellsAt(body, { position: 0, at }, rowCount, 1).dataValidation.load("type,rule,errorAlert,ignoreBlanks"),
    };
  });
  await context.sync();
  for (const { whole, rule } of rules.filter((one) => !severalRules.includes(one.rule.type))) {
    whole.dataValidation.rule = rule.rule;
    whole.dataValidation.ignoreBlanks = rule.ignoreBlanks;
    whole.dataValidation.errorAlert = rule.errorAlert;
  }
  if (rules.length > 0) await context.sync();
}
