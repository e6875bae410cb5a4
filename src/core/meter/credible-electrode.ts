import { DomainError } from "../limits/domain-error.ts";
import type { PH } from "../units/quantity.ts";

/** What the electrode gave in a buffer. */
export interface BufferPotential {
  readonly ph: PH;
  readonly millivolts: number;
}

/** An electrode that works is in between, with room on both sides: manuals pass 85 to 105 % (own choice). */
const credibleSlope = { low: 0.5, high: 1.15 } as const;

/** How far from 0 mV a working electrode may be at pH 7: twice the 30 mV that guides pass (own choice). */
const farthestOffset = 60;

const neutral = 7;

/** Refuses millivolts that no working electrode gives: of other buffers, swapped, or misread. */
export function checkCredible(slope: number, one: BufferPotential, other: BufferPotential): void {
  const byPh = (one.millivolts - other.millivolts) / (one.ph - other.ph);
  const offset = one.millivolts + (neutral - one.ph) * byPh;
  if (slope < credibleSlope.low || slope > credibleSlope.high)
    throw new DomainError(
      "no-answer",
      `The slope comes to ${String(Math.round(100 * slope))} %, and an electrode that works gives 85 to 105 %: check both mV, and which buffer each was read in; a blank counts as 0. If they are right, the electrode is worn out.`,
    );
  if (Math.abs(offset) > farthestOffset)
    throw new DomainError(
      "no-answer",
      `By these two it would show ${String(Math.round(offset))} mV at pH 7, and an electrode that works is within 30 of 0: were the two mV swapped, or one left blank?`,
    );
}
