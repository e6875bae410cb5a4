import { absoluteArea, columnHeld } from "../../joblog/layout/addresses.ts";
import type { AreaPlan, ValidationPlan, ValidationRule } from "../../joblog/model/plan.ts";
import type { Locations } from "./locations.ts";

type Locate = Locations["area"];

function listSource(rule: Extract<ValidationRule, { kind: "list of area" }>, locate: Locate): string {
  const { sheet, area } = locate(rule.sheet, rule.area);
  return absoluteArea(sheet, area);
}

/** A rule's formula names the first cell of its area; where the area stands elsewhere, so does that cell. */
export function movedFormula(formula: string, planned: AreaPlan, now: AreaPlan): string {
  const [from, to] = [planned, now].map(({ row, column }) => columnHeld(row, column));
  return from === to || from === undefined || to === undefined
    ? formula
    : formula.replaceAll(new RegExp(`\\${from}(?!\\d)`, "g"), () => to);
}

function officeRule({ rule, area: planned }: ValidationPlan, now: AreaPlan, locate: Locate): Excel.DataValidationRule {
  switch (rule.kind) {
    case "list":
      return { list: { inCellDropDown: true, source: rule.choices.join(",") } };
    case "list of area":
      return { list: { inCellDropDown: true, source: `=${listSource(rule, locate)}` } };
    case "number between":
      return { decimal: { formula1: rule.low, formula2: rule.high, operator: "Between" } };
    case "date from":
      return { date: { formula1: `=${String(rule.serial)}`, operator: "GreaterThanOrEqualTo" } };
    case "formula":
      return { custom: { formula: movedFormula(rule.formula, planned, now) } };
  }
}

/** Holds typed input to its list or limits; blanks stay allowed. `area` is where the planned area stands in this workbook. */
export function writeValidation(
  worksheet: Excel.Worksheet,
  plan: ValidationPlan,
  area: AreaPlan,
  locate: Locate,
): void {
  const { row, column, rows, columns } = area;
  const validation = worksheet.getRangeByIndexes(row, column, rows, columns).dataValidation;
  validation.rule = officeRule(plan, area, locate);
  validation.ignoreBlanks = true;
  validation.errorAlert = { showAlert: true, style: "Stop", title: plan.errorTitle, message: plan.errorMessage };
}
