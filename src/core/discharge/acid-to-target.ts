import type { Bath } from "../bath/bath.ts";
import { questionOf } from "../bath/bath.ts";
import type { AcidName } from "../bath/model/acid.ts";
import { estimateAcidTo } from "../bath/model/estimate-acid.ts";
import { waterDensity } from "../chemistry/constants/water-density.ts";
import { checkWithin } from "../limits/domain.ts";
import { bathAlkalinity, liquidVolume, neutralizedPh, treatedPh, treatedTemperature } from "../limits/domains.ts";
import type { Alkalinity, CubicMeters, PH } from "../units/quantity.ts";
import { alkalinity, equivalentsPerKilogram } from "../units/quantity.ts";
import type { AcidAmount } from "./acid-amount.ts";
import { acidAmount } from "./acid-amount.ts";

export interface UsedBath {
  readonly volume: CubicMeters;
  /** The bath; its baseline is the reading now. */
  readonly bath: Bath;
  /** Acid that a titration of the bath to pH 4.5 took; absent where there was none. */
  readonly titrated: Alkalinity | undefined;
}

/**
 * Acid that brings a used bath down to a pH, closed to air; none where it is there already. Without a
 * titration it is the least that the reading calls for over the builder's candidates: what soil acids have
 * bound does not show in the pH.
 *
 * @param purity percent by weight; its usual one where it is left out
 * @throws OutOfRange for a value outside its domain, such as a bath that is hot or hazardous waste, or a target under 6
 * @throws DomainError "invalid" as `acidAmount`, "no-answer" where titration and reading contradict each other or the acid does not reach
 */
export function acidToTarget(
  { volume, bath, titrated }: UsedBath,
  acid: AcidName,
  target: PH,
  purity?: number,
): AcidAmount {
  checkWithin("volume", volume, liquidVolume);
  checkWithin("ph", bath.baseline, treatedPh);
  checkWithin("target ph", target, neutralizedPh);
  checkWithin("temperature", bath.temperature, treatedTemperature);
  if (titrated !== undefined) checkWithin("alkalinity", titrated, bathAlkalinity);
  if (target >= bath.baseline) return acidAmount(acid, volume, alkalinity(0), purity);
  const question = questionOf(bath);
  const density = waterDensity(bath.temperature) * 1000;
  const perKilogram = titrated === undefined ? undefined : equivalentsPerKilogram(titrated / density);
  const { low, best } = estimateAcidTo(question, acid, target, perKilogram);
  return acidAmount(acid, volume, alkalinity((titrated === undefined ? low : best) * density), purity);
}
