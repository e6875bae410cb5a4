import type { UnitSystem } from "../../../src/core/units/unit-system.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import type { SheetPlan } from "../../../src/joblog/model/plan.ts";

/** What a sheet says by itself, without what a shop typed: captions, headings, labels, help, errors, charts. */
function wordsOf(sheet: SheetPlan): readonly string[] {
  return [
    ...sheet.cells.flatMap((cell) => (cell.kind === "value" ? [String(cell.value)] : [])),
    ...sheet.cells.map(({ numberFormat = "" }) => numberFormat),
    ...sheet.validations.flatMap(({ errorTitle, errorMessage }) => [errorTitle, errorMessage]),
    ...sheet.charts.flatMap(({ title, xTitle, yTitle }) => [title, xTitle, yTitle]),
    sheet.footer,
  ];
}

/** Each system's own units; what law and standards give in figures is said in both: temperatures, and the flow of an eyewash. */
const foreign: Readonly<Record<Exclude<UnitSystem, "US">, RegExp>> = {
  metric: /\b(?:gal(?!\/min \([\d.]+ L\/min\))|fl oz|lb|ft²|imperial)\b|, in\b|°F(?! \(\d+ °C\))/,
  imperial: /(?<!imperial )\bgal\b(?!\/min \([\d.]+ L\/min\))|\bUS fl oz\b|\blb\b|, L\b|, cm\b|m²|°F(?! \(\d+ °C\))/,
};

/** Words of an empty log of that system in which a unit of another one stands. */
export function foreignWords(system: Exclude<UnitSystem, "US">): readonly string[] {
  return layOut(jobLog, { system }, { fields: {}, rows: {} })
    .sheets.flatMap(wordsOf)
    .filter((words) => foreign[system].test(words));
}
