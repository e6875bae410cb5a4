import type { Composition } from "../../chemistry/composition.ts";
import { checkPH } from "../../chemistry/limits.ts";
import { memoize } from "../../numeric/bounded-cache.ts";
import type { PH } from "../../units/quantity.ts";
import type { BathQuestion } from "./bath-question.ts";
import { anchoredBaths, keyOfQuestion } from "./bath-question.ts";
import type { CalibratedBath } from "./calibrated-bath.ts";
import { answersOf } from "./estimate.ts";
import type { Loss } from "./loss.ts";
import { afterLoss } from "./loss.ts";

/** What wears a wash bath down when nobody has said which: acid soil or drag-out. */
export const usualLosses: readonly Loss[] = ["acid", "dilution"];

/** A bath that has come down to a reading at its baseline's temperature, in one of some ways. */
export interface SpentQuestion {
  readonly bath: BathQuestion;
  readonly reading: PH;
  readonly losses: readonly Loss[];
}

/** What one loss has left of a bath. */
export interface Leftover {
  readonly loss: Loss;
  readonly totals: Composition;
}

/** One candidate of the builder, and what is left of it by each loss that can have led to the reading. */
export interface SpentBath {
  readonly bath: CalibratedBath;
  readonly leftovers: readonly Leftover[];
}

const questionsKept = 64;

/** One text for all questions that have the same answers. */
export function keyOfSpentQuestion({ bath, reading, losses }: SpentQuestion): string {
  return `${reading} ${losses.join()} ${keyOfQuestion(bath)}`;
}

function spend({ bath: question, reading, losses }: SpentQuestion): readonly SpentBath[] {
  checkPH(reading, "Reading");
  // Nothing lost is the same by every way.
  const ways = reading >= question.baseline ? losses.slice(0, 1) : losses;
  return answersOf(anchoredBaths(question), (bath) => ({
    bath,
    leftovers: answersOf(ways, (loss) => ({ loss, totals: afterLoss(bath, reading, loss) })),
  }));
}

/** Throws as `anchoredBaths`, and `no-answer` where none of the losses can have led to the reading. */
export const spentBaths: (question: SpentQuestion) => readonly SpentBath[] = memoize(
  questionsKept,
  keyOfSpentQuestion,
  spend,
);
