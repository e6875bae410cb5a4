import { checkPoured } from "../../src/core/bath/label-limit.ts";
import type { LoggedAddition } from "../../src/core/bath/learned-top-up.ts";
import { learnedTopUp } from "../../src/core/bath/learned-top-up.ts";
import { DomainError } from "../../src/core/limits/domain-error.ts";
import { ph } from "../../src/core/units/quantity.ts";
import { optionalNumber } from "../arguments/arguments.ts";
import { bathLimit, labelNote, plainLabelVolume } from "../arguments/label-arguments.ts";
import { alignedList, numberOf } from "../arguments/list-arguments.ts";
import { isBlankOrZero, numberFrom, singleCell } from "../arguments/read-cell.ts";
import { baseline, meterAccuracy } from "../arguments/shared-arguments.ts";
import { labelHighest } from "../arguments/strength-argument.ts";
import type { Argument } from "../define-function.ts";
import { defineFunction } from "../define-function.ts";
import { topUpReading } from "./top-up-arguments.ts";

type Column = readonly (number | undefined)[];

const column = (name: string, help: string, unit: string) => alignedList(name, { help, unit, read: numberOf(name) });

/** The rows that have all three figures. */
function complete(additions: Column, befores: Column, afters: Column): readonly LoggedAddition[] {
  if (additions.length !== befores.length || additions.length !== afters.length) {
    const sizes = `${additions.length}, ${befores.length} and ${afters.length}`;
    throw new DomainError(
      "invalid",
      `Additions, befores and afters have ${sizes} cells; they must have the same number.`,
    );
  }
  return additions.flatMap((added, row) => {
    const before = befores[row];
    const after = afters[row];
    return added === undefined || before === undefined || after === undefined
      ? []
      : [{ added, before: ph(before), after: ph(after) }];
  });
}

/** Blank and 0 mean that it is not known. */
const openingDose: Argument<number | undefined, "opening_dose"> = {
  ...optionalNumber(
    "opening_dose",
    "concentrate that the bath was opened with; a top-up of more is refused. Left out: one of more than 10 times the largest addition is",
    "unit of the additions",
    0,
  ),
  read: (input) => {
    const cell = singleCell("opening_dose", input);
    return isBlankOrZero(cell) ? undefined : numberFrom("opening_dose", cell);
  },
};

export const topUpLearned = defineFunction({
  id: "TOPUPLEARNED",
  category: "Threshold and top-up",
  summary: "Top-up judged from the additions logged so far, by their median response in hydroxide.",
  arguments: [
    baseline,
    topUpReading,
    column("additions", "amounts added; rows with a blank are skipped", "any one unit"),
    column("befores", "pH before each addition, at the baseline's temperature", "pH"),
    column("afters", "pH after each was mixed in, at the same temperature", "pH"),
    openingDose,
    meterAccuracy,
    plainLabelVolume,
    labelHighest,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "unit of the additions",
    help: "amount to add; 0 at or above the baseline",
  },
  examples: [
    {
      formula: "=BATH.TOPUPLEARNED(11.42,10.83,{0.3327;0.3327;0.0957},{10.83;11.13;11.33},{11.13;11.33;11.39},1,0.02)",
      cells: [
        11.42,
        10.83,
        [[0.3327], [0.3327], [0.0957]],
        [[10.83], [11.13], [11.33]],
        [[11.13], [11.33], [11.39]],
        1,
        0.02,
      ],
      result: 0.824,
      tolerance: 0.002,
      source: "missing hydroxide over the median of three responses, 0.002399 mol/L for an opening dose at pKw 13.995",
    },
  ],
  notes: [
    "Needs no builder, water or opening dose: the bath's own answers stand for them. Give the additions of this bath only.",
    "Takes all readings to be at one temperature. A buffered bath bends away from hydroxide: mix and read after every addition.",
    "Leaves out an addition that raised or lowered the pH by no more than twice the meter's accuracy, since two readings of one bath can differ by that. Refuses (#N/A) where none is left: mix and read again.",
    "Refuses (#N/A) more than the opening dose, or more than 10 times the largest addition (own choice), and a baseline within 0.1 of 12.5 (D002).",
    labelNote,
    "Against the label the opening dose, if given, and all the additions count.",
  ],
  source: "(10^baseline − 10^reading) / median of (10^after − 10^before) / addition; the ionization of water cancels.",
  compute: ([baselinePh, reading, additions, befores, afters, opening, accuracy, volume, highest]) => {
    const logged = complete(additions, befores, afters);
    const amount = learnedTopUp(baselinePh, reading, logged, { accuracy, openingDose: opening });
    const poured = additions.reduce<number>((sum, added) => sum + (added ?? 0), opening ?? 0);
    checkPoured(poured + amount, bathLimit(volume, highest));
    return amount;
  },
});
