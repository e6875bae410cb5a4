import type { UnitSystem } from "../../../core/units/unit-system.ts";
import { absolute, joined, minus, rounded } from "../../formula/arithmetic.ts";
import { when } from "../../formula/choices.ts";
import { is, isBlank, isUnder } from "../../formula/conditions.ts";
import type { Value } from "../../formula/expression.ts";
import type { Log } from "../../formula/log-names.ts";
import { namedCell } from "../../formula/name-log.ts";
import type { FieldDefinition } from "../../model/definition.ts";
import { jobSheet } from "../job/job-sheet.ts";
import { shopSheet } from "../shop/shop-sheet.ts";

type Initial = Readonly<Record<UnitSystem, number>>;

function numbersOf({ initial }: FieldDefinition): Initial | undefined {
  if (initial === undefined) return undefined;
  const { US, metric, imperial } = initial;
  return typeof US === "number" && typeof metric === "number" && typeof imperial === "number"
    ? { US, metric, imperial }
    : undefined;
}

/** The figure a new log starts with, in the log's own units. */
function started({ US, metric, imperial }: Initial, { named: { unitSystem } }: Log): Value {
  if (US === metric && metric === imperial) return US;
  return when(is(unitSystem, "US"), US).when(is(unitSystem, "metric"), metric).otherwise(imperial);
}

/** Two figures that differ in the last digits of a share such as a third are the same. */
const sameWithin = 0.000_001;

/** One line for every limit with a default: says so where the shop set another. */
export const ownLimits: readonly FieldDefinition[] = [jobSheet, shopSheet]
  .flatMap((sheet) => sheet.fields.map((field) => ({ field, sheet: sheet.name })))
  .flatMap(({ field, sheet }) => {
    const initial = numbersOf(field);
    if (initial === undefined) return [];
    return [
      {
        id: `own${field.id.charAt(0).toUpperCase()}${field.id.slice(1)}`,
        name: `Own.${field.name.replaceAll(".", "")}`,
        label: field.label,
        ...(field.unit === undefined ? {} : { unit: field.unit }),
        type: "text",
        help: `Set on the sheet ${sheet}.`,
        formula: (log) => {
          const own = namedCell(field.id);
          const usual = started(initial, log);
          return when(isBlank(own), joined("blank: set it again, default ", rounded(usual, 4)))
            .when(isUnder(absolute(minus(own, usual)), sameWithin), "as the default")
            .otherwise(joined("own: ", rounded(own, 4), ", default ", rounded(usual, 4)));
        },
        signals: [
          { when: { startsWith: "own" }, look: "watch" },
          { when: { startsWith: "blank" }, look: "act" },
          { when: { is: "as the default" }, look: "quiet" },
        ],
      } satisfies FieldDefinition,
    ];
  });
