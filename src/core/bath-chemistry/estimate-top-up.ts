import type { PH } from "../units/quantity.ts";
import { anchorBath } from "./anchored-bath.ts";
import type { AnchoredBath } from "./anchored-bath.ts";
import { largestOpeningShare, smallestOpeningShare } from "./bath-question.ts";
import type { BathQuestion } from "./bath-question.ts";
import { rememberingLast } from "./bounded-cache.ts";
import { answersIfAny, estimateFrom } from "./estimate.ts";
import type { Estimate } from "./estimate.ts";
import { afterLoss } from "./loss.ts";
import type { Loss } from "./loss.ts";
import { sameSpentQuestion, spentBaths, usualLosses } from "./spent-baths.ts";
import type { Leftover, SpentQuestion } from "./spent-baths.ts";
import { topUpTo } from "./top-up.ts";

/** A log asks for low, best and high of every row, one column after the other. */
const questionsKept = 256;

/** One candidate of the builder, spent in one way, and the top-up it calls for. */
interface Case extends Leftover {
  readonly bath: AnchoredBath;
  readonly share: number;
}

/** The cases of each candidate, one for each loss. */
function casesOf(question: SpentQuestion): readonly (readonly Case[])[] {
  return spentBaths(question).map(({ bath, leftovers }) =>
    leftovers.map((leftover) => ({ ...leftover, bath, share: topUpTo(bath, leftover.totals, bath.baseline) })),
  );
}

/** The top-up of a case where the dose had no volume or much of it; none where its volume is known. */
function sharesByVolume({ bath, totals }: Case, question: BathQuestion): readonly number[] {
  if (question.openingShare !== undefined) return [];
  return [smallestOpeningShare, largestOpeningShare].map((openingShare) => topUpTo({ ...bath, openingShare }, totals, bath.baseline));
}

/** The top-up of a case in the other water that the tests allow; none where they leave nothing open. */
function sharesByWater({ bath, loss }: Case, { bath: question, reading }: SpentQuestion): readonly number[] {
  const water = question.water.otherwise;
  if (water === undefined) return [];
  return answersIfAny(() => {
    const other = anchorBath({ ...bath, water });
    return [topUpTo(other, afterLoss(other, reading, loss), other.baseline)];
  });
}

/** Carries the two outermost cases on to what else is not known. */
function rangeOf(cases: readonly Case[], question: SpentQuestion): { readonly low: number; readonly high: number } {
  const lowest = cases.reduce((one, other) => (other.share < one.share ? other : one));
  const highest = cases.reduce((one, other) => (other.share > one.share ? other : one));
  const sharesOf = (one: Case): readonly number[] => [
    one.share,
    ...sharesByVolume(one, question.bath),
    ...sharesByWater(one, question),
  ];
  return { low: Math.min(...sharesOf(lowest)), high: Math.max(...sharesOf(highest)) };
}

const remembered = rememberingLast(questionsKept, sameSpentQuestion, (question: SpentQuestion): Estimate => {
  const cases = casesOf(question);
  const { best } = estimateFrom(cases.map((list) => list.map(({ share }) => share)));
  // Carbon dioxide alone seldom wears a bath down: it widens the range and leaves the best figure alone.
  const seldom = question.losses === usualLosses ? answersIfAny(() => casesOf({ ...question, losses: ["carbon dioxide"] })) : [];
  return { best, ...rangeOf([...cases, ...seldom].flat(), question) };
});

/**
 * Concentrate that brings a bath from a reading back to its baseline, both at the baseline's temperature,
 * as a share of the opening dose; 0 where the reading is not below the baseline. For a named loss the best
 * figure is the median of the builder's candidates. Without one it is the median of the middles between
 * acid and dilution, and the range also covers carbon dioxide from the air. The range spans candidates,
 * losses and, where they are not known, the volume of the opening dose and the hardness of the water. Throws
 * as `spentBaths`, and `no-answer` where no amount of concentrate leads back.
 */
export function estimateTopUp(bath: BathQuestion, reading: PH, loss?: Loss): Estimate {
  return remembered({ bath, reading, losses: loss === undefined ? usualLosses : [loss] });
}
