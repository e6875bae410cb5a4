const daySeconds = 86_400;

/** Days from Excel's day 0, 30 December 1899, to 1 January 1970. */
const unixDay = 25_569;

/** 31 December 9999, Excel's last day. */
const lastSerial = 2_958_465;

/** A serial number as the time that a clock shows, to the second; undefined for what no date of Excel is. */
export function wallTime(serial: unknown): Date | undefined {
  if (typeof serial !== "number" || !(serial > 0) || serial > lastSerial) return undefined;
  return new Date(Math.round((serial - unixDay) * daySeconds) * 1000);
}

/** `2027-03`. */
export const monthOf = (wall: Date | undefined): string => wall?.toISOString().slice(0, "2027-03".length) ?? "undated";

const clocks = new Map<string, Intl.DateTimeFormat>();

/** Throws a RangeError for a name that is no time zone of the IANA's. */
function clockIn(zone: string): Intl.DateTimeFormat {
  const known = clocks.get(zone);
  if (known !== undefined) return known;
  const clock = new Intl.DateTimeFormat("en-US", {
    timeZone: zone,
    hourCycle: "h23",
    year: "numeric",
    month: "numeric",
    day: "numeric",
    hour: "numeric",
    minute: "numeric",
    second: "numeric",
  });
  clocks.set(zone, clock);
  return clock;
}

export function isZone(zone: string): boolean {
  try {
    clockIn(zone);
    return true;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

/** By how many milliseconds the zone's clocks are ahead of UTC at that moment. */
function ahead(zone: string, moment: number): number {
  const parts = new Map(
    clockIn(zone)
      .formatToParts(moment)
      .map(({ type, value }) => [type, Number(value)]),
  );
  const part = (type: Intl.DateTimeFormatPartTypes): number => parts.get(type) ?? 0;
  return (
    Date.UTC(part("year"), part("month") - 1, part("day"), part("hour"), part("minute"), part("second")) -
    Math.floor(moment / 1000) * 1000
  );
}

/**
 * The moment at which a zone's clocks show that time. Of an hour that comes twice the first counts; a time that the
 * clocks leave out is taken by the clock before the change, as RFC 5545, 3.3.5, has it for both.
 */
export function inUtc(wall: Date, zone: string): Date {
  const shown = wall.getTime();
  const day = daySeconds * 1000;
  const [before, after] = [ahead(zone, shown - day), ahead(zone, shown + day)];
  const fitting = [before, after].find((offset) => ahead(zone, shown - offset) === offset);
  return new Date(shown - (fitting ?? before));
}
