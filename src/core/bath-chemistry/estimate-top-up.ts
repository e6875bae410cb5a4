import { checkPH } from "../solution/limits.ts";
import type { PH } from "../solution/quantities.ts";
import { anchoredBaths } from "./bath-question.ts";
import type { BathQuestion } from "./bath-question.ts";
import { answersOf, estimateFrom } from "./estimate.ts";
import type { Estimate } from "./estimate.ts";
import { afterLoss } from "./loss.ts";
import type { Loss } from "./loss.ts";
import { topUpTo } from "./top-up.ts";

/** What wears a wash bath down when nobody has said which: acid soil or drag-out. */
export const usualLosses: readonly Loss[] = ["acid", "dilution"];

/**
 * Concentrate that brings a bath from a reading back to its baseline, both at the baseline's temperature,
 * as a share of the opening dose. The best figure is the middle of the losses, the median of the builder's
 * candidates; the range spans them all. 0 where the reading is not below the baseline. Throws as
 * `anchoredBaths`, and `no-answer` where none of the losses can have led to the reading.
 */
export function estimateTopUp(question: BathQuestion, reading: PH, losses: readonly Loss[] = usualLosses): Estimate {
  checkPH(reading, "Reading");
  const baths = anchoredBaths(question);
  const perBath = answersOf(baths, (bath) =>
    answersOf(losses, (loss) => topUpTo(bath, afterLoss(bath, reading, loss), bath.baseline)),
  );
  return estimateFrom(perBath);
}
