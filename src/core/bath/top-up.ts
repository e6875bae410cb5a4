import { checkWithin } from "../limits/domain.ts";
import { liquidVolume, readablePh, shareOfWhole } from "../limits/domains.ts";
import type { CubicMeters, PH } from "../units/quantity.ts";
import { cubicMeters } from "../units/quantity.ts";
import type { Bath } from "./bath.ts";
import { questionOf } from "./bath.ts";
import { estimateTopUp } from "./model/estimate-top-up.ts";

/** How a bath lost its pH, as far as a shop can say: alkali used up by acid soil, or bath replaced by water. */
export const losses = ["acid", "dilution"] as const;

export interface TopUp {
  readonly low: CubicMeters;
  readonly best: CubicMeters;
  readonly high: CubicMeters;
}

/**
 * Concentrate that brings a bath from a reading at the baseline's temperature back to its baseline;
 * without a known loss, over all of them.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "no-answer" where no bath gives these readings or no amount leads back
 */
export function topUp(openingDose: CubicMeters, bath: Bath, reading: PH, loss?: (typeof losses)[number]): TopUp {
  checkWithin("opening dose", openingDose, liquidVolume);
  checkWithin("reading", reading, readablePh);
  const share = estimateTopUp(questionOf(bath), reading, loss);
  return {
    low: cubicMeters(share.low * openingDose),
    best: cubicMeters(share.best * openingDose),
    high: cubicMeters(share.high * openingDose),
  };
}

/**
 * What to add first: never more than the house's share of the opening dose, since reading again
 * after mixing tells more than any estimate.
 *
 * @throws OutOfRange for a share outside its domain
 */
export function firstAddition(openingDose: CubicMeters, best: CubicMeters, houseShare: number): CubicMeters {
  checkWithin("house share", houseShare, shareOfWhole);
  return cubicMeters(Math.min(best, houseShare * openingDose));
}
