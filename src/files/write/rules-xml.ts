import type { ConditionalFormatState, SheetState, ValidationState } from "../../state/workbook-state.ts";
import { storedFormula } from "../stored-formula.ts";
import type { FileLooks } from "./looks.ts";
import { zoneOf, zoneText } from "./references.ts";
import { element, textOf } from "./xml.ts";

/** The grid's comparisons by the format's. */
const operators: Readonly<Record<string, string>> = {
  isBetween: "between",
  isNotBetween: "notBetween",
  isEqual: "equal",
  isNotEqual: "notEqual",
  isGreaterThan: "greaterThan",
  isLessThan: "lessThan",
  isGreaterOrEqualTo: "greaterThanOrEqual",
  isLessOrEqualTo: "lessThanOrEqual",
  dateIsBetween: "between",
  dateIsNotBetween: "notBetween",
  dateIs: "equal",
  dateIsAfter: "greaterThan",
  dateIsBefore: "lessThan",
  dateIsOnOrAfter: "greaterThanOrEqual",
  dateIsOnOrBefore: "lessThanOrEqual",
};

/** A list of choices that stands in the rule may have so many characters (Microsoft, data validation limits). */
const longestList = 255;

interface StoredRule {
  readonly type: string;
  readonly operator?: string;
  readonly formulas: readonly string[];
}

/** A limit as the format holds it; undefined for a date that was typed as text. */
function limit(value: string): string | undefined {
  if (value.startsWith("=")) return storedFormula(value);
  return value.trim() === "" || Number.isNaN(Number(value)) ? undefined : value.trim();
}

function comparison({ criterion, words }: ValidationState): StoredRule | undefined {
  const operator = operators[criterion.type];
  const formulas = criterion.values.filter((value) => value !== "").map(limit);
  if (operator === undefined || formulas.length === 0) return undefined;
  const known = formulas.filter((formula) => formula !== undefined);
  if (known.length < formulas.length) return undefined;
  const isWhole = typeof words?.rule === "object" && words.rule !== null && "wholeNumber" in words.rule;
  const type = criterion.type.startsWith("date") ? "date" : isWhole ? "whole" : "decimal";
  return { type, operator, formulas: known };
}

function storedRule(validation: ValidationState): StoredRule | undefined {
  const { type, values } = validation.criterion;
  const [first = ""] = values;
  switch (type) {
    case "isValueInList": {
      const list = `"${values.map((choice) => choice.replaceAll('"', '""')).join(",")}"`;
      const fits = list.length <= longestList + 2 && values.every((choice) => !choice.includes(","));
      return fits ? { type: "list", formulas: [list] } : undefined;
    }
    case "isValueInRange":
      return { type: "list", formulas: [first.replace(/^=/, "")] };
    case "customFormula":
      return { type: "custom", formulas: [storedFormula(first)] };
    default:
      return comparison(validation);
  }
}

const alertStyles: Readonly<Record<string, string>> = { Warning: "warning", Information: "information" };

function flag(on: boolean | undefined): 1 | undefined {
  return on === true ? 1 : undefined;
}

function words(text: string | undefined): string | undefined {
  return text === undefined || text === "" ? undefined : text;
}

function validationXml(validation: ValidationState, { type, operator, formulas }: StoredRule): string {
  const { errorAlert, prompt, ignoreBlanks = true } = validation.words ?? {};
  const attributes = {
    type,
    errorStyle: alertStyles[errorAlert?.style ?? ""],
    operator: operator === "between" ? undefined : operator,
    allowBlank: flag(ignoreBlanks),
    showInputMessage: flag(prompt?.showPrompt),
    showErrorMessage: flag(errorAlert?.showAlert ?? validation.blocks),
    errorTitle: words(errorAlert?.title),
    error: words(errorAlert?.message),
    promptTitle: words(prompt?.title),
    prompt: words(prompt?.message),
    sqref: validation.ranges.join(" "),
  };
  const content = formulas.map((formula, index) => element(`formula${String(index + 1)}`, {}, textOf(formula)));
  return element("dataValidation", attributes, ...content);
}

/** The rules for entries; `lost` is told what Excel has no rule for. */
export function validationsXml({ validations }: SheetState, lost: (what: string) => void): string {
  const written = validations.flatMap((validation) => {
    const rule = storedRule(validation);
    if (rule === undefined) lost(`the rule for entries in ${validation.ranges.join(", ")}`);
    return rule === undefined ? [] : [validationXml(validation, rule)];
  });
  return written.length === 0 ? "" : element("dataValidations", { count: written.length }, ...written);
}

function firstCell(ranges: readonly string[]): string {
  const zone = zoneOf(ranges[0] ?? "");
  return zone === undefined ? "A1" : zoneText({ ...zone, bottom: zone.top, right: zone.left });
}

function quotedText(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}

/** A condition of the grid's own as a formula of the range's first cell; undefined where there is none. */
function conditionOf(operator: string, [first = ""]: readonly string[], cell: string): string | undefined {
  const text = first.startsWith("=") ? first.slice(1) : quotedText(first);
  switch (operator) {
    case "customFormula":
      return first.replace(/^=/, "");
    case "isEmpty":
      return `LEN(TRIM(${cell}))=0`;
    case "isNotEmpty":
      return `LEN(TRIM(${cell}))>0`;
    case "containsText":
      return `ISNUMBER(SEARCH(${text},${cell}))`;
    case "notContainsText":
      return `ISERROR(SEARCH(${text},${cell}))`;
    case "beginsWithText":
      return `LEFT(${cell},LEN(${text}))=${text}`;
    case "endsWithText":
      return `RIGHT(${cell},LEN(${text}))=${text}`;
    default:
      return undefined;
  }
}

function formatRule(
  { ranges, rule, stopIfTrue }: ConditionalFormatState,
  priority: number,
  looks: FileLooks,
): string | undefined {
  if (rule.type !== "CellIsRule") return undefined;
  const common = { dxfId: looks.differential(rule.style), priority, stopIfTrue: flag(stopIfTrue) };
  const condition = conditionOf(rule.operator, rule.values, firstCell(ranges));
  if (condition !== undefined)
    return element(
      "cfRule",
      { type: "expression", ...common },
      element("formula", {}, textOf(storedFormula(condition))),
    );
  const operator = rule.operator.startsWith("is") ? operators[rule.operator] : undefined;
  if (operator === undefined) return undefined;
  const limits = rule.values.filter((value) => value !== "").map((value) => limit(value) ?? quotedText(value));
  return element(
    "cfRule",
    { type: "cellIs", ...common, operator },
    ...limits.map((one) => element("formula", {}, textOf(one))),
  );
}

/** The conditional formats, first ones first; `lost` is told the kinds that are not written. */
export function conditionalFormatsXml(
  { conditionalFormats }: SheetState,
  looks: FileLooks,
  lost: (what: string) => void,
): string {
  return conditionalFormats
    .map((format, index) => {
      const rule = formatRule(format, index + 1, looks);
      if (rule !== undefined) return element("conditionalFormatting", { sqref: format.ranges.join(" ") }, rule);
      lost(`the conditional format of ${format.ranges.join(", ")}`);
      return "";
    })
    .join("");
}
