import { memoize } from "../../numeric/bounded-cache.ts";
import type { PH } from "../../units/quantity.ts";
import type { BathQuestion } from "./bath-question.ts";
import { anchoredBaths, largestOpeningShare, smallestOpeningShare } from "./bath-question.ts";
import type { CalibratedBath } from "./calibrated-bath.ts";
import type { Estimate } from "./estimate.ts";
import { answersIfAny, estimateFrom } from "./estimate.ts";
import type { Loss } from "./loss.ts";
import { topUpTo } from "./share-of-dose.ts";
import type { Leftover, SpentQuestion } from "./spent-baths.ts";
import { keyOfSpentQuestion, spentBaths, usualLosses } from "./spent-baths.ts";
import { boundBySilicate, hardnessOf } from "./water.ts";

/** A log asks for low, best and high of every row, one column after the other. */
const questionsKept = 256;

/** One candidate of the builder, spent in one way, and the top-up it calls for. */
interface Case extends Leftover {
  readonly bath: CalibratedBath;
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
  return [smallestOpeningShare, largestOpeningShare].map((openingShare) =>
    topUpTo({ ...bath, openingShare }, totals, bath.baseline),
  );
}

/** The cases in the other water that the tests allow; none where they leave nothing open. */
function casesInOtherWater(question: SpentQuestion): readonly Case[] {
  const water = question.bath.water.otherwise;
  if (water === undefined) return [];
  return answersIfAny(() => casesOf({ ...question, bath: { ...question.bath, water: { likely: water } } }).flat());
}

/**
 * The cases of a silicate builder in hard water with as much of the hardness bound as there is silicate for: the other
 * end of what calcium and magnesium silicates may do, since the equilibria leave them out.
 */
function casesWithBoundHardness(question: SpentQuestion): readonly Case[] {
  const { builder, water } = question.bath;
  const hard = [water.likely, ...(water.otherwise === undefined ? [] : [water.otherwise])].filter(
    (one) => hardnessOf(one) > 0,
  );
  return hard.flatMap((one) =>
    builder.candidates
      .filter(({ silicate }) => silicate > 0)
      .flatMap((candidate) => {
        const alone = { ...question.bath, builder: { id: JSON.stringify(candidate), candidates: [candidate] } };
        return answersIfAny(() =>
          anchoredBaths({ ...alone, water: { likely: one } }).flatMap(({ opening }) => {
            const bound = boundBySilicate(one, Math.min(1, opening.silicate / hardnessOf(one)));
            return casesOf({ ...question, bath: { ...alone, water: { likely: bound } } }).flat();
          }),
        );
      }),
  );
}

/** The figures that bound the cases of one water: the outermost, each with other volumes of the dose. */
function boundsOf(cases: readonly Case[], question: BathQuestion): readonly number[] {
  const [first] = cases;
  if (first === undefined) return [];
  const lowest = cases.reduce((one, other) => (other.share < one.share ? other : one), first);
  const highest = cases.reduce((one, other) => (other.share > one.share ? other : one), first);
  return [lowest, highest].flatMap((one) => [one.share, ...sharesByVolume(one, question)]);
}

const remembered = memoize(questionsKept, keyOfSpentQuestion, (question: SpentQuestion): Estimate => {
  const cases = casesOf(question);
  const { best } = estimateFrom(cases.map((list) => list.map(({ share }) => share)));
  // Carbon dioxide alone seldom wears a bath down: it widens the range and leaves the best figure alone.
  const seldom: SpentQuestion = { ...question, losses: question.losses === usualLosses ? ["carbon dioxide"] : [] };
  const inLikelyWater = [...cases.flat(), ...answersIfAny(() => casesOf(seldom).flat())];
  const inOtherWater = [question, seldom].flatMap(casesInOtherWater);
  const withBoundHardness = [question, seldom].flatMap(casesWithBoundHardness);
  const bounds = [inLikelyWater, inOtherWater, withBoundHardness].flatMap((list) => boundsOf(list, question.bath));
  return { best, low: Math.min(...bounds), high: Math.max(...bounds) };
});

/**
 * Concentrate that brings a bath from a reading back to its baseline, both at the baseline's temperature,
 * as a share of the opening dose; 0 where the reading is not below the baseline. For a named loss the best
 * figure is the median of the builder's candidates. Without one it is the median of the middles between
 * acid and dilution, and the range also covers carbon dioxide from the air. The range spans candidates,
 * losses and, where they are not known, the volume of the opening dose and the hardness of the water; with a silicate
 * builder in hard water also what silicate binds of the hardness. Throws as `spentBaths`, and `no-answer` where no amount of concentrate leads back.
 */
export function estimateTopUp(bath: BathQuestion, reading: PH, loss?: Loss): Estimate {
  return remembered({ bath, reading, losses: loss === undefined ? usualLosses : [loss] });
}
