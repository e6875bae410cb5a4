import { usualTolerance } from "../../../src/core/bath/common-practice.ts";
import type { BathQuestion } from "../../../src/core/bath/model/bath-question.ts";
import { estimateFurther } from "../../../src/core/bath/model/estimate-further.ts";
import { estimateTopUp } from "../../../src/core/bath/model/estimate-top-up.ts";
import type { Loss } from "../../../src/core/bath/model/loss.ts";
import { afterLoss } from "../../../src/core/bath/model/loss.ts";
import { toppedUp, topUpTo } from "../../../src/core/bath/model/share-of-dose.ts";
import { usualLosses } from "../../../src/core/bath/model/spent-baths.ts";
import { acidToReach } from "../../../src/core/chemistry/acid-to-reach.ts";
import type { Composition } from "../../../src/core/chemistry/composition.ts";
import { combine } from "../../../src/core/chemistry/composition.ts";
import { ph } from "../../../src/core/units/quantity.ts";
import type { AccuracyRow } from "./accuracy-row.ts";
import { accuracyOf, program } from "./accuracy-row.ts";
import { anchored, low, opening, openingDoseOf, questionOf } from "./known-bath.ts";
import type { TableRow } from "./read-table.ts";
import { readTable } from "./read-table.ts";

const usual: readonly string[] = usualLosses;
const losses: Readonly<Record<string, Loss>> = { acid: "acid", dilution: "dilution", CO2: "carbon dioxide" };

function topUpsFromSpent(): AccuracyRow {
  const differences = readTable("top-ups").map((row) => {
    const bath = anchored({ ...questionOf(row), openingShare: row.number("openingDose") });
    return topUpTo(bath, row.totals("spent."), ph(row.number("targetPH"))) - row.number("shareNeeded");
  });
  return accuracyOf(
    {
      subject: "top-up of a spent bath of known totals",
      ...program,
      unit: "share of the opening dose",
      goalLargest: 0.02,
    },
    differences,
  );
}

function topUpsFromReading(): AccuracyRow {
  const rows = readTable("top-ups").filter((row) => row.text("loss") in losses && row.number("targetPH") === opening);
  const differences = rows.map(
    (row) => estimateTopUp(questionOf(row), low, losses[row.text("loss")]).best - row.number("shareNeeded"),
  );
  return accuracyOf(
    {
      subject: "top-up from baseline and reading, builder known",
      ...program,
      unit: "share of the opening dose",
      goalLargest: 0.02,
    },
    differences,
  );
}

/** The bath answered a third of the opening dose as the table says; the losses an estimate knows are acid and dilution. */
function furtherAdditions(): AccuracyRow {
  const third = 1 / 3;
  const rows = readTable("top-ups").filter(
    (row) => row.number("targetPH") === opening && usual.includes(row.text("loss")),
  );
  const short = rows.filter((row) => row.number("pHAfterThird") < opening - usualTolerance);
  const differences = short.map((row) => {
    const further = estimateFurther(questionOf(row), { before: low, after: ph(row.number("pHAfterThird")) });
    return further.best * third - (row.number("shareNeeded") - third);
  });
  return accuracyOf(
    {
      subject: "what is missing after a third of the dose, builder known",
      ...program,
      unit: "share of the opening dose",
      goalLargest: 0.05,
    },
    differences,
  );
}

function topUpsWithSolids(): AccuracyRow {
  const differences = readTable("top-ups-with-solids").map((row) => {
    const question: BathQuestion = {
      ...questionOf(row),
      solids: "calcite and brucite",
      openingShare: row.number("openingDose"),
    };
    const bath = anchored(question);
    const spent = afterLoss(bath, low, row.text("loss") === "acid" ? "acid" : "dilution");
    return topUpTo(bath, spent, ph(row.number("targetPH"))) - row.number("shareNeeded");
  });
  return accuracyOf(
    {
      subject: "top-up in hard water with solids",
      ...program,
      unit: "share of the opening dose",
      goalLargest: 0.03,
    },
    differences,
  );
}

/** A round of loss and top-up, and the share that the engine adds in it. */
interface Round {
  readonly row: TableRow;
  readonly share: number;
}

/** Loss and top-up over and over; a first round opens another bath. */
export function topUpRounds(): readonly Round[] {
  const rounds: Round[] = [];
  let totals: Composition | undefined;
  for (const row of readTable("top-up-rounds")) {
    const question = questionOf(row);
    const bath = anchored({ ...question, openingShare: openingDoseOf(row) });
    if (row.number("round") === 1 || totals === undefined) totals = bath.opening;
    const spent: Composition =
      row.text("loss") === "acid"
        ? { ...totals, chloride: totals.chloride + acidToReach(totals, bath.temperature, low) }
        : combine(0.9, totals, 0.1, bath.water);
    const share = topUpTo(bath, spent, opening);
    rounds.push({ row, share });
    totals = toppedUp(bath, spent, share);
  }
  return rounds;
}

function accuracyOfRounds(): AccuracyRow {
  const question = {
    subject: "five rounds of loss and top-up",
    ...program,
    unit: "share of the opening dose",
    goalLargest: 0.02,
  } as const;
  return accuracyOf(
    question,
    topUpRounds().map(({ row, share }) => share - row.number("shareAdded")),
  );
}

/** Top-ups of a bath that has lost some of its alkali. */
export function accuracyOfTopUps(): readonly AccuracyRow[] {
  return [topUpsFromSpent(), topUpsFromReading(), furtherAdditions(), accuracyOfRounds(), topUpsWithSolids()];
}
