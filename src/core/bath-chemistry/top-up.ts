import { DomainError } from "../domain-error.ts";
import { combineInto, nothingDissolved } from "../solution/composition.ts";
import type { Composition, MutableComposition } from "../solution/composition.ts";
import { beginSweep, sweepAcid } from "../solution/equilibrium/sweep.ts";
import type { PH } from "../solution/quantities.ts";
import type { AnchoredBath } from "./anchored-bath.ts";
import { rootOfRising } from "./root-of-rising.ts";

/** A bath that would need more than this many opening doses is past topping up. */
const mostDoses = 100;
/** Shares below this are rounding. */
const nothing = 1e-7;

function toppedUpInto(target: MutableComposition, bath: AnchoredBath, spent: Composition, share: number): void {
  const thinned = 1 / (1 + share * bath.openingShare);
  combineInto(target, thinned, spent, thinned * share * bath.load, bath.builder);
}

/** A spent bath after a top-up, given as a share of the opening dose. */
export function toppedUp(bath: AnchoredBath, spent: Composition, share: number): Composition {
  const mixture: MutableComposition = { ...nothingDissolved };
  toppedUpInto(mixture, bath, spent, share);
  return mixture;
}

/**
 * Concentrate that brings a spent bath back to a pH at the bath's temperature, as a share of the opening
 * dose; 0 where it is there already. Throws `no-answer` beyond a hundred opening doses.
 */
export function topUpTo(bath: AnchoredBath, spent: Composition, target: PH): number {
  const mixture = { ...toppedUp(bath, spent, 1) };
  const sweep = beginSweep(mixture, bath.temperature, bath.solids);
  const lacking = (share: number): number => {
    toppedUpInto(mixture, bath, spent, share);
    return sweepAcid(sweep, mixture, target);
  };
  const atLow = lacking(0);
  if (atLow >= -nothing * bath.load) return 0;
  const share = rootOfRising(lacking, atLow, -atLow / bath.load, mostDoses);
  if (share !== undefined) return share;
  throw new DomainError("no-answer", `No top-up of this concentrate brings the bath back to pH ${target.toFixed(2)}`);
}
