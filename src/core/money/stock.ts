import { checkWithin } from "../limits/domain.ts";
import { amountOrNone, issuedAmount, leadTime, plainAmount } from "../limits/domains.ts";
import { median } from "../numeric/median.ts";

/**
 * Stock at which to order: what is used until the delivery, and the safety stock. In the unit of both.
 *
 * @param leadDays days from order to delivery
 * @throws OutOfRange for a value outside its domain
 */
export function reorderPoint(dailyUse: number, leadDays: number, safety: number): number {
  checkWithin("daily use", dailyUse, plainAmount);
  checkWithin("lead days", leadDays, leadTime);
  checkWithin("safety", safety, amountOrNone);
  return dailyUse * leadDays + safety;
}

/**
 * Days that a stock lasts at the median of the daily issues, of which there must be one.
 *
 * @throws OutOfRange for a value outside its domain
 */
export function stockDays(onHand: number, issues: readonly number[]): number {
  checkWithin("on hand", onHand, amountOrNone);
  for (const issue of issues) checkWithin("issue", issue, issuedAmount);
  return onHand / median(issues);
}
