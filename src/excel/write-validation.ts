import type { ValidationPlan, ValidationRule } from "../joblog/plan.ts";
import { absoluteArea } from "./a1.ts";

function officeRule(rule: ValidationRule, sheetName: (planned: string) => string): Excel.DataValidationRule {
  switch (rule.kind) {
    case "list":
      return { list: { inCellDropDown: true, source: rule.choices.join(",") } };
    case "list of area":
      return { list: { inCellDropDown: true, source: `=${absoluteArea(sheetName(rule.sheet), rule.area)}` } };
    case "number between":
      return { decimal: { formula1: rule.low, formula2: rule.high, operator: "Between" } };
    case "date from":
      return { date: { formula1: `=${String(rule.serial)}`, operator: "GreaterThanOrEqualTo" } };
    case "formula":
      return { custom: { formula: rule.formula } };
  }
}

/** Holds typed input to its list or limits; blanks stay allowed. `sheetName` gives a planned sheet's name in this workbook. */
export function writeValidation(worksheet: Excel.Worksheet, plan: ValidationPlan, sheetName: (planned: string) => string): void {
  const { row, column, rows, columns } = plan.area;
  const validation = worksheet.getRangeByIndexes(row, column, rows, columns).dataValidation;
  validation.rule = officeRule(plan.rule, sheetName);
  validation.ignoreBlanks = true;
  validation.errorAlert = { showAlert: true, style: "Stop", title: plan.errorTitle, message: plan.errorMessage };
}
