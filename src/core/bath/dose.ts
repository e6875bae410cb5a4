import { checkWithin } from "../limits/domain.ts";
import { chargeStrength, liquidVolume } from "../limits/domains.ts";
import type { CubicMeters, VolumeFraction } from "../units/quantity.ts";
import { cubicMeters } from "../units/quantity.ts";

/**
 * Concentrate for a finished bath: volume × strength.
 *
 * @throws OutOfRange for a volume or strength outside its domain
 */
export function dose(volume: CubicMeters, strength: VolumeFraction): CubicMeters {
  checkWithin("volume", volume, liquidVolume);
  checkWithin("rate", strength, chargeStrength);
  return cubicMeters(volume * strength);
}
