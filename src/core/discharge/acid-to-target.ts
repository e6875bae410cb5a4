import type { Bath } from "../bath/bath.ts";
import { questionOf } from "../bath/bath.ts";
import type { AcidName } from "../bath/model/acid.ts";
import { estimateAcidTo } from "../bath/model/estimate-acid.ts";
import { waterDensity } from "../chemistry/constants/water-density.ts";
import { checkWithin } from "../limits/domain.ts";
import { liquidVolume, readablePh } from "../limits/domains.ts";
import type { Alkalinity, CubicMeters, PH } from "../units/quantity.ts";
import { equivalentsPerKilogram } from "../units/quantity.ts";
import type { AcidAmount } from "./acid-amount.ts";
import { acidAmount } from "./acid-amount.ts";

/** As far as the chemistry reaches, 1 eq/L. */
const mostTitrated = { measure: "alkalinity", low: 0, openLow: true, high: 1000 } as const;

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
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "no-answer" where titration and reading contradict each other or the acid does not reach
 */
export function acidToTarget({ volume, bath, titrated }: UsedBath, acid: AcidName, target: PH): AcidAmount {
  checkWithin("volume", volume, liquidVolume);
  checkWithin("ph", bath.baseline, readablePh);
  checkWithin("target ph", target, readablePh);
  if (titrated !== undefined) checkWithin("alkalinity", titrated, mostTitrated);
  if (target >= bath.baseline) return acidAmount(acid, 0);
  const question = questionOf(bath);
  const density = waterDensity(bath.temperature) * 1000;
  const perKilogram = titrated === undefined ? undefined : equivalentsPerKilogram(titrated / density);
  const { low, best } = estimateAcidTo(question, acid, target, perKilogram);
  return acidAmount(acid, (titrated === undefined ? low : best) * density * volume);
}
