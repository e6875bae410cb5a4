import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { readablePh, releaseTemperature, sewerLimit } from "../limits/domains.ts";
import type { Kelvin, PH } from "../units/quantity.ts";

/** A release's own limits, both allowed themselves. */
export interface ReleaseLimits {
  readonly low: PH;
  readonly high: PH;
}

export const placesAmongLimits = ["within", "below", "above"] as const;

/**
 * Where a reading lies among a shop's own limits. It says nothing of whether a release is allowed.
 *
 * @param temperature of the sample; absent: not judged
 * @throws OutOfRange for a value outside its domain, such as a sample above 40 °C, which must cool first, or a
 *   limit below the federal floor or at hazardous waste
 * @throws DomainError where the low limit is not below the high one
 */
export function placeAmongLimits(
  reading: PH,
  { low, high }: ReleaseLimits,
  temperature: Kelvin | undefined,
): (typeof placesAmongLimits)[number] {
  checkWithin("pH", reading, readablePh);
  checkWithin("low", low, sewerLimit);
  checkWithin("high", high, sewerLimit);
  if (low >= high)
    throw new DomainError("invalid", "Low must lie below high: the limits are the wrong way around or the same");
  if (temperature !== undefined) checkWithin("temperature", temperature, releaseTemperature);
  if (reading < low) return "below";
  return reading > high ? "above" : "within";
}
