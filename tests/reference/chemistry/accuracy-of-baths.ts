import { acidTo } from "../../../src/core/bath-chemistry/acid-to.ts";
import type { AcidName } from "../../../src/core/bath-chemistry/acid.ts";
import { anchoredBaths } from "../../../src/core/bath-chemistry/bath-question.ts";
import type { BathQuestion } from "../../../src/core/bath-chemistry/bath-question.ts";
import { estimateReadingAt } from "../../../src/core/bath-chemistry/estimate-reading.ts";
import { estimateTopUp } from "../../../src/core/bath-chemistry/estimate-top-up.ts";
import { afterLoss } from "../../../src/core/bath-chemistry/loss.ts";
import type { Loss } from "../../../src/core/bath-chemistry/loss.ts";
import { topUpTo, toppedUp } from "../../../src/core/bath-chemistry/top-up.ts";
import { acidToReach } from "../../../src/core/solution/acid-to-reach.ts";
import { combine } from "../../../src/core/solution/composition.ts";
import type { Composition } from "../../../src/core/solution/composition.ts";
import { kelvin, ph } from "../../../src/core/solution/quantities.ts";
import { accuracyOf } from "./accuracy-row.ts";
import type { AccuracyRow } from "./accuracy-row.ts";
import { temperatureOf } from "./accuracy-of-ph.ts";
import { readTable } from "./read-table.ts";
import type { TableRow } from "./read-table.ts";
import { builderNamed } from "./recipes.ts";
import { waterNamed } from "./waters.ts";

const program = "PHREEQC 3.8.8, phreeqc.dat with heat capacities";
const opening = ph(11.3);
const low = ph(10.8);

const losses: Readonly<Record<string, Loss>> = { acid: "acid", dilution: "dilution", CO2: "carbon dioxide" };

/** The bath of a row, its composition known to the chemist but anchored on its opening pH alone. */
function questionOf(row: TableRow, celsiusColumn = "celsius"): BathQuestion {
  return {
    baseline: opening,
    temperature: temperatureOf(row, celsiusColumn),
    builder: builderNamed(row.text("recipe")),
    water: waterNamed(row.text("water")),
  };
}

function anchored(question: BathQuestion) {
  const [bath] = anchoredBaths(question);
  if (bath === undefined) throw new Error("A known builder anchors one bath");
  return bath;
}

function topUpsFromSpent(): AccuracyRow {
  const differences = readTable("top-ups").map((row) => {
    const bath = anchored({ ...questionOf(row), openingShare: row.number("openingDose") });
    return topUpTo(bath, row.totals("spent."), ph(row.number("targetPH"))) - row.number("shareNeeded");
  });
  return accuracyOf(
    { subject: "top-up of a spent bath of known totals", against: program, unit: "share of the opening dose", goalLargest: 0.02 },
    differences,
  );
}

function topUpsFromReading(): AccuracyRow {
  const rows = readTable("top-ups").filter((row) => row.text("loss") in losses && row.number("targetPH") === opening);
  const differences = rows.map((row) => estimateTopUp(questionOf(row), low, losses[row.text("loss")]).best - row.number("shareNeeded"));
  return accuracyOf(
    { subject: "top-up from baseline and reading, builder known", against: program, unit: "share of the opening dose", goalLargest: 0.02 },
    differences,
  );
}

function topUpsWithSolids(): AccuracyRow {
  const differences = readTable("top-ups-with-solids").map((row) => {
    const question: BathQuestion = { ...questionOf(row), solids: "calcite and brucite", openingShare: row.number("openingDose") };
    const bath = anchored(question);
    const spent = afterLoss(bath, low, row.text("loss") === "acid" ? "acid" : "dilution");
    return topUpTo(bath, spent, ph(row.number("targetPH"))) - row.number("shareNeeded");
  });
  return accuracyOf(
    { subject: "top-up in hard water with solids", against: program, unit: "share of the opening dose", goalLargest: 0.03 },
    differences,
  );
}

/** Loss and top-up over and over, from the rows of one recipe, water and loss. */
function roundsOf(rows: readonly TableRow[]): readonly number[] {
  const differences: number[] = [];
  let totals: Composition | undefined;
  for (const row of rows) {
    const question = questionOf(row);
    const bath = anchored({ ...question, openingShare: openingDoseOf(row) });
    if (row.number("round") === 1 || totals === undefined) totals = bath.opening;
    const spent: Composition =
      row.text("loss") === "acid"
        ? { ...totals, chloride: totals.chloride + acidToReach(totals, bath.temperature, low) }
        : combine(0.9, totals, 0.1, bath.water);
    const share = topUpTo(bath, spent, opening);
    differences.push(share - row.number("shareAdded"));
    totals = toppedUp(bath, spent, share);
  }
  return differences;
}

function openingDoseOf(row: TableRow): number {
  const match = readTable("top-ups").find((one) => one.text("recipe") === row.text("recipe") && one.text("water") === row.text("water"));
  return match?.number("openingDose") ?? Number.NaN;
}

function topUpRounds(): AccuracyRow {
  const question = { subject: "five rounds of loss and top-up", against: program, unit: "share of the opening dose", goalLargest: 0.02 } as const;
  return accuracyOf(question, roundsOf(readTable("top-up-rounds")));
}

function neutralizations(): readonly AccuracyRow[] {
  const names: Readonly<Record<string, AcidName>> = { HCl: "hydrochloric", H3Cit: "citric", NaHSO4: "sodium bisulfate" };
  const off = (row: TableRow): number => {
    const acid = names[row.text("acid")];
    if (acid === undefined) throw new Error(`No acid ${row.text("acid")}`);
    return acidTo(row.totals(), temperatureOf(row), acid, ph(row.number("endPH"))) / (row.number("milliequivalents") / 1000) - 1;
  };
  const rows = readTable("neutralizations");
  return [
    accuracyOf(
      { subject: "acid to pH 7", against: program, unit: "relative", goalLargest: 0.01 },
      rows.filter((row) => row.number("endPH") === 7).map(off),
    ),
    accuracyOf(
      { subject: "acid to pH 8 and 9", against: program, unit: "relative", goalLargest: 0.02 },
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
  return accuracyOf({ subject: "detergent left after dilution", against: program, unit: "relative", goalLargest: 0.01 }, differences);
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
    accuracyOf({ subject: "the same bath read at another temperature", against: program, unit: "pH", goalLargest: 0.03, goalRootMeanSquare: 0.015 }, readings),
    accuracyOf({ subject: "dose for the same pH hot and cold", against: program, unit: "relative", goalLargest: 0.03 }, doses),
  ];
}

/** What a shop asks of an anchored bath. */
export function accuracyOfBaths(): readonly AccuracyRow[] {
  return [
    topUpsFromSpent(),
    topUpsFromReading(),
    topUpRounds(),
    topUpsWithSolids(),
    hiddenLoss(),
    ...hotAndCold(),
    ...neutralizations(),
  ];
}
