import { DomainError } from "../domain-error.ts";
import { combine, combineInto } from "../solution/composition.ts";
import type { Composition } from "../solution/composition.ts";
import { waterIonization } from "../solution/constants/water-ionization.ts";
import { beginSweep, sweepAcid } from "../solution/equilibrium/sweep.ts";
import type { Solids } from "../solution/equilibrium/sweep.ts";
import { mostDissolved } from "../solution/limits.ts";
import type { Kelvin, PH } from "../solution/quantities.ts";
import { rootOfRising } from "./root-of-rising.ts";
import { upperEnd } from "./upper-end.ts";

/** What is known of a bath when one dose has given one pH. */
export interface Anchor {
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
export interface AnchoredBath extends Anchor {
  /** Equivalents of builder that the opening dose brought to each kg of water. */
  readonly load: number;
  readonly opening: Composition;
}

/** Relative to the answer; far finer than a pH meter. */
const fineness = 1e-9;

/**
 * The builder's load that gives a pH at the anchor's temperature; `waterShare` tells how much of the bath
 * is water at a load. Throws `no-answer` where the water alone
 * is at or above that pH, or where no strength of the builder reaches it.
 */
export function loadAtPH(anchor: Anchor, target: PH, waterShare: (load: number) => number): number {
  const { builder, water, temperature } = anchor;
  const mixture = { ...combine(mostDissolved, builder, 1, water) };
  const sweep = beginSweep(mixture, temperature, anchor.solids);
  const lacking = (load: number): number => {
    combineInto(mixture, load, builder, waterShare(load), water);
    return sweepAcid(sweep, mixture, target);
  };
  const guess = 10 ** (target - waterIonization(temperature)) + water.carbonate + 1e-6;
  const end = upperEnd(lacking, Math.min(mostDissolved, 1.5 * guess), mostDissolved);
  if (end === undefined) {
    throw new DomainError("no-answer", `This builder does not reach pH ${target.toFixed(2)} at this temperature, however strong`);
  }
  const atWater = end.lower?.atLow ?? lacking(0);
  if (atWater >= 0) {
    throw new DomainError("no-answer", `pH ${target.toFixed(2)} is not above what the water alone reads at this temperature`);
  }
  return rootOfRising(lacking, { low: end.lower?.low ?? 0, atLow: atWater, high: end.high, atHigh: end.atHigh }, fineness * end.high);
}

/** Chooses the strength of the builder so that the bath gives its baseline. Throws as `loadAtPH`. */
export function anchorBath(anchor: Anchor): AnchoredBath {
  const waterShare = 1 - anchor.openingShare;
  const load = loadAtPH(anchor, anchor.baseline, () => waterShare);
  return { ...anchor, load, opening: combine(load, anchor.builder, waterShare, anchor.water) };
}
