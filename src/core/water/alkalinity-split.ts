import { checkWithin } from "../limits/domain.ts";
import { titratedWater } from "../limits/domains.ts";
import type { Alkalinity } from "../units/quantity.ts";
import { alkalinity } from "../units/quantity.ts";

export interface AlkalinitySplit {
  readonly hydroxide: Alkalinity;
  readonly carbonate: Alkalinity;
  readonly bicarbonate: Alkalinity;
}

/** P and T may come in two units, and so miss being equal, or one half of the other, by a rounding of the conversion. */
const roundingError = 1e-12;

/**
 * Hydroxide, carbonate and bicarbonate from the alkalinity to pH 8.3 (P) and to pH 4.5 (T): the table of
 * Standard Methods 2320 B, in which hydroxide and bicarbonate exclude each other. The three are never below 0
 * and add up to T.
 *
 * @throws OutOfRange for a value outside its domain, or P above T
 */
export function alkalinitySplit(p: Alkalinity, total: Alkalinity): AlkalinitySplit {
  checkWithin("total", total, titratedWater);
  const error = total * roundingError;
  const free = Math.abs(p - total) <= error ? total : p;
  checkWithin("p", free, { ...titratedWater, high: total });
  const excess = Math.abs(2 * free - total) <= error ? 0 : 2 * free - total;
  return {
    hydroxide: alkalinity(Math.max(0, excess)),
    carbonate: alkalinity(total - Math.abs(excess)),
    bicarbonate: alkalinity(Math.max(0, -excess)),
  };
}
