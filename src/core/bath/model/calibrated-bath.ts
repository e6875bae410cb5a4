import { amountAtPH } from "../../chemistry/amount-at-ph.ts";
import type { Composition } from "../../chemistry/composition.ts";
import { combine } from "../../chemistry/composition.ts";
import { waterIonization } from "../../chemistry/constants/water-ionization.ts";
import type { Solids } from "../../chemistry/equilibrium/sweep.ts";
import { mostDissolved } from "../../chemistry/limits.ts";
import { DomainError } from "../../limits/domain-error.ts";
import type { Kelvin, PH } from "../../units/quantity.ts";

/** What is known of a bath when one dose has given one pH. */
export interface Calibration {
  readonly baseline: PH;
  readonly temperature: Kelvin;
  /** One candidate of the builder, per equivalent. */
  readonly builder: Composition;
  readonly water: Composition;
  readonly solids: Solids;
  /** Volume of concentrate per volume of opened bath; it only thins the water a little. */
  readonly openingShare: number;
}

/** A bath whose strength has been chosen so that it gives the baseline at the baseline's temperature. */
export interface CalibratedBath extends Calibration {
  /** Equivalents of builder that the opening dose brought to each kg of water. */
  readonly load: number;
  readonly opening: Composition;
}

/** The baths that differ in load alone: base + load·direction, for loads up to `most`. */
export interface LoadLine {
  readonly base: Composition;
  readonly direction: Composition;
  readonly most: number;
}

/**
 * The load of builder that gives a pH at the calibration's temperature. Throws `no-answer` where the base is at or above that pH, or where no strength reaches it.
 */
export function loadAtPH(calibration: Calibration, target: PH, line: LoadLine): number {
  const { base, direction, most } = line;
  const { temperature, solids } = calibration;
  // The hydroxide of that pH, and the base that the water's carbonate takes up.
  const guess = Math.min(most / 2, 10 ** (target - waterIonization(temperature)) + calibration.water.carbonate + 1e-6);
  const load = amountAtPH({ base, direction, effect: "raises", temperature, target, solids, guess, most });
  if (load === undefined) {
    throw new DomainError(
      "no-answer",
      `This builder does not reach pH ${target.toFixed(2)} at this temperature, however strong`,
    );
  }
  if (load <= 0) {
    throw new DomainError(
      "no-answer",
      `pH ${target.toFixed(2)} is not above what the water alone reads at this temperature`,
    );
  }
  return load;
}

/** Chooses the strength of the builder so that the bath gives its baseline. Throws as `loadAtPH`. */
export function calibrateBath(calibration: Calibration): CalibratedBath {
  const { builder, water } = calibration;
  const waterShare = 1 - calibration.openingShare;
  const base = combine(waterShare, water, 0, builder);
  const load = loadAtPH(calibration, calibration.baseline, { base, direction: builder, most: mostDissolved });
  return { ...calibration, load, opening: combine(load, builder, waterShare, water) };
}
