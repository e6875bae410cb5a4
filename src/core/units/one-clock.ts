/** Excel's day number of January 1, 2000; nobody counts as many hours of a bath, four years. */
const firstDate = 36_526;

/** Hours of a year and more: no date of a log is as early. */
const mostHours = 10_000;

/** The first of the hours in a list that holds dates too; the difference between the two would be neither. */
export function hoursAmongDates(times: readonly (number | undefined)[]): number | undefined {
  return times.some((time) => time !== undefined && time >= firstDate)
    ? times.find((time) => time !== undefined && time < mostHours)
    : undefined;
}
