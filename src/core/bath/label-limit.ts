import { checkWithin, type Domain } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { chargeStrength } from "../limits/domains.ts";
import { roundingError } from "../numeric/rounding-error.ts";
import type { VolumeFraction } from "../units/quantity.ts";
import { volumeFraction } from "../units/quantity.ts";

/** The strongest bath that a label allows, and the volume of the finished bath in the unit of the amounts. */
export interface LabelLimit {
  readonly volume: number;
  readonly highest: VolumeFraction;
}

/** No label asks for less than a drop in a cubic meter; what is written as less is a slip. */
const labelStrength: Domain = { ...chargeStrength, low: 1e-7 };

/** "1+28 (3.45 %)" */
function inWords(strength: VolumeFraction): string {
  const parts = Math.round((1 / strength - 1) * 10) / 10;
  return `1+${String(parts)} (${String(Number((100 * strength).toPrecision(3)))} %)`;
}

/**
 * Refuses a strength that the label does not allow.
 *
 * @throws OutOfRange where the label's highest is more concentrate than water, or next to none
 * @throws DomainError "no-answer" where the strength is over it
 */
export function checkStrength(strength: VolumeFraction, highest: VolumeFraction | undefined, what = "This"): void {
  if (highest === undefined) return;
  checkWithin("label highest", highest, labelStrength);
  if (strength <= highest * (1 + roundingError)) return;
  throw new DomainError(
    "no-answer",
    `${what} comes to ${inWords(strength)}, stronger than the label allows. Label highest is ${inWords(highest)}; the label wins.`,
  );
}

/**
 * Refuses concentrate that makes a bath stronger than its label allows. All that went in is counted: how much of it
 * was dragged out nobody measured.
 *
 * @throws as `checkStrength`
 */
export function checkLabel(poured: number, label: LabelLimit | undefined): void {
  if (label === undefined) return;
  checkStrength(volumeFraction(Math.min(1, poured / label.volume)), label.highest, "With it, all that was poured in");
}
