import { checkWithin } from "../domain.ts";
import { currentModel } from "./current-model.ts";
import { liquidTemperature, liquidVolume, readablePh, shareOfWhole, waterAlkalinity } from "../domains.ts";
import { cubicMeters } from "../units/quantity.ts";
import type { CubicMeters } from "../units/quantity.ts";
import type { FallenBath } from "./bath-model.ts";

export interface TopUp {
  readonly low: CubicMeters;
  readonly best: CubicMeters;
  readonly high: CubicMeters;
}

/**
 * Concentrate that brings a bath back to its baseline.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError where the model does not reach
 */
export function topUp(openingDose: CubicMeters, bath: FallenBath): TopUp {
  checkWithin("opening dose", openingDose, liquidVolume);
  checkWithin("baseline", bath.baseline, readablePh);
  checkWithin("reading", bath.reading, readablePh);
  checkWithin("temperature", bath.temperature, liquidTemperature);
  if (bath.alkalinity !== undefined) checkWithin("alkalinity", bath.alkalinity, waterAlkalinity);
  const share = currentModel.topUpShare(bath);
  return {
    low: cubicMeters(share.low * openingDose),
    best: cubicMeters(share.best * openingDose),
    high: cubicMeters(share.high * openingDose),
  };
}

/** A third of the opening dose first, then mix and read again: common practice, no source. */
export const usualHouseShare = 1 / 3;

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
