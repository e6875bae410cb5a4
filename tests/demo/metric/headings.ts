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

/** Each system's own units; the law's and the scalds' temperatures are said in both degrees. */
const foreign: Readonly<Record<Exclude<UnitSystem, "US">, RegExp>> = {
  metric: /\b(?:gal|fl oz|lb|ft²|imperial)\b|, in\b|°F(?! \(\d+ °C\))/,
  imperial: /(?<!imperial )\bgal\b|\bUS fl oz\b|\blb\b|, L\b|, cm\b|m²|°F(?! \(\d+ °C\))/,
};

/** Words of an empty log of that system in which a unit of another one stands. */
export function foreignWords(system: Exclude<UnitSystem, "US">): readonly string[] {
  return layOut(jobLog, { system }, { fields: {}, rows: {} })
    .sheets.flatMap(wordsOf)
    .filter((words) => foreign[system].test(words));
}
