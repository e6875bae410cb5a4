/**
 * Date-times between Excel's serial numbers (days since 30 December 1899, no time zone) and the text
 * of a date-time field, `2027-03-01T09:45`, or the same with a blank, as a person types it.
 */
const pattern = /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2}))?)?$/;

const dayInMs = 86_400_000;

const excelZero = Date.UTC(1899, 11, 30);

/** The serial number of a date-time field's text; undefined where it is none. */
export function serialOf(text: string): number | undefined {
  const parts = pattern.exec(text.trim());
  if (parts === null) return undefined;
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0] = parts
    .slice(1)
    .map((part: string | undefined) => Number(part ?? 0));
  const moment = Date.UTC(year, month - 1, day, hour, minute, second);
  const back = new Date(moment);
  const isReal =
    back.getUTCMonth() === month - 1 &&
    back.getUTCDate() === day &&
    back.getUTCHours() === hour &&
    back.getUTCMinutes() === minute;
  if (!isReal) return undefined;
  return (moment - excelZero) / dayInMs;
}

const two = (value: number): string => String(value).padStart(2, "0");

/** The field text of a serial number, to the minute. */
export function fieldTextOf(serial: number): string {
  const minute = 60_000;
  const moment = new Date(Math.round((excelZero + serial * dayInMs) / minute) * minute);
  return `${String(moment.getUTCFullYear())}-${two(moment.getUTCMonth() + 1)}-${two(moment.getUTCDate())}T${two(moment.getUTCHours())}:${two(moment.getUTCMinutes())}`;
}

const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

function inWords(serial: number): { readonly day: string; readonly year: string; readonly time: string } {
  const [date = "", time = ""] = fieldTextOf(serial).split("T");
  const [year = "", month, day] = date.split("-");
  return { day: `${months[Number(month) - 1] ?? ""} ${String(Number(day))}`, year, time };
}

/** `Mar 1, 09:45`: short enough for a narrow pane, no locale that swaps day and month. */
export function shortMoment(serial: number): string {
  const { day, time } = inWords(serial);
  return `${day}, ${time}`;
}

/** `Mar 1, 2027`. */
export function dayWords(serial: number): string {
  const { day, year } = inWords(serial);
  return `${day}, ${year}`;
}

/** `Mar 1, 2027, 09:45`, where the year may be what is wrong. */
export const momentWords = (serial: number): string => `${dayWords(serial)}, ${inWords(serial).time}`;

/** The wall clock's reading as field text. */
export function fieldTextNow(clock: Date): string {
  return `${String(clock.getFullYear())}-${two(clock.getMonth() + 1)}-${two(clock.getDate())}T${two(clock.getHours())}:${two(clock.getMinutes())}`;
}
