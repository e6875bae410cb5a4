import { type Area, areaText, sheetPrefix } from "../../address.ts";
import { ExcelError, invalidArgument } from "../../excel-error.ts";
import type { ValidationCriterion } from "../../library.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import { checkRule, checkWords } from "../limits.ts";
import { ClientObject, partOf, targetOf } from "../requests/client-object.ts";
import type { Requests } from "../requests/requests.ts";

/** Excel's comparisons by the grid's word for numbers and for dates. */
const comparisons: Readonly<
  Record<string, readonly [number: ValidationCriterion["type"], date: ValidationCriterion["type"]]>
> = {
  Between: ["isBetween", "dateIsBetween"],
  NotBetween: ["isNotBetween", "dateIsNotBetween"],
  EqualTo: ["isEqual", "dateIs"],
  NotEqualTo: ["isNotEqual", "dateIs"],
  GreaterThan: ["isGreaterThan", "dateIsAfter"],
  LessThan: ["isLessThan", "dateIsBefore"],
  GreaterThanOrEqualTo: ["isGreaterOrEqualTo", "dateIsOnOrAfter"],
  LessThanOrEqualTo: ["isLessOrEqualTo", "dateIsOnOrBefore"],
};

function listCriterion(source: string | Excel.Range, area: Area, workbook: Workbook): ValidationCriterion {
  const ofArea = (list: Area): ValidationCriterion => ({
    type: "isValueInRange",
    values: [sheetPrefix(workbook.sheets.nameOf(list.sheet)) + areaText(list, true)],
    displayStyle: "arrow",
  });
  if (typeof source !== "string") {
    const target = targetOf(source);
    if (target === undefined) throw invalidArgument("A list needs a text or a range as its source.");
    return ofArea(target() as Area);
  }
  if (source.startsWith("=")) return ofArea(workbook.area(source.slice(1), area.sheet));
  return { type: "isValueInList", values: source.split(",").map((choice) => choice.trim()), displayStyle: "arrow" };
}

function comparisonCriterion(
  rule: Excel.BasicDataValidation | Excel.DateTimeDataValidation,
  kind: 0 | 1,
): ValidationCriterion {
  const type = comparisons[rule.operator]?.[kind];
  if (type === undefined) throw invalidArgument(`There is no comparison ${rule.operator}.`);
  const values = [rule.formula1, rule.formula2]
    .filter((formula) => formula !== undefined && formula !== "")
    .map(String);
  return { type, values, ...(kind === 1 ? { dateValue: "exactDate" } : {}) } as ValidationCriterion;
}

/** The rule in the grid's terms. */
function criterionOf(rule: Excel.DataValidationRule, area: Area, workbook: Workbook): ValidationCriterion {
  if (rule.list !== undefined) return listCriterion(rule.list.source, area, workbook);
  if (rule.decimal !== undefined) return comparisonCriterion(rule.decimal, 0);
  if (rule.wholeNumber !== undefined) return comparisonCriterion(rule.wholeNumber, 0);
  if (rule.date !== undefined) return comparisonCriterion(rule.date, 1);
  if (rule.custom !== undefined) return { type: "customFormula", values: [rule.custom.formula] };
  throw new ExcelError(
    "NotImplemented",
    "The stand-in has no validation of time or text length.",
    "DataValidation.rule",
  );
}

/** Excel's word for the kind of a rule. */
function typeOf(rule: unknown): string {
  const kind = typeof rule === "object" && rule !== null ? Object.keys(rule)[0] : undefined;
  return kind === undefined ? "None" : kind.charAt(0).toUpperCase() + kind.slice(1);
}

type Members = "type" | "rule" | "errorAlert" | "prompt" | "ignoreBlanks" | "clear";

/** The grid enforces the rule; the words of the alert appear when it refuses an entry, the prompt is kept and read back. */
export class DataValidationObject
  extends ClientObject<Area, Excel.DataValidation>
  implements Pick<Excel.DataValidation, Members>
{
  protected readonly scalars = ["type", "rule", "errorAlert", "prompt", "ignoreBlanks"];

  constructor(requests: Requests, range: ClientObject<Area, object>) {
    super(
      requests,
      "DataValidation",
      partOf(range, "validation", (area) => area),
    );
  }

  protected fetch(property: string, area: Area, workbook: Workbook): unknown {
    const words = workbook.validations.wordsAt(area);
    return property === "type" ? typeOf(words?.["rule"]) : (words?.[property] ?? null);
  }

  get type(): Excel.DataValidationType {
    return this.loadedValue("type") as Excel.DataValidationType;
  }

  private note(member: string, value: object | boolean, act: (area: Area, workbook: Workbook) => void): void {
    this.change(
      member,
      (area, workbook) => {
        workbook.requireUnlocked(area.sheet, `DataValidation.${member}`);
        act(area, workbook);
        workbook.validations.note(area, member, value);
      },
      value,
    );
  }

  get rule(): Excel.DataValidationRule {
    return this.loadedValue("rule") as Excel.DataValidationRule;
  }
  set rule(rule: Excel.DataValidationRule) {
    this.note("rule", rule, (area, workbook) => {
      checkRule(rule);
      workbook.validations.set(area, criterionOf(rule, area, workbook));
    });
  }

  get errorAlert(): Excel.DataValidationErrorAlert {
    return this.loadedValue("errorAlert") as Excel.DataValidationErrorAlert;
  }
  set errorAlert(alert: Excel.DataValidationErrorAlert) {
    this.note("errorAlert", alert, (area, workbook) => {
      checkWords("alert", alert);
      workbook.validations.setBlocking(area, alert.style === "Stop" && alert.showAlert);
    });
  }

  get prompt(): Excel.DataValidationPrompt {
    return this.loadedValue("prompt") as Excel.DataValidationPrompt;
  }
  set prompt(prompt: Excel.DataValidationPrompt) {
    this.note("prompt", prompt, () => {
      checkWords("prompt", prompt);
    });
  }

  get ignoreBlanks(): boolean {
    return this.loadedValue("ignoreBlanks") as boolean;
  }
  set ignoreBlanks(ignore: boolean) {
    this.note("ignoreBlanks", ignore, () => undefined);
  }

  clear(): void {
    this.change("clear", (area, workbook) => {
      workbook.validations.clear(area);
    });
  }
}
