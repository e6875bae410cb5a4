import { waterIonization } from "../../chemistry/constants/water-ionization.ts";
import { beginSweep, sweepPH } from "../../chemistry/equilibrium/sweep.ts";
import { checkTemperature } from "../../chemistry/limits.ts";
import type { Kelvin, PH } from "../../units/quantity.ts";
import { ph } from "../../units/quantity.ts";
import type { BathQuestion } from "./bath-question.ts";
import type { Estimate } from "./estimate.ts";
import { estimateFrom } from "./estimate.ts";
import type { Loss } from "./loss.ts";
import type { Leftover } from "./spent-baths.ts";
import { spentBaths, usualLosses } from "./spent-baths.ts";

/**
 * What a bath reads at another temperature, with a perfect meter, when at the baseline's temperature it
 * would read `reading`; with the baseline itself as the reading, the unspent bath. Best figure and range
 * as in `estimateTopUp`. Throws as `spentBaths`, and `invalid` for a temperature out of range.
 */
export function estimateReadingAt(
  bath: BathQuestion,
  reading: PH,
  temperature: Kelvin,
  losses: readonly Loss[] = usualLosses,
): Estimate {
  checkTemperature(temperature);
  const solids = bath.solids ?? "none";
  const spent = spentBaths({ bath, reading, losses });
  // An alkaline bath keeps about its hydroxide, so its pH moves with the ionization of water.
  const guess = ph(reading + waterIonization(temperature) - waterIonization(bath.temperature));
  const readAt = ({ totals }: Leftover): PH => sweepPH(beginSweep(totals, temperature, solids, guess), totals);
  return estimateFrom(spent.map(({ leftovers }) => leftovers.map(readAt)));
}
