import { DomainError } from "../../src/core/limits/domain-error.ts";
import { type MeasuredTank, tankSlip } from "../../src/core/tank/tank-slip.ts";
import type { UnitSystem } from "../../src/core/units/unit-system.ts";
import { inWords, plainNumber } from "../arguments/wording.ts";
import type { CallContext } from "../define-function.ts";

export const bareLengthNote =
  "Lengths without a unit that make a floor of under 30 square inches or over 1,000 US gal are asked about: feet, meters or centimeters may be meant. Where system is given it asks from 10,000 US gal on.";

/** What people measure a tank in, beside what a bare number is taken for. */
const otherUnits: Readonly<
  Record<UnitSystem, { readonly usual: string; readonly larger: string; readonly smaller: string }>
> = {
  US: { usual: "in", larger: "ft", smaller: "cm" },
  metric: { usual: "cm", larger: "m", smaller: "mm" },
  imperial: { usual: "in", larger: "ft", smaller: "cm" },
};

/**
 * Refuses lengths without a unit that make no tank of a shop.
 *
 * @throws DomainError with the likely slip and both readings
 */
export function checkBareLengths(call: CallContext, names: readonly string[], tank: MeasuredTank): void {
  const [name, ...others] = names;
  const bare = name === undefined ? undefined : call.bare.get(name);
  if (name === undefined || bare === undefined || others.some((other) => !call.bare.has(other))) return;
  const size = tankSlip(tank, call.systemNamed);
  if (size === undefined) return;
  const { usual, larger, smaller } = otherUnits[call.system];
  const slip = size === "small" ? larger : smaller;
  throw new DomainError(
    "invalid",
    `${inWords(name)} is ${plainNumber(bare)}, without a unit, and the tank comes out very ${size}: write each length with its unit, “${plainNumber(bare)} ${slip}” or “${plainNumber(bare)} ${usual}”.`,
  );
}
