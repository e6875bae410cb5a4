import { checkWithin } from "../limits/domain.ts";
import { readablePh } from "../limits/domains.ts";
import { corrosiveAcid, corrosiveAlkali, meterDoubt } from "../limits/legal-limits.ts";
import { roundingError } from "../numeric/rounding-error.ts";
import type { PH } from "../units/quantity.ts";

/** A margin of more would call a neutral waste corrosive. */
const widestMargin = { measure: "number", low: 0, openLow: true, high: 1 } as const;

/**
 * Whether an aqueous waste has, or may have, the characteristic of corrosivity by its pH: 2 and less, or 12.5 and more
 * (40 CFR 261.22(a)(1)), or nearer to one of these than the margin.
 *
 * @throws OutOfRange for a value outside its domain
 */
export function corrosive(reading: PH, margin: number = meterDoubt): boolean {
  checkWithin("pH", reading, readablePh);
  checkWithin("margin", margin, widestMargin);
  if (reading <= corrosiveAcid + roundingError || reading >= corrosiveAlkali - roundingError) return true;
  return reading < corrosiveAcid + margin - roundingError || reading > corrosiveAlkali - margin + roundingError;
}
