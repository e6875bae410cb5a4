import type { RowSignal } from "../model/definition.ts";
import type { ConditionalFormatPlan } from "../model/plan.ts";
import { columnHeld } from "./addresses.ts";
import type { PlacedField, PlacedTable } from "./placement.ts";
import { columnArea } from "./validation-plans.ts";

function condition(cell: string, when: RowSignal["when"]): string {
  if (when === "not available") return `=ISNA(${cell})`;
  if ("is" in when) return `=${cell}="${when.is}"`;
  if ("isNot" in when) return `=AND(ISNUMBER(${cell}),${cell}<>${String(when.isNot)})`;
  return `=LEFT(${cell},${String(when.startsWith.length)})="${when.startsWith}"`;
}

/** Colours for the words that a table's cells may hold. */
export function tableSignals(placed: PlacedTable): readonly ConditionalFormatPlan[] {
  return (placed.table.signals ?? []).map((signal) => {
    const area = columnArea(placed, signal.column);
    return { area, formula: condition(columnHeld(area.row, area.column), signal.when), look: signal.look };
  });
}

/** Colours for a named cell. */
export function fieldSignals({ field, row, valueColumn }: PlacedField): readonly ConditionalFormatPlan[] {
  return (field.signals ?? []).map((signal) => ({
    area: { row, column: valueColumn, rows: 1, columns: 1 },
    formula: condition(columnHeld(row, valueColumn), signal.when),
    look: signal.look,
  }));
}
