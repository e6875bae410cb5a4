import { roundingError } from "../numeric/rounding-error.ts";

const minutesInDay = 1440;
const minutesInHour = 60;

/** The thinnest ratio that labels ask for, with room (common practice, no source). */
const mostParts = 200;

/** Nobody types a share of the bath to more digits: 5 %, 7.5 %, 10 %. */
const digitsOfShare = 2;

/**
 * The N of 1:N where Excel took the ratio for one hour and N minutes. Only the times of 1:12, 1:48 and 1:84 are
 * shares as people type them (5, 7.5 and 10 %) and are let through; 1:156 is 15 %, too much for a bare share.
 */
export function ratioTakenForTime(value: number): number | undefined {
  const minutes = Math.round(value * minutesInDay);
  const parts = minutes - minutesInHour;
  const isTime = value === minutes / minutesInDay && parts >= 1 && parts <= mostParts;
  return isTime && Number(value.toPrecision(digitsOfShare)) !== value ? parts : undefined;
}

/** Labels of wash baths ask for less; 0.5 is far more often half a percent than half the bath (common practice, no source). */
const mostBareShare = 0.1;

/** Whether a bare number below 1 is rather a percentage than the share of the finished bath. */
export function isShareInDoubt(value: number): boolean {
  return value > mostBareShare + roundingError;
}
