/** Excel's serial number of Monday 1 March 2027. */
const monday = 46447;

export const demoBath = "B-T1-0301";

/** Serial number of a day of the demo week; Monday is 0. */
export function day(offset: number): number {
  return monday + offset;
}

/** Serial number of a clock time ("09:45") on a day of the demo week. */
export function moment(offset: number, clock: string): number {
  const [hours = 0, minutes = 0] = clock.split(":").map(Number);
  return day(offset) + (hours * 60 + minutes) / 1440;
}
