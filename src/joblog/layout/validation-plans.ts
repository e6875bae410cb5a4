import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { ChoiceSource, ContentType, LimitsOf } from "../model/definition.ts";
import { headerOf } from "../model/headers.ts";
import { keyTextAllowed, keyTextFormula } from "../model/key-text.ts";
import type { AreaPlan, ValidationPlan, ValidationRule } from "../model/plan.ts";
import { phLimits, usualPh } from "../model/units-of.ts";
import { columnHeld } from "./addresses.ts";
import type { PlacedField, PlacedTable, Placement } from "./placement.ts";

/** 1 January 2000: an earlier date in a job log is a slip of the finger. */
export const firstDay = 36526;

interface Checked {
  readonly type: ContentType;
  readonly choices?: ChoiceSource;
  readonly limits?: LimitsOf;
}

/** The data cells of one column of a placed table. */
export function columnArea({ table, area }: PlacedTable, columnId: string): AreaPlan {
  const index = table.columns.findIndex((column) => column.id === columnId);
  if (index < 0) throw new RangeError(`Table ${table.name} has no column "${columnId}".`);
  return { row: area.row + 1, column: area.column + index, rows: area.rows - 1, columns: 1 };
}

function ruleFor(checked: Checked, placement: Placement, system: UnitSystem): ValidationRule | undefined {
  if (checked.choices?.kind === "fixed") return { kind: "list", choices: checked.choices.choices };
  if (checked.choices?.kind === "column") {
    const placed = placement.tables.get(checked.choices.table);
    if (placed === undefined) throw new RangeError(`The log has no table "${checked.choices.table}".`);
    return { kind: "list of area", sheet: placed.sheet.name, area: columnArea(placed, checked.choices.column) };
  }
  if (checked.limits !== undefined) return { kind: "number between", ...checked.limits[system] };
  if (checked.type === "date" || checked.type === "date and time") return { kind: "date from", serial: firstDay };
  return undefined;
}

function messageFor(header: string, rule: ValidationRule, { type, limits }: Checked): string {
  switch (rule.kind) {
    case "list":
      return `${header}: choose one of ${rule.choices.join(", ")}.`;
    case "list of area":
      return `${header}: choose one from the sheet ${rule.sheet}. If it is new, enter it there first.`;
    case "number between":
      return `${header}: type a number from ${String(rule.low)} to ${String(rule.high)}, without a unit.${limits === phLimits ? ` ${usualPh}` : ""}`;
    case "date from":
      return type === "date"
        ? `${header}: type a date, such as 2027-03-01.`
        : `${header}: type a date and a time, such as 2027-03-01 14:05.`;
    case "formula":
      return `${header}: ${keyTextAllowed}. Other cells look this name up.`;
  }
}

/** Checks on what is typed into the input columns of a table. */
export function tableValidations(
  placed: PlacedTable,
  placement: Placement,
  system: UnitSystem,
): readonly ValidationPlan[] {
  return placed.table.columns.flatMap((column): ValidationPlan[] => {
    if (column.role === "computed") return [];
    const area = columnArea(placed, column.id);
    const rule: ValidationRule | undefined =
      column.key === true
        ? { kind: "formula", formula: keyTextFormula(columnHeld(area.row, area.column)) }
        : ruleFor(column, placement, system);
    if (rule === undefined) return [];
    const errorMessage = messageFor(headerOf(column, system), rule, column);
    return [{ area, rule, errorTitle: `Check: ${column.label}`.slice(0, 32), errorMessage }];
  });
}

/** The check on a named cell; one that is set at build takes nothing but its value. */
export function fieldValidation(
  placed: PlacedField,
  placement: Placement,
  system: UnitSystem,
): ValidationPlan | undefined {
  const { field, row, valueColumn } = placed;
  const area: AreaPlan = { row, column: valueColumn, rows: 1, columns: 1 };
  if (field.id === "unitSystem") {
    return {
      area,
      rule: { kind: "list", choices: [system] },
      errorTitle: "Units are fixed",
      errorMessage: "The units are set when the log is built. For other units, build a new log in a new workbook.",
    };
  }
  const rule = field.formula === undefined ? ruleFor(field, placement, system) : undefined;
  if (rule === undefined) return undefined;
  return {
    area,
    rule,
    errorTitle: `Check: ${field.label}`.slice(0, 32),
    errorMessage: messageFor(headerOf(field, system), rule, field),
  };
}
