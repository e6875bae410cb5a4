import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { moneyTotal, shareWeight } from "../limits/domains.ts";

/** Remainders that differ by less than this differ only by the rounding of a double. */
const sameRemainder = 1e-7;

/** Half a cent rounds up as in a worksheet, although a double holds 1.005 as slightly less. For amounts from 0 on. */
export function wholeCents(amount: number): number {
  return Math.round(Number((amount * 100).toPrecision(15)));
}

/**
 * Splits a total to the cent by largest remainder: every part gets its whole cents, and the cents
 * left over go to the largest remainders, ties to the first. The total is first rounded to the cent,
 * and the parts add up to exactly that.
 *
 * @throws OutOfRange for a total or weight outside its domain
 * @throws DomainError when no weight is above zero
 */
export function shareOut(total: number, weights: readonly number[]): number[] {
  checkWithin("total", total, moneyTotal);
  for (const weight of weights) checkWithin("weight", weight, shareWeight);
  const sum = weights.reduce((before, weight) => before + weight, 0);
  if (!(sum > 0)) throw new DomainError("invalid", "Every weight is blank or 0, so there is nothing to share by");

  const sign = total < 0 ? -1 : 1;
  const cents = wholeCents(Math.abs(total));
  const quotas = weights.map((weight) => cents * (weight / sum));
  const parts = quotas.map((quota) => Math.floor(quota));
  const byRemainder = quotas
    .map((quota, index) => ({ index, remainder: quota - (parts[index] ?? 0) }))
    .sort((a, b) =>
      Math.abs(a.remainder - b.remainder) < sameRemainder ? a.index - b.index : b.remainder - a.remainder,
    );
  let left = cents - parts.reduce((before, part) => before + part, 0);
  for (const { index } of byRemainder) {
    if (left <= 0) break;
    parts[index] = (parts[index] ?? 0) + 1;
    left -= 1;
  }
  return parts.map((part) => (part === 0 ? 0 : (sign * part) / 100));
}
