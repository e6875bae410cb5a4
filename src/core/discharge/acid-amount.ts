import type { AcidName } from "../bath/model/acid.ts";
import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { bathAlkalinity, liquidVolume, purityByWeight } from "../limits/domains.ts";
import { interpolate } from "../numeric/interpolate.ts";
import type { Alkalinity, CubicMeters, Kilograms } from "../units/quantity.ts";
import { cubicMeters, kilograms } from "../units/quantity.ts";
import { acidProducts } from "./acid-products.ts";

/** What is weighed or measured out: dry acid by mass, liquid acid by volume. */
export type AcidAmount =
  { readonly form: "dry"; readonly mass: Kilograms } | { readonly form: "liquid"; readonly volume: CubicMeters };

/** Acid to the cubic meter of bath, m³ or t; beyond half the bath the product is too thin to neutralize with. */
const mostAcid = 0.5;
const kilogramsPerTon = 1000;

function percentOf(acid: AcidName, purity: number | undefined): number {
  const { usualPurity, density } = acidProducts[acid];
  const percent = purity ?? usualPurity;
  if (percent === undefined) {
    throw new DomainError(
      "invalid",
      `Purity is blank or 0; ${acid} acid is sold from 5 % (vinegar) to 100 % (glacial, which burns and is flammable), so write the percent by weight on its label.`,
    );
  }
  checkWithin("purity", percent, { ...purityByWeight, high: density?.at(-1)?.[0] ?? purityByWeight.high });
  return percent;
}

function checkPours(share: number, percent: number): void {
  if (share <= mostAcid) return;
  throw new DomainError(
    "invalid",
    `Purity is ${String(Number(percent.toPrecision(3)))} %, so thin that the acid comes to ${String(Number(share.toPrecision(2)))} times the bath. Take a stronger product, or check the purity and the titration.`,
  );
}

/**
 * Acid that brings some equivalents to a bath, at a purity in percent by weight or its usual one.
 *
 * @throws OutOfRange for a purity outside 0 to 100 %, or beyond the strongest solution of that acid
 * @throws DomainError "invalid" without a purity where the acid is sold at any, or where the acid comes to more than
 *   half the bath
 */
export function acidAmount(acid: AcidName, volume: CubicMeters, needed: Alkalinity, purity?: number): AcidAmount {
  const { perEquivalent, density } = acidProducts[acid];
  const percent = percentOf(acid, purity);
  const perVolume = (needed * perEquivalent * 100) / percent;
  if (density === undefined) {
    checkPours(perVolume / kilogramsPerTon, percent);
    return { form: "dry", mass: kilograms(volume * perVolume) };
  }
  const share = perVolume / interpolate(density, percent);
  checkPours(share, percent);
  return { form: "liquid", volume: cubicMeters(volume * share) };
}

/**
 * Acid that takes up a titrated alkalinity: volume × alkalinity.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError as `acidAmount`
 */
export function acidForAlkalinity(
  acid: AcidName,
  volume: CubicMeters,
  alkalinity: Alkalinity,
  purity?: number,
): AcidAmount {
  checkWithin("volume", volume, liquidVolume);
  checkWithin("alkalinity", alkalinity, bathAlkalinity);
  return acidAmount(acid, volume, alkalinity, purity);
}
