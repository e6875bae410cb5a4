import { checkWithin } from "../limits/domain.ts";
import { stagedAcid } from "../limits/domains.ts";

/** Most first, then half as much, so that the end is reached in small steps; common practice, no source. */
const firstShare = 0.6;
const secondShare = 0.3;

/**
 * A planned amount of acid in three stages: 60 %, 30 %, and the rest to finish with.
 *
 * @throws OutOfRange for a value outside its domain
 */
export function acidStages(amount: number): readonly [first: number, second: number, rest: number] {
  checkWithin("amount", amount, stagedAcid);
  const first = firstShare * amount;
  const second = secondShare * amount;
  return [first, second, amount - first - second];
}
