import { checkWithin } from "../limits/domain.ts";
import { concentrateAlkalinity, liquidVolume, waterAlkalinity } from "../limits/domains.ts";
import type { Alkalinity, CubicMeters } from "../units/quantity.ts";
import { cubicMeters } from "../units/quantity.ts";
import { checkFits, short } from "./extra-dose.ts";

/**
 * Concentrate that the water's bicarbonate eats: each equivalent of bicarbonate takes one of
 * hydroxide (HCO3⁻ + OH⁻ → CO3²⁻ + H2O), so volume × alkalinity / strength of the concentrate.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "invalid" where the extra comes to more concentrate than water
 */
export function alkalinityDose(volume: CubicMeters, water: Alkalinity, concentrate: Alkalinity): CubicMeters {
  checkWithin("volume", volume, liquidVolume);
  checkWithin("alkalinity", water, waterAlkalinity);
  checkWithin("strength", concentrate, concentrateAlkalinity);
  const share = water / concentrate;
  checkFits(share, {
    figure: `Strength is ${short(concentrate / 1000)} eq/L`,
    otherwise: `If the data sheet says equivalents per mL, it is ${short(concentrate)} eq/L`,
  });
  return cubicMeters(volume * share);
}
