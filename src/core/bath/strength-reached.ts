import { checkWithin } from "../limits/domain.ts";
import { volumeInAnyUnit } from "../limits/domains.ts";
import type { CubicMeters, VolumeFraction } from "../units/quantity.ts";
import { volumeFraction } from "../units/quantity.ts";

/**
 * Strength that a dose gives in a finished bath: dose / volume.
 *
 * @throws OutOfRange for a volume outside its domain, or a dose larger than the finished bath
 */
export function strengthReached(concentrate: CubicMeters, finishedBath: CubicMeters): VolumeFraction {
  checkWithin("volume", finishedBath, volumeInAnyUnit);
  checkWithin("dose", concentrate, {
    ...volumeInAnyUnit,
    high: finishedBath,
    tooHigh: "A bath holds no more than its own volume.",
  });
  return volumeFraction(concentrate / finishedBath);
}
