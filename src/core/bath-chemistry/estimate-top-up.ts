import type { PH } from "../solution/quantities.ts";
import type { BathQuestion } from "./bath-question.ts";
import { rememberingLast } from "./bounded-cache.ts";
import { estimateFrom } from "./estimate.ts";
import type { Estimate } from "./estimate.ts";
import type { Loss } from "./loss.ts";
import { sameSpentQuestion, spentBaths, usualLosses } from "./spent-baths.ts";
import type { SpentQuestion } from "./spent-baths.ts";
import { topUpTo } from "./top-up.ts";

/** A log asks for low, best and high of every row, one column after the other. */
const questionsKept = 256;

const remembered = rememberingLast(questionsKept, sameSpentQuestion, (question: SpentQuestion) =>
  estimateFrom(
    spentBaths(question).map(({ bath, leftovers }) => leftovers.map((totals) => topUpTo(bath, totals, bath.baseline))),
  ),
);

/**
 * Concentrate that brings a bath from a reading back to its baseline, both at the baseline's temperature,
 * as a share of the opening dose. The best figure is the middle of the losses, the median of the builder's
 * candidates; the range spans them all. 0 where the reading is not below the baseline. Throws as
 * `spentBaths`, and `no-answer` where no amount of concentrate leads back.
 */
export function estimateTopUp(bath: BathQuestion, reading: PH, losses: readonly Loss[] = usualLosses): Estimate {
  return remembered({ bath, reading, losses });
}
