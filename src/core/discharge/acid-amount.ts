import type { AcidName } from "../bath/model/acid.ts";
import { checkWithin } from "../limits/domain.ts";
import { concentrateAlkalinity, liquidVolume, purityByWeight } from "../limits/domains.ts";
import { interpolate } from "../numeric/interpolate.ts";
import type { Alkalinity, CubicMeters, Kilograms } from "../units/quantity.ts";
import { cubicMeters, kilograms } from "../units/quantity.ts";
import { acidProducts } from "./acid-products.ts";

/** What is weighed or measured out: dry acid by mass, liquid acid by volume. */
export type AcidAmount =
  { readonly form: "dry"; readonly mass: Kilograms } | { readonly form: "liquid"; readonly volume: CubicMeters };

/**
 * Acid that holds some equivalents, at a purity in percent by weight or its usual one.
 *
 * @throws OutOfRange for a purity outside 0 to 100 %, or beyond the strongest solution of that acid
 */
export function acidAmount(acid: AcidName, equivalents: number, purity?: number): AcidAmount {
  const { perEquivalent, usualPurity, density } = acidProducts[acid];
  const percent = purity ?? usualPurity;
  checkWithin("purity", percent, { ...purityByWeight, high: density?.at(-1)?.[0] ?? purityByWeight.high });
  const mass = (equivalents * perEquivalent * 100) / percent;
  return density === undefined
    ? { form: "dry", mass: kilograms(mass) }
    : { form: "liquid", volume: cubicMeters(mass / interpolate(density, percent)) };
}

/**
 * Acid that takes up a titrated alkalinity: volume × alkalinity.
 *
 * @throws OutOfRange for a value outside its domain
 */
export function acidForAlkalinity(
  acid: AcidName,
  volume: CubicMeters,
  alkalinity: Alkalinity,
  purity?: number,
): AcidAmount {
  checkWithin("volume", volume, liquidVolume);
  checkWithin("alkalinity", alkalinity, concentrateAlkalinity);
  return acidAmount(acid, volume * alkalinity, purity);
}
