import type { AreaPlan } from "../../../joblog/model/plan.ts";
import type { ConditionalFormatState, TextLook } from "../../../state/workbook-state.ts";
import { movedFormula } from "../formulas/moved-formula.ts";
import { shownFormula } from "../formulas/shown-formula.ts";
import { areaText, readAreas } from "../read-address.ts";
import { unescaped } from "../texts.ts";
import { childOf, childrenOf, isOn, numberOf, type XmlElement } from "../xml-tree.ts";
import type { FileLooks } from "./looks.ts";

const signs: Readonly<Record<string, string>> = {
  equal: "=",
  notEqual: "<>",
  greaterThan: ">",
  lessThan: "<",
  greaterThanOrEqual: ">=",
  lessThanOrEqual: "<=",
};

/** A comparison with the cell itself as a formula of its first cell. */
function comparison(operator: string, [first = "", second = ""]: readonly string[], cell: string): string | undefined {
  if (operator === "between") return `=AND(${cell}>=(${first}),${cell}<=(${second}))`;
  if (operator === "notBetween") return `=OR(${cell}<(${first}),${cell}>(${second}))`;
  const sign = signs[operator];
  return sign === undefined ? undefined : `=${cell}${sign}(${first})`;
}

/** Kinds whose condition stands in the file as a formula too. */
const withFormula = new Set([
  "expression",
  "containsText",
  "notContainsText",
  "beginsWith",
  "endsWith",
  "containsBlanks",
  "notContainsBlanks",
  "containsErrors",
  "notContainsErrors",
  "timePeriod",
]);

function conditionOf(rule: XmlElement, first: AreaPlan): string | undefined {
  const formulas = rule.children
    .filter(({ name }) => name === "formula" || name === "f")
    .map(({ text }) => unescaped(text).trim())
    .filter((text) => text !== "");
  const { type = "", operator = "" } = rule.attributes;
  const [formula] = formulas;
  if (formula === undefined) return undefined;
  if (type === "cellIs") {
    const bare = formulas.map((one) => shownFormula(one).slice(1));
    return comparison(operator, bare, areaText({ row: first.row, column: first.column, rows: 1, columns: 1 }));
  }
  return withFormula.has(type) ? shownFormula(formula) : undefined;
}

interface FoundRule {
  readonly rule: XmlElement;
  readonly areas: readonly AreaPlan[];
  readonly look: TextLook;
}

function rulesIn(root: XmlElement, looks: FileLooks): readonly FoundRule[] {
  const main = childrenOf(root, "conditionalFormatting").flatMap((format) =>
    childrenOf(format, "cfRule").map((rule) => ({
      rule,
      areas: readAreas(format.attributes["sqref"]),
      look: looks.conditional[numberOf(rule.attributes["dxfId"]) ?? -1] ?? {},
    })),
  );
  const extended = childrenOf(childOf(root, "extLst"), "ext")
    .flatMap((ext) => childrenOf(childOf(ext, "conditionalFormattings"), "conditionalFormatting"))
    .flatMap((format) =>
      childrenOf(format, "cfRule").map((rule) => {
        const dxf = childOf(rule, "dxf");
        return {
          rule,
          areas: readAreas(childOf(format, "sqref")?.text),
          look: dxf === undefined ? {} : looks.differential(dxf),
        };
      }),
    );
  const priority = ({ rule }: FoundRule): number => numberOf(rule.attributes["priority"]) ?? Number.MAX_SAFE_INTEGER;
  return [...main, ...extended].sort((one, other) => priority(one) - priority(other));
}

/** The conditional formats of a sheet's part, first ones first; `lost` is told the kinds that are left out. */
export function readConditionalFormats(
  root: XmlElement,
  looks: FileLooks,
  lost: (kind: string) => void,
): readonly ConditionalFormatState[] {
  return rulesIn(root, looks).flatMap(({ rule, areas, look }): readonly ConditionalFormatState[] => {
    const [first] = areas;
    if (first === undefined) return [];
    const condition = conditionOf(rule, first);
    if (condition === undefined) {
      lost(rule.attributes["type"] ?? "unknown");
      return [];
    }
    // The condition is meant for the first area's first cell; the grid takes each area's first cell for that.
    return areas.map((area) => ({
      ranges: [areaText(area)],
      rule: {
        type: "CellIsRule",
        operator: "customFormula",
        values: [movedFormula(condition, area.row - first.row, area.column - first.column)],
        style: look,
      },
      ...(isOn(rule.attributes["stopIfTrue"]) ? { stopIfTrue: true } : {}),
    }));
  });
}
