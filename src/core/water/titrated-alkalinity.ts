import { checkWithin } from "../limits/domain.ts";
import { sampleVolume, titrantNormality, titrantVolume } from "../limits/domains.ts";
import type { Alkalinity, CubicMeters } from "../units/quantity.ts";
import { alkalinity } from "../units/quantity.ts";

/**
 * Alkalinity by titration with a strong acid: titrant × normality / sample (Standard Methods 2320 B).
 *
 * @throws OutOfRange for a value outside its domain
 */
export function titratedAlkalinity(titrant: CubicMeters, normality: Alkalinity, sample: CubicMeters): Alkalinity {
  checkWithin("titrant", titrant, titrantVolume);
  checkWithin("normality", normality, titrantNormality);
  checkWithin("sample", sample, sampleVolume);
  return alkalinity((titrant * normality) / sample);
}
