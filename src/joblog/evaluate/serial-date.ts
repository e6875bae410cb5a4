const dayMilliseconds = 86_400_000;

/** Day 0 of Excel's serial numbers, as they run from March 1900 on. */
const dayZero = Date.UTC(1899, 11, 30);

export interface CalendarDay {
  readonly year: number;
  /** From 1 to 12. */
  readonly month: number;
  readonly day: number;
}

export function calendarDay(serial: number): CalendarDay {
  const date = new Date(dayZero + Math.floor(serial) * dayMilliseconds);
  return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
}

/** A month beyond December, or a day beyond the month's last, runs over into the next. */
export function serialOf({ year, month, day }: CalendarDay): number {
  return Math.round((Date.UTC(year, month - 1, day) - dayZero) / dayMilliseconds);
}
