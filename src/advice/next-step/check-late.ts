/** A check holds to the end of the day that the Meter sheet gives under "Check again by". */
export function isCheckLate(checked: number, days: number, now: number): boolean {
  return Math.floor(now) > Math.floor(checked) + days;
}
