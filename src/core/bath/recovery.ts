import { checkWithin } from "../limits/domain.ts";
import { phTolerance, readablePh } from "../limits/domains.ts";
import { roundingError } from "../numeric/rounding-error.ts";
import type { PH } from "../units/quantity.ts";

export type Recovery = "recovered" | "short" | "over";

/**
 * Whether a bath came back to its baseline after an addition.
 *
 * @throws OutOfRange for a value outside its domain
 */
export function recovery(after: PH, baseline: PH, tolerance: number): Recovery {
  checkWithin("after", after, readablePh);
  checkWithin("baseline", baseline, readablePh);
  checkWithin("tolerance", tolerance, phTolerance);
  if (Math.abs(after - baseline) <= tolerance + roundingError) return "recovered";
  return after < baseline ? "short" : "over";
}
