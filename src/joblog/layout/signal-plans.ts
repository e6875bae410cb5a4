import type { RowSignal } from "../model/definition.ts";
import type { ConditionalFormatPlan } from "../model/plan.ts";
import { columnHeld, columnLetters } from "./addresses.ts";
import type { PlacedField, PlacedTable } from "./placement.ts";
import { columnArea } from "./validation-plans.ts";

function condition(row: number, column: number, when: RowSignal["when"]): string {
  const cell = columnHeld(row, column);
  const letters = `$${columnLetters(column)}`;
  // The whole column, since a rule's formula does not grow with the table and cannot name the table's own.
  if (when === "double") return `=AND(${cell}<>"",COUNTIF(${letters}:${letters},${cell})>1)`;
  if (when === "not available") return `=ISNA(${cell})`;
  if ("is" in when) return `=${cell}="${when.is}"`;
  if ("isNot" in when) return `=AND(ISNUMBER(${cell}),${cell}<>${String(when.isNot)})`;
  return `=LEFT(${cell},${String(when.startsWith.length)})="${when.startsWith}"`;
}

/** Rows that forms, receipts and formulas find by a key show it in color where it stands twice. */
const doubleKeys = ({ table: { entry, columns } }: PlacedTable): readonly RowSignal[] =>
  entry === undefined ? [] : columns.slice(0, 1).map(({ id }) => ({ column: id, when: "double", look: "act" }));

/** Colours for the words that a table's cells may hold. */
export function tableSignals(placed: PlacedTable): readonly ConditionalFormatPlan[] {
  return [...(placed.table.signals ?? []), ...doubleKeys(placed)].map((signal) => {
    const area = columnArea(placed, signal.column);
    return { area, formula: condition(area.row, area.column, signal.when), look: signal.look };
  });
}

/** On paper a label without a value would only ask what is missing. */
function unseenLabel({ field, sheet, row, labelColumn, valueColumn }: PlacedField): readonly ConditionalFormatPlan[] {
  if (sheet.document !== true || field.formula === undefined || field.signed === true) return [];
  const area = { row, column: labelColumn, rows: 1, columns: 1 };
  return [{ area, formula: `=${columnHeld(row, valueColumn)}=""`, look: "unseen" }];
}

/** Colours for a named cell and its label. */
export function fieldSignals(placed: PlacedField): readonly ConditionalFormatPlan[] {
  const { field, row, valueColumn } = placed;
  const ofValue = (field.signals ?? []).map((signal) => ({
    area: { row, column: valueColumn, rows: 1, columns: 1 },
    formula: condition(row, valueColumn, signal.when),
    look: signal.look,
  }));
  return [...ofValue, ...unseenLabel(placed)];
}
