import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { blendedValue } from "../limits/domains.ts";

/**
 * Share of the second water in a blend of two that has the target value, from the mass balance
 * (a − target) / (a − b). All three values are of a conserved quantity in one unit.
 *
 * @returns 0 to 1
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError "invalid" where both waters have the same value, "no-answer" where the target does not
 *   lie between them
 */
export function blendShare(a: number, b: number, target: number): number {
  checkWithin("value a", a, blendedValue);
  checkWithin("value b", b, blendedValue);
  checkWithin("target", target, blendedValue);
  if (a === b)
    throw new DomainError("invalid", "Value a and value b are the same, so every blend of the two has that value");
  if (target < Math.min(a, b) || target > Math.max(a, b)) {
    throw new DomainError("no-answer", `No blend of ${a} and ${b} gives ${target}: the target must lie between them`);
  }
  return (a - target) / (a - b);
}
