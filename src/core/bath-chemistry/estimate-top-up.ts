import type { Composition } from "../solution/composition.ts";
import type { PH } from "../solution/quantities.ts";
import type { AnchoredBath } from "./anchored-bath.ts";
import { largestOpeningShare, smallestOpeningShare } from "./bath-question.ts";
import type { BathQuestion } from "./bath-question.ts";
import { rememberingLast } from "./bounded-cache.ts";
import { answersIfAny, estimateFrom } from "./estimate.ts";
import type { Estimate } from "./estimate.ts";
import type { Loss } from "./loss.ts";
import { sameSpentQuestion, spentBaths, usualLosses } from "./spent-baths.ts";
import type { SpentQuestion } from "./spent-baths.ts";
import { topUpTo } from "./top-up.ts";

/** A log asks for low, best and high of every row, one column after the other. */
const questionsKept = 256;

/** One candidate of the builder, spent in one way, and the top-up it calls for. */
interface Case {
  readonly bath: AnchoredBath;
  readonly totals: Composition;
  readonly share: number;
}

/** The cases of each candidate, one for each loss. */
function casesOf(question: SpentQuestion): readonly (readonly Case[])[] {
  return spentBaths(question).map(({ bath, leftovers }) =>
    leftovers.map((totals) => ({ bath, totals, share: topUpTo(bath, totals, bath.baseline) })),
  );
}

/** The top-up of a case, and, where the dose's volume is not known, what it were with none or much of it. */
function sharesOf({ bath, totals, share }: Case, question: BathQuestion): readonly number[] {
  if (question.openingShare !== undefined) return [share];
  const withVolume = (openingShare: number): number => topUpTo({ ...bath, openingShare }, totals, bath.baseline);
  return [share, withVolume(smallestOpeningShare), withVolume(largestOpeningShare)];
}

function rangeOf(cases: readonly Case[], question: BathQuestion): { readonly low: number; readonly high: number } {
  const lowest = cases.reduce((one, other) => (other.share < one.share ? other : one));
  const highest = cases.reduce((one, other) => (other.share > one.share ? other : one));
  return { low: Math.min(...sharesOf(lowest, question)), high: Math.max(...sharesOf(highest, question)) };
}

const remembered = rememberingLast(questionsKept, sameSpentQuestion, (question: SpentQuestion): Estimate => {
  const cases = casesOf(question);
  const { best } = estimateFrom(cases.map((list) => list.map(({ share }) => share)));
  // Carbon dioxide alone seldom wears a bath down: it widens the range and leaves the best figure alone.
  const seldom = question.losses === usualLosses ? answersIfAny(() => casesOf({ ...question, losses: ["carbon dioxide"] })) : [];
  return { best, ...rangeOf([...cases, ...seldom].flat(), question.bath) };
});

/**
 * Concentrate that brings a bath from a reading back to its baseline, both at the baseline's temperature,
 * as a share of the opening dose; 0 where the reading is not below the baseline. For a named loss the best
 * figure is the median of the builder's candidates. Without one it is the median of the middles between
 * acid and dilution, and the range also covers carbon dioxide from the air. The range spans candidates,
 * losses and, where the opening dose's volume share is not known, that share. Throws as `spentBaths`, and
 * `no-answer` where no amount of concentrate leads back.
 */
export function estimateTopUp(bath: BathQuestion, reading: PH, loss?: Loss): Estimate {
  return remembered({ bath, reading, losses: loss === undefined ? usualLosses : [loss] });
}
