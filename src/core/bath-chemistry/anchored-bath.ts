import { DomainError } from "../domain-error.ts";
import { combine, combineInto } from "../solution/composition.ts";
import type { Composition } from "../solution/composition.ts";
import { beginSweep, sweepAcid } from "../solution/equilibrium/sweep.ts";
import type { Solids } from "../solution/equilibrium/sweep.ts";
import { mostDissolved } from "../solution/limits.ts";
import type { Kelvin, PH } from "../solution/quantities.ts";
import { rootOfRising } from "./root-of-rising.ts";

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
  const atWater = lacking(0);
  if (atWater >= 0) {
    throw new DomainError("no-answer", `pH ${target.toFixed(2)} is not above what the water alone reads at this temperature`);
  }
  // An equivalent of builder brings at most one equivalent of base.
  const load = rootOfRising(lacking, atWater, -atWater, mostDissolved);
  if (load === undefined) {
    throw new DomainError("no-answer", `This builder does not reach pH ${target.toFixed(2)} at this temperature, however strong`);
  }
  return load;
}

/** Chooses the strength of the builder so that the bath gives its baseline. Throws as `loadAtPH`. */
export function anchorBath(anchor: Anchor): AnchoredBath {
  const waterShare = 1 - anchor.openingShare;
  const load = loadAtPH(anchor, anchor.baseline, () => waterShare);
  return { ...anchor, load, opening: combine(load, anchor.builder, waterShare, anchor.water) };
}
