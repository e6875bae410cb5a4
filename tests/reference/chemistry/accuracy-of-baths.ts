import type { AcidName } from "../../../src/core/bath/model/acid.ts";
import { acidTo } from "../../../src/core/bath/model/acid-to.ts";
import type { BathQuestion } from "../../../src/core/bath/model/bath-question.ts";
import { estimateReadingAt } from "../../../src/core/bath/model/estimate-reading.ts";
import { afterLoss } from "../../../src/core/bath/model/loss.ts";
import { kelvin, ph } from "../../../src/core/units/quantity.ts";
import { temperatureOf } from "./accuracy-of-ph.ts";
import type { AccuracyRow } from "./accuracy-row.ts";
import { accuracyOf, program } from "./accuracy-row.ts";
import { anchored, openingDoseOf, questionOf } from "./known-bath.ts";
import type { TableRow } from "./read-table.ts";
import { readTable } from "./read-table.ts";

function neutralizations(): readonly AccuracyRow[] {
  const names: Readonly<Record<string, AcidName>> = {
    HCl: "hydrochloric",
    H3Cit: "citric",
    NaHSO4: "sodium bisulfate",
  };
  const off = (row: TableRow): number => {
    const acid = names[row.text("acid")];
    if (acid === undefined) throw new Error(`No acid ${row.text("acid")}`);
    return (
      acidTo(row.totals(), temperatureOf(row), acid, ph(row.number("endPH"))) /
        (row.number("milliequivalents") / 1000) -
      1
    );
  };
  const rows = readTable("neutralizations");
  return [
    accuracyOf(
      { subject: "acid to pH 7", ...program, unit: "relative", goalLargest: 0.01 },
      rows.filter((row) => row.number("endPH") === 7).map(off),
    ),
    accuracyOf(
      { subject: "acid to pH 8 and 9", ...program, unit: "relative", goalLargest: 0.02 },
      rows.filter((row) => row.number("endPH") !== 7).map(off),
    ),
  ];
}

function hiddenLoss(): AccuracyRow {
  const rows = readTable("hidden-loss").filter((row) => row.text("loss") === "dilution");
  const differences = rows.map((row) => {
    const bath = anchored({ ...questionOf(row), openingShare: openingDoseOf(row) });
    const spent = afterLoss(bath, ph(row.number("pHLow")), "dilution");
    const marker = bath.opening.sodium - bath.water.sodium;
    return (spent.sodium - bath.water.sodium) / marker - row.number("detergentLeft");
  });
  return accuracyOf(
    { subject: "detergent left after dilution", ...program, unit: "relative", goalLargest: 0.01 },
    differences,
  );
}

function hotAndCold(): readonly AccuracyRow[] {
  const rows = readTable("set-hot-read-cold");
  const questionAt = (row: TableRow): BathQuestion => ({
    ...questionOf(row, "chargeCelsius"),
    baseline: ph(row.number("pHAtCharge")),
    openingShare: row.number("dose"),
  });
  const readings = rows.flatMap((row) =>
    [20, 25, 30, 40, 50, 60].map((celsius) => {
      const question = questionAt(row);
      const estimate = estimateReadingAt(question, question.baseline, kelvin(celsius + 273.15));
      return estimate.best - row.number(`pHAt${celsius}`);
    }),
  );
  const doses = rows.map((row) => {
    const hot = questionAt(row);
    const cold: BathQuestion = { ...hot, temperature: kelvin(298.15), openingShare: row.number("doseForSamePHAt25") };
    return anchored(cold).load / anchored(hot).load / (row.number("doseForSamePHAt25") / row.number("dose")) - 1;
  });
  return [
    accuracyOf(
      {
        subject: "the same bath read at another temperature",
        ...program,
        unit: "pH",
        goalLargest: 0.03,
        goalRootMeanSquare: 0.015,
      },
      readings,
    ),
    accuracyOf(
      { subject: "dose for the same pH hot and cold", ...program, unit: "relative", goalLargest: 0.03 },
      doses,
    ),
  ];
}

/** What a shop asks of an anchored bath, top-ups aside. */
export function accuracyOfBaths(): readonly AccuracyRow[] {
  return [hiddenLoss(), ...hotAndCold(), ...neutralizations()];
}
