import type { BathQuestion } from "../../../src/core/bath/model/bath-question.ts";
import { anchoredBaths } from "../../../src/core/bath/model/bath-question.ts";
import { ph } from "../../../src/core/units/quantity.ts";
import { temperatureOf } from "./accuracy-of-ph.ts";
import type { TableRow } from "./read-table.ts";
import { readTable } from "./read-table.ts";
import { builderNamed } from "./recipes.ts";
import { waterNamed } from "./waters.ts";

/** Baths of the tables are opened here and topped up when down to `low`. */
export const opening = ph(11.3);
export const low = ph(10.8);

/** The bath of a row, its composition known to the chemist but anchored on its opening pH alone. */
export function questionOf(row: TableRow, celsiusColumn = "celsius"): BathQuestion {
  return {
    baseline: opening,
    temperature: temperatureOf(row, celsiusColumn),
    builder: builderNamed(row.text("recipe")),
    water: { likely: waterNamed(row.text("water")) },
  };
}

export function anchored(question: BathQuestion) {
  const [bath] = anchoredBaths(question);
  if (bath === undefined) throw new Error("A known builder anchors one bath");
  return bath;
}

export function openingDoseOf(row: TableRow): number {
  const match = readTable("top-ups").find(
    (one) => one.text("recipe") === row.text("recipe") && one.text("water") === row.text("water"),
  );
  return match?.number("openingDose") ?? Number.NaN;
}
