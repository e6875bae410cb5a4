import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { chargeStrength, liquidVolume, plainAmount } from "../limits/domains.ts";
import type { CubicMeters, VolumeFraction } from "../units/quantity.ts";
import { cubicMeters, volumeFraction } from "../units/quantity.ts";
import { farthestEstimate } from "./common-practice.ts";

/** The smallest doses that pass in two equal jars, in any one unit. */
export interface PassingDoses {
  readonly inThisWater: number;
  readonly inReference: number;
}

/**
 * Concentrate for a finished bath by a jar test: volume × label strength × dose in this water / dose in the
 * reference water.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "invalid" where the dose comes to more concentrate than water
 */
export function jarDose(volume: CubicMeters, doses: PassingDoses, labelStrength: VolumeFraction): CubicMeters {
  checkWithin("volume", volume, liquidVolume);
  return cubicMeters(volume * jarStrength(doses, labelStrength));
}

/** The strength that the same jars ask for. Throws as `jarDose`. */
export function jarStrength(doses: PassingDoses, labelStrength: VolumeFraction): VolumeFraction {
  checkWithin("dose in this water", doses.inThisWater, plainAmount);
  checkWithin("dose in reference", doses.inReference, plainAmount);
  checkWithin("label dose", labelStrength, chargeStrength);
  const strength = labelStrength * (doses.inThisWater / doses.inReference);
  if (strength > chargeStrength.high) {
    throw new DomainError(
      "invalid",
      "Dose in this water over dose in reference comes to more concentrate than water; both must be amounts in one unit, for equal jars",
    );
  }
  const times = doses.inThisWater / doses.inReference;
  if (times > farthestEstimate || times < 1 / farthestEstimate) {
    throw new DomainError(
      "no-answer",
      `Dose in this water is ${times > 1 ? times.toFixed(0) : times.toPrecision(1)} times dose in reference, and no water makes so much of a difference. Check both doses: amounts in one unit, for equal jars.`,
    );
  }
  return volumeFraction(strength);
}
