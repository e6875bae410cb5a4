import type { AreaPlan } from "../../joblog/model/plan.ts";
import type { ValidationState, ValidationWordsState } from "../../state/workbook-state.ts";
import { movedFormula } from "./formulas/moved-formula.ts";
import { shownFormula } from "./formulas/shown-formula.ts";
import { showsDay } from "./looks/number-formats.ts";
import { areaText, readArea, readAreas, sheetPrefix, splitSheet } from "./read-address.ts";
import { unescaped } from "./texts.ts";
import { childOf, childrenOf, isOn, textWithin, type XmlElement } from "./xml-tree.ts";

/** A comparison by the grid's word for numbers, its word for dates, and Office.js' word. */
const comparisons: Readonly<Record<string, readonly [number: string, date: string, office: string]>> = {
  between: ["isBetween", "dateIsBetween", "Between"],
  notBetween: ["isNotBetween", "dateIsNotBetween", "NotBetween"],
  equal: ["isEqual", "dateIs", "EqualTo"],
  notEqual: ["isNotEqual", "", "NotEqualTo"],
  greaterThan: ["isGreaterThan", "dateIsAfter", "GreaterThan"],
  lessThan: ["isLessThan", "dateIsBefore", "LessThan"],
  greaterThanOrEqual: ["isGreaterOrEqualTo", "dateIsOnOrAfter", "GreaterThanOrEqualTo"],
  lessThanOrEqual: ["isLessOrEqualTo", "dateIsOnOrBefore", "LessThanOrEqualTo"],
};

/** What a rule is read against. */
export interface RuleSurroundings {
  readonly sheet: string;
  readonly formatAt: (row: number, column: number) => string | undefined;
  /** The area that a defined name stands for. */
  readonly areaNamed: (name: string) => { readonly sheet: string; readonly area: AreaPlan } | undefined;
  /** Days to be added to a date that stands in a rule. */
  readonly daysOn: number;
}

type Criterion = ValidationState["criterion"];

interface ReadRule {
  readonly criterion: Criterion;
  readonly rule: object;
}

/** A rule's element in the sheet's main list, or in the extensions, where its formulas and areas are elements. */
function formulaIn(element: XmlElement, name: string): string {
  return unescaped(textWithin(childOf(element, name))).trim();
}

function listRule(source: string, around: RuleSurroundings): ReadRule | undefined {
  const literal = /^"([\s\S]*)"$/.exec(source)?.[1];
  if (literal !== undefined) {
    const choices = literal
      .replaceAll('""', '"')
      .split(",")
      .map((choice) => choice.trim());
    return {
      criterion: { type: "isValueInList", values: choices, displayStyle: "arrow" },
      rule: { list: { inCellDropDown: true, source: choices.join(",") } },
    };
  }
  const { sheet = around.sheet, local } = splitSheet(source);
  const area = readArea(local);
  const found = area === undefined ? around.areaNamed(source) : { sheet, area };
  if (found === undefined) return undefined;
  const text = sheetPrefix(found.sheet) + areaText(found.area, true);
  return {
    criterion: { type: "isValueInRange", values: [text], displayStyle: "arrow" },
    rule: { list: { inCellDropDown: true, source: `=${text}` } },
  };
}

function comparisonRule(
  element: XmlElement,
  kind: "decimal" | "wholeNumber" | "date",
  daysOn: number,
): ReadRule | undefined {
  const operator = element.attributes["operator"] ?? "between";
  const [number = "", date = "", office = ""] = comparisons[operator] ?? [];
  const isDate = kind === "date";
  const type = isDate ? date : number;
  if (type === "") return undefined;
  const names = operator === "between" || operator === "notBetween" ? ["formula1", "formula2"] : ["formula1"];
  const limits = names.map((name) => formulaIn(element, name));
  if (limits.includes("")) return undefined;
  const texts = limits.map((limit) => {
    const fixed = Number(limit);
    if (Number.isNaN(fixed)) return shownFormula(limit);
    return isDate ? `=${String(fixed + daysOn)}` : String(fixed);
  });
  const [formula1, formula2] = texts.map((text) => (text.startsWith("=") ? text : Number(text)));
  return {
    criterion: { type, values: texts, ...(isDate ? { dateValue: "exactDate" } : {}) },
    rule: { [kind]: { formula1, ...(formula2 === undefined ? {} : { formula2 }), operator: office } },
  };
}

function ruleOf(element: XmlElement, first: AreaPlan, around: RuleSurroundings): ReadRule | undefined {
  const { type } = element.attributes;
  // Writers without a kind for dates say "decimal" of a number that the cell shows as a day.
  const isDay = type === "date" || (type === "decimal" && showsDay(around.formatAt(first.row, first.column)));
  if (isDay) return comparisonRule(element, "date", around.daysOn);
  if (type === "decimal") return comparisonRule(element, "decimal", 0);
  if (type === "whole") return comparisonRule(element, "wholeNumber", 0);
  if (type === "list") return listRule(formulaIn(element, "formula1"), around);
  if (type !== "custom") return undefined;
  const formula = shownFormula(formulaIn(element, "formula1"));
  return { criterion: { type: "customFormula", values: [formula] }, rule: { custom: { formula } } };
}

const alertStyles: Readonly<Record<string, string>> = { warning: "Warning", information: "Information" };

function wordsOf({ attributes }: XmlElement): Omit<ValidationWordsState, "rule"> {
  const text = (name: string): string => unescaped(attributes[name] ?? "");
  return {
    ignoreBlanks: isOn(attributes["allowBlank"]),
    errorAlert: {
      showAlert: isOn(attributes["showErrorMessage"]),
      style: alertStyles[attributes["errorStyle"] ?? ""] ?? "Stop",
      title: text("errorTitle"),
      message: text("error"),
    },
    ...(isOn(attributes["showInputMessage"]) && text("prompt") !== ""
      ? { prompt: { showPrompt: true, title: text("promptTitle"), message: text("prompt") } }
      : {}),
  };
}

/** A formula of one's own is meant for its first cell; the grid takes each area's first cell for that. */
function splitRule(
  { criterion, rule }: ReadRule,
  areas: readonly AreaPlan[],
): readonly (ReadRule & { readonly ranges: readonly string[] })[] {
  const [first] = areas;
  const [formula] = criterion.values;
  if (criterion.type !== "customFormula" || first === undefined || formula === undefined)
    return [{ criterion, rule, ranges: areas.map((area) => areaText(area)) }];
  return areas.map((area) => {
    const moved = movedFormula(formula, area.row - first.row, area.column - first.column);
    return {
      criterion: { ...criterion, values: [moved] },
      rule: { custom: { formula: moved } },
      ranges: [areaText(area)],
    };
  });
}

/** The rules for entries of a sheet's part; `lost` is told the kinds that the grid has no rule for. */
export function readValidations(
  root: XmlElement,
  around: RuleSurroundings,
  lost: (kind: string) => void,
): readonly ValidationState[] {
  const extended = childrenOf(childOf(root, "extLst"), "ext").flatMap((ext) =>
    childrenOf(childOf(ext, "dataValidations"), "dataValidation"),
  );
  const elements = [...childrenOf(childOf(root, "dataValidations"), "dataValidation"), ...extended];
  return elements.flatMap((element): readonly ValidationState[] => {
    const { type } = element.attributes;
    const areas = readAreas(element.attributes["sqref"] ?? childOf(element, "sqref")?.text);
    const [first] = areas;
    if (type === undefined || type === "none" || first === undefined) return [];
    const read = ruleOf(element, first, around);
    if (read === undefined) {
      lost(type);
      return [];
    }
    const words = wordsOf(element);
    const { showAlert, style } = words.errorAlert ?? {};
    return splitRule(read, areas).map(({ criterion, rule, ranges }) => ({
      ranges,
      criterion,
      blocks: showAlert === true && style === "Stop" && criterion.type !== "customFormula",
      words: { rule, ...words },
    }));
  });
}
