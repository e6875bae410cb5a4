import { beginSweep, sweepPH } from "../solution/equilibrium/sweep.ts";
import { checkPH, checkTemperature } from "../solution/limits.ts";
import type { Kelvin, PH } from "../solution/quantities.ts";
import type { AnchoredBath } from "./anchored-bath.ts";
import { anchoredBaths } from "./bath-question.ts";
import type { BathQuestion } from "./bath-question.ts";
import { answersOf, estimateFrom } from "./estimate.ts";
import type { Estimate } from "./estimate.ts";
import { usualLosses } from "./estimate-top-up.ts";
import { afterLoss } from "./loss.ts";
import type { Loss } from "./loss.ts";

function readAt(bath: AnchoredBath, reading: PH, loss: Loss, temperature: Kelvin): number {
  const totals = afterLoss(bath, reading, loss);
  return sweepPH(beginSweep(totals, temperature, bath.solids), totals);
}

/**
 * What a bath reads at another temperature, with a perfect meter, when at the baseline's temperature it
 * would read `reading`; with the baseline itself as the reading, the unspent bath. Best figure and range
 * as in `estimateTopUp`, and the same refusals.
 */
export function estimateReadingAt(
  question: BathQuestion,
  reading: PH,
  temperature: Kelvin,
  losses: readonly Loss[] = usualLosses,
): Estimate {
  checkPH(reading, "Reading");
  checkTemperature(temperature);
  const ways = reading >= question.baseline ? losses.slice(0, 1) : losses;
  return estimateFrom(
    answersOf(anchoredBaths(question), (bath) => answersOf(ways, (loss) => readAt(bath, reading, loss, temperature))),
  );
}
