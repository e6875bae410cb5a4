/** One text for a meter and the minute of its check: a formula that finds the check's row again. */
export function checkKey(meter: string, when: string): string {
  return `${meter}&"|"&ROUND(${when}*1440,0)`;
}
