import { serialOf } from "../../advice/wording/moments.ts";
import { firstDay } from "../../joblog/layout/validation-plans.ts";
import { cellWords } from "./cell-words.ts";

/** Which part of 3/1/2027 is the month. */
export type DateOrder = "month first" | "day first";

/** A day as a serial number, and the part of a day after midnight where a time stands with it. */
export type DayReading =
  | { readonly read: "day"; readonly day: number; readonly time: number | undefined }
  /** Either order makes a day of it. */
  | { readonly read: "ambiguous" }
  | { readonly read: "nothing" };

const nothing: DayReading = { read: "nothing" };
const months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
/** The last day of Excel's calendar, 31 December 9999. */
const lastDay = 2_958_465;

const weekday = /^(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*\.?,? /i;
const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?=$|[\sT,])/;
const yearLast = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4}|\d{2})(?=$|[\s,])/;
const dayNamed = /^(\d{1,2})[- ]?([a-z]{3,9})\.?[- ,]+(\d{4}|\d{2})(?=$|[\s,])/i;
const monthNamed = /^([a-z]{3,9})\.? (\d{1,2}),? (\d{4})(?=$|[\s,])/i;
const clock = /^(\d{1,2})(?::(\d{2}))?(?::(\d{2}))? ?(?:([ap])\.?m?\.?)?$/i;

/** 9.30 is half past nine, or nine hours and three tenths. */
export type DotTime = "clock" | "hours";

const hourLetter = /^(\d{1,2}) ?h ?(\d{2})?$/i;
const dotted = /^(\d{1,2})\.(\d{1,2})$/;
const dottedWithHalf = /^(\d{1,2})\.(\d{2}) ?([ap])\.?m?\.?$/i;
/** 1150 and 0930, and the 930 that a spreadsheet makes of 0930. */
const bareClock = /^(\d{1,2})(\d{2})$/;

/** Ways that people write a time and that the clock's own pattern does not have; undefined where it is none of them. */
function asClock(text: string): string | undefined {
  if (/^(?:12 ?)?noon$/i.test(text)) return "12:00";
  const letter = hourLetter.exec(text);
  if (letter !== null) return `${letter[1] ?? ""}:${letter[2] ?? "00"}`;
  return dottedWithHalf.test(text) ? text.replace(".", ":") : undefined;
}

/** The part of a day after midnight that a text names: 14:05, 2:05 PM, 9 am, 10h30, noon. */
function timeOf(given: string): number | undefined {
  const tidy = given.trim();
  const text = asClock(tidy) ?? tidy;
  const parts = clock.exec(text);
  if (parts === null || (parts[2] === undefined && parts[4] === undefined)) return undefined;
  const [hour, minute, second] = [parts[1], parts[2], parts[3]].map((part: string | undefined) =>
    Number(part ?? 0),
  ) as [number, number, number];
  const half = parts[4]?.toLowerCase();
  if (minute > 59 || second > 59 || (half === undefined ? hour > 23 : hour < 1 || hour > 12)) return undefined;
  const hours = half === undefined ? hour : (hour % 12) + (half === "p" ? 12 : 0);
  return hours / 24 + minute / 1440 + second / 86_400;
}

function dayOf(year: number, month: number, day: number): number | undefined {
  const two = (value: number): string => String(value).padStart(2, "0");
  return serialOf(`${String(year < 100 ? 2000 + year : year)}-${two(month)}-${two(day)}`);
}

function monthOf(word: string): number {
  return months.findIndex((name) => word.toLowerCase().startsWith(name)) + 1;
}

function numbersOf(parts: RegExpExecArray): readonly [number, number, number] {
  return [Number(parts[1]), Number(parts[2]), Number(parts[3])];
}

/** The day of 3/1/2027: of both orders that make one, the chosen. */
function dayInOrder(
  [first, second, year]: readonly [number, number, number],
  order: DateOrder | undefined,
): number | "ambiguous" | undefined {
  const days = { "month first": dayOf(year, first, second), "day first": dayOf(year, second, first) };
  if (order !== undefined) return days[order];
  if (days["month first"] === undefined || days["day first"] === undefined || first === second)
    return days["month first"] ?? days["day first"];
  return "ambiguous";
}

function dayPart(
  text: string,
  order: DateOrder | undefined,
): { readonly day: number | "ambiguous" | undefined; readonly length: number } {
  const iso = yearFirst.exec(text);
  if (iso !== null) return { day: dayOf(...numbersOf(iso)), length: iso[0].length };
  const numeric = yearLast.exec(text);
  if (numeric !== null) return { day: dayInOrder(numbersOf(numeric), order), length: numeric[0].length };
  const named = dayNamed.exec(text);
  if (named !== null)
    return { day: dayOf(Number(named[3]), monthOf(named[2] ?? ""), Number(named[1])), length: named[0].length };
  const american = monthNamed.exec(text);
  if (american !== null)
    return {
      day: dayOf(Number(american[3]), monthOf(american[1] ?? ""), Number(american[2])),
      length: american[0].length,
    };
  return { day: undefined, length: 0 };
}

/** Reads a date cell, with or without a time in it: a serial number, or a text in one of the usual ways. */
export function readDay(value: unknown, order: DateOrder | undefined): DayReading {
  if (typeof value === "number") {
    if (!(value >= 1 && value < lastDay + 1)) return nothing;
    const day = Math.floor(value);
    return { read: "day", day, time: value === day ? undefined : value - day };
  }
  const text = cellWords(value).replace(weekday, "");
  const { day, length } = dayPart(text, order);
  if (day === "ambiguous") return { read: "ambiguous" };
  if (day === undefined) return nothing;
  const rest = text.slice(length).replace(/^[T,\s]+/, "");
  const time = rest === "" ? undefined : timeOf(rest);
  return rest !== "" && time === undefined ? nothing : { read: "day", day, time };
}

/** 9.30 by the way that the person says. A number has lost its last 0: 9.3 was 9.30. */
function dottedTime(value: unknown, way: DotTime): number | undefined {
  const [, hour = "", part = ""] = dotted.exec(cellWords(value)) ?? [];
  const hours = Number(`${hour}.${part}`);
  if (way === "hours") return hours < 24 ? hours / 24 : undefined;
  return part.length === 1 && typeof value !== "number" ? undefined : timeOf(`${hour}:${part.padEnd(2, "0")}`);
}

/** Whether a cell of a column of times can be read two ways, as 9.30. */
export function isDotted(value: unknown): boolean {
  return dotted.test(cellWords(value)) && !(typeof value === "number" && value < 1);
}

/** Reads a time cell: a part of a day, or a text; four digits, since the column holds times. Undefined where it is none. */
export function readTime(value: unknown, way?: DotTime): number | undefined {
  if (isDotted(value)) return way === undefined ? undefined : dottedTime(value, way);
  if (typeof value === "number" && value < 1) return value >= 0 ? value : undefined;
  const bare = bareClock.exec(cellWords(value));
  return bare === null ? timeOf(cellWords(value)) : timeOf(`${bare[1] ?? ""}:${bare[2] ?? ""}`);
}

/** How a sheet's dates are to be read. */
export interface MomentRules {
  readonly order: DateOrder | undefined;
  /** The part of a day that stands for a time that the sheet does not name; undefined where there is none. */
  readonly usualTime: number | undefined;
  readonly dotTime?: DotTime | undefined;
}

export type MomentReading = { readonly moment: number } | { readonly why: string };

/** A date cell as the serial number of its day, or why not; a time that stands with it says nothing more. */
export function readDate(date: unknown, order: DateOrder | undefined): MomentReading {
  const given = `"${cellWords(date)}"`;
  const reading = readDay(date, order);
  if (reading.read === "ambiguous") return { why: `the date ${given} can be read two ways` };
  if (reading.read === "nothing") return { why: `the date ${given} cannot be read` };
  return reading.day < firstDay ? { why: `the date ${given} is before the year 2000` } : { moment: reading.day };
}

/** Date cell and time cell together as one serial number, or why not. `time` is undefined where the sheet has no such column. */
export function readMoment(
  date: unknown,
  time: { readonly value: unknown } | undefined,
  { order, usualTime, dotTime }: MomentRules,
): MomentReading {
  const day = readDate(date, order);
  if ("why" in day) return day;
  const given = `"${cellWords(date)}"`;
  const reading = readDay(date, order);
  const own = reading.read === "day" ? reading.time : undefined;
  const timeText = time === undefined ? "" : cellWords(time.value);
  const beside = timeText === "" ? undefined : readTime(time?.value, dotTime);
  if (beside === undefined && isDotted(time?.value) && dotTime === undefined)
    return { why: `the time "${timeText}" can be read two ways` };
  if (timeText !== "" && beside === undefined) return { why: `the time "${timeText}" cannot be read` };
  if (beside !== undefined && own !== undefined)
    return { why: `a time stands with the date ${given} and another beside it, "${timeText}"` };
  const part = beside ?? own ?? usualTime;
  return part === undefined ? { why: "the time is blank" } : { moment: day.moment + part };
}

/** Orders that the dates of a column speak for: 3/14/2027 can only have the month first. Ambiguous ones speak for none. */
export function ordersIn(values: readonly unknown[]): {
  readonly proven: readonly DateOrder[];
  readonly ambiguous: boolean;
} {
  const proven = new Set<DateOrder>();
  let ambiguous = false;
  for (const value of values) {
    if (typeof value !== "string" || yearLast.exec(cellWords(value).replace(weekday, "")) === null) continue;
    const [month, day] = (["month first", "day first"] as const).map((order) => readDay(value, order).read === "day");
    if (readDay(value, undefined).read === "ambiguous") ambiguous = true;
    else if (month !== day) proven.add(month === true ? "month first" : "day first");
  }
  return { proven: [...proven], ambiguous };
}
