import { checkWithin } from "../limits/domain.ts";
import { readablePh } from "../limits/domains.ts";
import { roundingError } from "../numeric/rounding-error.ts";
import type { PH } from "../units/quantity.ts";

/**
 * Whether a watery waste has the characteristic of corrosivity by its pH: 2 and less, or 12.5 and more, 40 CFR
 * 261.22(a)(1).
 *
 * @throws OutOfRange for a pH outside the scale
 */
export function corrosive(reading: PH): boolean {
  checkWithin("pH", reading, readablePh);
  return reading <= 2 + roundingError || reading >= 12.5 - roundingError;
}
