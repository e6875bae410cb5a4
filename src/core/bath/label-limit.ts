import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { chargeStrength } from "../limits/domains.ts";
import { roundingError } from "../numeric/rounding-error.ts";
import type { VolumeFraction } from "../units/quantity.ts";
import { volumeFraction } from "../units/quantity.ts";

/** What a bath may hold: its finished volume in the unit of the amounts, and the label's highest strength if known. */
export interface BathLimit {
  readonly volume: number;
  readonly highest: VolumeFraction | undefined;
}

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
  checkWithin("label highest", highest, chargeStrength);
  if (strength <= highest * (1 + roundingError)) return;
  throw new DomainError(
    "no-answer",
    `${what} comes to ${inWords(strength)}, stronger than the label allows. Label highest is ${inWords(highest)}; the label wins.`,
  );
}

/**
 * Refuses concentrate that makes a bath stronger than its label allows, or more concentrate than water whatever the
 * label: then dose and volume were mixed up, or one is in another unit. All that went in is counted: how much of it was
 * dragged out nobody measured.
 *
 * @throws as `checkStrength`, and DomainError "no-answer" where the bath came to more concentrate than water
 */
export function checkPoured(poured: number, limit: BathLimit | undefined): void {
  if (limit === undefined) return;
  const strength = volumeFraction(poured / limit.volume);
  if (strength > chargeStrength.high) {
    throw new DomainError(
      "no-answer",
      `With it, all that was poured in comes to ${String(Number((100 * strength).toPrecision(3)))} % of the bath's volume. ${chargeStrength.tooHigh} Check both amounts and their units.`,
    );
  }
  checkStrength(strength, limit.highest, "With it, all that was poured in");
}
