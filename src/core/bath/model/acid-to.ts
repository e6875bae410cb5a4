import { amountAtPH } from "../../chemistry/amount-at-ph.ts";
import type { Composition } from "../../chemistry/composition.ts";
import type { Solids } from "../../chemistry/equilibrium/sweep.ts";
import { checkComposition, checkPH, checkTemperature, mostDissolved } from "../../chemistry/limits.ts";
import { DomainError } from "../../limits/domain-error.ts";
import type { EquivalentsPerKilogram, Kelvin, PH } from "../../units/quantity.ts";
import { equivalentsPerKilogram } from "../../units/quantity.ts";
import type { AcidName } from "./acid.ts";
import { acids } from "./acid.ts";

/** Where the search starts in a solution of no metals, mol/kg. */
const least = 1e-6;

/**
 * Acid that brings a solution down to a pH at a temperature, closed to air, in equivalents as the acid is
 * sold (citric three a mol, sulfuric two); 0 where it is there already. A weak acid's last equivalents do
 * not all count at a high target. Throws `no-answer` where 1 mol/kg of the acid does not reach the target.
 */
export function acidTo(
  totals: Composition,
  temperature: Kelvin,
  acid: AcidName,
  target: PH,
  solids: Solids = "none",
): EquivalentsPerKilogram {
  checkComposition(totals);
  checkTemperature(temperature);
  checkPH(target, "Target pH");
  const { parts, equivalentsPerMole } = acids[acid];
  const guess = Math.max(least, totals.sodium + totals.potassium) / (2 * equivalentsPerMole);
  const question = { base: totals, direction: parts, effect: "lowers", temperature, target, solids } as const;
  const moles = amountAtPH({ ...question, guess, most: mostDissolved });
  if (moles === undefined) {
    throw new DomainError("no-answer", `This acid does not bring this solution to pH ${target.toFixed(2)}`);
  }
  return equivalentsPerKilogram(moles * equivalentsPerMole);
}
