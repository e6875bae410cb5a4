/** More rows for a table, with the lists, limits and looks of the rows above. */
import type { PlannedTable } from "./plan-rows.ts";

interface InputColumn {
  /** The rows that were there before. */
  readonly former: Excel.Range;
  /** All rows, as the table is now. */
  readonly whole: Excel.Range;
  readonly above: Excel.DataValidation;
  readonly below: Excel.DataValidation;
}

/** A table that has grown in the trip at hand, and what that trip reads of its last former row and its last row. */
export interface GrownTable {
  readonly above: Excel.Range;
  readonly below: Excel.Range;
  readonly added: Excel.Range;
  readonly columns: readonly InputColumn[];
}

/**
 * Queues the growth. Excel dresses rows that a person types under a table; that it does so for `Table.resize` stands in
 * no document, so the same trip reads whether it did.
 */
export function growTable({ target, extra, inputs }: PlannedTable): GrownTable {
  const { body, table, worksheet } = target;
  const { rowIndex: top, columnIndex: left, rowCount, columnCount } = body;
  table.resize(worksheet.getRangeByIndexes(top - 1, left, rowCount + 1 + extra, columnCount));
  const [lastFormer, last] = [top + rowCount - 1, top + rowCount - 1 + extra];
  const rowAt = (row: number): Excel.Range =>
    worksheet.getRangeByIndexes(row, left, 1, columnCount).load("numberFormat");
  const ruleAt = (row: number, at: number): Excel.DataValidation =>
    worksheet.getRangeByIndexes(row, left + at, 1, 1).dataValidation.load("type");
  return {
    above: rowAt(lastFormer),
    below: rowAt(last),
    added: worksheet.getRangeByIndexes(top + rowCount, left, extra, columnCount),
    columns: inputs.map((at) => ({
      former: worksheet.getRangeByIndexes(top, left + at, rowCount, 1),
      whole: worksheet.getRangeByIndexes(top, left + at, rowCount + extra, 1),
      above: ruleAt(lastFormer, at),
      below: ruleAt(last, at),
    })),
  };
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
  const loose = grown.flatMap(({ columns }) => columns.filter(({ above, below }) => above.type !== below.type));
  for (const { added, above } of bare) added.copyFrom(above, "Formats");
  const rules = loose.map(({ former, whole }) => ({
    whole,
    rule: former.dataValidation.load("type,rule,errorAlert,ignoreBlanks"),
  }));
  if (bare.length + rules.length === 0) return;
  await context.sync();
  for (const { whole, rule } of rules.filter((one) => !severalRules.includes(one.rule.type))) {
    whole.dataValidation.rule = rule.rule;
    whole.dataValidation.ignoreBlanks = rule.ignoreBlanks;
    whole.dataValidation.errorAlert = rule.errorAlert;
  }
  if (rules.length > 0) await context.sync();
}
