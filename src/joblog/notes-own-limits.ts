import type { UnitSystem } from "../core/units/unit-system.ts";
import type { FieldDefinition } from "./definition.ts";
import { jobSheet } from "./job-sheet.ts";
import { shopSheet } from "./shop-sheet.ts";

type Initial = Readonly<Record<UnitSystem, number>>;

function numbersOf({ initial }: FieldDefinition): Initial | undefined {
  if (initial === undefined) return undefined;
  const { US, metric, imperial } = initial;
  return typeof US === "number" && typeof metric === "number" && typeof imperial === "number" ? { US, metric, imperial } : undefined;
}

/** The figure a new log starts with, in the log's own units. */
function started({ US, metric, imperial }: Initial, system: string): string {
  if (US === metric && metric === imperial) return String(US);
  return `IF(${system}="US",${String(US)},IF(${system}="metric",${String(metric)},${String(imperial)}))`;
}

/** Two figures that differ in the last digits of a share such as a third are the same. */
const sameWithin = "0.000001";

/** One line for every limit with a default: says so where the shop set another. */
export const ownLimits: readonly FieldDefinition[] = [jobSheet, shopSheet].flatMap((sheet) => sheet.fields.map((field) => ({ field, sheet: sheet.name }))).flatMap(({ field, sheet }) => {
  const initial = numbersOf(field);
  if (initial === undefined) return [];
  return [{
    id: `own${field.id.charAt(0).toUpperCase()}${field.id.slice(1)}`,
    name: `Own.${field.name.replaceAll(".", "")}`,
    label: field.label,
    ...(field.unit === undefined ? {} : { unit: field.unit }),
    type: "text",
    help: `Set on the sheet ${sheet}.`,
    formula: (r) => {
      const [own, usual] = [r.named(field.id), started(initial, r.named("unitSystem"))];
      return `=IF(${own}="","blank: set it again, default "&ROUND(${usual},4),IF(ABS(${own}-${usual})<${sameWithin},"as the default","own: "&ROUND(${own},4)&", default "&ROUND(${usual},4)))`;
    },
    signals: [{ when: { startsWith: "own" }, look: "watch" }, { when: { startsWith: "blank" }, look: "act" }, { when: { is: "as the default" }, look: "quiet" }],
  } satisfies FieldDefinition];
});
