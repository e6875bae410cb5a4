import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { concentrateAlkalinity, sampleVolume, titrantNormality, titrantVolume } from "../limits/domains.ts";
import type { Alkalinity, CubicMeters } from "../units/quantity.ts";
import { alkalinity } from "../units/quantity.ts";

/**
 * Alkalinity by titration with a strong acid: titrant × normality / sample (Standard Methods 2320 B).
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "no-answer" where nothing dissolved is as alkaline
 */
export function titratedAlkalinity(titrant: CubicMeters, normality: Alkalinity, sample: CubicMeters): Alkalinity {
  checkWithin("titrant", titrant, titrantVolume);
  checkWithin("normality", normality, titrantNormality);
  checkWithin("sample", sample, sampleVolume);
  const found = alkalinity((titrant * normality) / sample);
  if (found > concentrateAlkalinity.high) {
    throw new DomainError(
      "no-answer",
      `This comes to ${String(Math.round(found / 1000))} eq/L, and the strongest lye holds about 20. Check that the titrant and the sample are in mL and the normality in eq/L.`,
    );
  }
  return found;
}
