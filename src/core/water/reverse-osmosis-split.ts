import { checkWithin } from "../limits/domain.ts";
import { blendedValue, saltRejection, waterRecovery } from "../limits/domains.ts";

export interface ReverseOsmosisSplit {
  /** In the unit of the feed. */
  readonly permeate: number;
  /** In the unit of the feed. */
  readonly reject: number;
  /** Volume of feed for one volume of permeate. */
  readonly feedPerPermeate: number;
}

/**
 * What becomes of a dissolved quantity in a reverse osmosis unit: permeate = feed × (1 − rejection), and what the
 * permeate does not carry leaves with the reject water (mass balance).
 *
 * @param feed concentration in the feed, any one unit
 * @param recovery permeate volume per feed volume
 * @param rejection share of the feed's concentration that the permeate lacks
 * @throws OutOfRange for a value outside its domain
 */
export function reverseOsmosisSplit(feed: number, recovery: number, rejection: number): ReverseOsmosisSplit {
  checkWithin("feed", feed, blendedValue);
  checkWithin("recovery", recovery, waterRecovery);
  checkWithin("rejection", rejection, saltRejection);
  const permeate = feed * (1 - rejection);
  return { permeate, reject: (feed - recovery * permeate) / (1 - recovery), feedPerPermeate: 1 / recovery };
}
