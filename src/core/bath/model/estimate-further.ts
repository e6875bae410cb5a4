import type { PH } from "../../units/quantity.ts";
import type { BathQuestion } from "./bath-question.ts";
import type { Estimate } from "./estimate.ts";
import { answersOf, estimateFrom } from "./estimate.ts";
import { topUpTo } from "./share-of-dose.ts";
import { spentBaths, usualLosses } from "./spent-baths.ts";

/** An addition brought a bath from one reading to another, both at the baseline's temperature. */
export interface Answered {
  readonly before: PH;
  readonly after: PH;
}

/**
 * What a bath still needs once an addition brought it up to `after`, as a multiple of that addition. Neither
 * the opening dose nor the strength of the concentrate matters: the bath's own answer to the addition stands
 * for them. Throws as `spentBaths` and `topUpTo`.
 */
export function estimateFurther(bath: BathQuestion, { before, after }: Answered): Estimate {
  const spent = spentBaths({ bath, reading: before, losses: usualLosses });
  return estimateFrom(
    answersOf(spent, ({ bath: calibrated, leftovers }) =>
      answersOf(leftovers, ({ totals }) => {
        const toReach = topUpTo(calibrated, totals, after);
        return (topUpTo(calibrated, totals, calibrated.baseline) - toReach) / toReach;
      }),
    ),
  );
}
