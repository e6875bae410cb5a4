import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { blendedValue, displacedVolume } from "../limits/domains.ts";
import type { CubicMeters } from "../units/quantity.ts";

export interface BlendedWater {
  /** Anything that mixing neither makes nor destroys, in one unit for all waters. */
  readonly value: number;
  readonly volume: CubicMeters;
}

/**
 * Volume-weighted mean of a conserved quantity, in the unit of the values.
 *
 * @throws OutOfRange for a value or volume outside its domain
 * @throws DomainError "invalid" where no water has a volume
 */
export function blend(waters: readonly BlendedWater[]): number {
  for (const { value, volume } of waters) {
    checkWithin("one of the values", value, blendedValue);
    checkWithin("one of the volumes", volume, displacedVolume);
  }
  const whole = waters.reduce((sum, { volume }) => sum + volume, 0);
  if (!(whole > 0)) throw new DomainError("invalid", "Volumes are all 0, so there is no blend");
  return waters.reduce((sum, { value, volume }) => sum + value * (volume / whole), 0);
}
