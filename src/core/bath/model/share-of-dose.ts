import { amountAtPH } from "../../chemistry/amount-at-ph.ts";
import type { Composition } from "../../chemistry/composition.ts";
import { combine } from "../../chemistry/composition.ts";
import { DomainError } from "../../limits/domain-error.ts";
import type { PH } from "../../units/quantity.ts";
import type { CalibratedBath } from "./calibrated-bath.ts";

/** A bath that would need more than this many opening doses is past topping up. */
const mostDoses = 100;
/** Shares below this are rounding. */
const nothing = 1e-7;
/** Where the search starts: half an opening dose. */
const half = 0.5;

/** A spent bath after a top-up, given as a share of the opening dose. */
export function toppedUp(bath: CalibratedBath, spent: Composition, share: number): Composition {
  const thinned = 1 / (1 + share * bath.openingShare);
  return combine(thinned, spent, thinned * share * bath.load, bath.builder);
}

/**
 * Concentrate that brings a spent bath back to a pH at the bath's temperature, as a share of the opening
 * dose; 0 where it is there already. Throws `no-answer` beyond a hundred opening doses.
 */
export function topUpTo(bath: CalibratedBath, spent: Composition, target: PH): number {
  const { temperature, solids, openingShare } = bath;
  if (spent === bath.opening && target <= bath.baseline) return 0;
  // Per kg of the topped-up bath everything is linear in what the concentrate brought to it.
  const thinned = amountAtPH({
    base: spent,
    direction: combine(bath.load, bath.builder, -openingShare, spent),
    effect: "raises",
    temperature,
    target,
    solids,
    guess: half,
    most: mostDoses / (1 + mostDoses * openingShare),
  });
  if (thinned === undefined) {
    throw new DomainError("no-answer", `No top-up of this concentrate brings the bath back to pH ${target.toFixed(2)}`);
  }
  const share = thinned / (1 - thinned * openingShare);
  return share > nothing ? share : 0;
}
