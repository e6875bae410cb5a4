import { figure } from "../../advice/wording/figures.ts";
import { serialOf } from "../../advice/wording/moments.ts";
import { fromSi, toSi } from "../../core/units/convert.ts";
import { unitBySymbol } from "../../core/units/find-unit.ts";
import { otherCurrency } from "../../core/units/other-currency.ts";
import { parseMoney } from "../../core/units/parse-money.ts";
import { parseNumber } from "../../core/units/parse-number.ts";
import { parseQuantity } from "../../core/units/parse-quantity.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import { firstDay } from "../../joblog/layout/validation-plans.ts";
import type { InputColumn, RowValue } from "../../joblog/model/definition.ts";
import { headerOf } from "../../joblog/model/headers.ts";
import { isKeyText, keyTextAllowed } from "../../joblog/model/key-text.ts";
import { phLimits, usualPh } from "../../joblog/model/units-of.ts";
import { columnUnit, unclearFigure } from "./unit-kinds.ts";

/** What the text of a field turned out to be for the log. */
export type InputReading =
  | { readonly read: "blank" }
  | {
      readonly read: "value";
      readonly value: RowValue;
      /** What a typed unit was turned into: "127.6 °F". */ readonly converted?: string;
    }
  | { readonly read: "problem"; readonly message: string };

/** Line breaks, tabs, zero-width marks. */
const unseen = /[\p{Cc}\p{Cf}]/u;

type AnyInput = Pick<InputColumn, "label" | "type" | "unit" | "limits" | "key">;

function problem(column: AnyInput, given: string, allowed: string): InputReading {
  return { read: "problem", message: `${column.label}: "${given}" ${allowed}` };
}

function allowedRange({ type, limits }: AnyInput, system: UnitSystem, unit: string): string {
  const range = limits?.[system];
  if (range === undefined) return "Write a number.";
  const shown = (value: number): string => (type === "share" ? `${figure(value * 100, 1)}%` : figure(value, 3));
  const allowed = `Allowed: ${shown(range.low)} to ${shown(range.high)}${unit}.`;
  return limits === phLimits ? `${allowed} ${usualPh}` : allowed;
}

/** Who hands over a value: a person, whose bare number may be in another unit, or a file that the log itself wrote. */
export type Writer = "person" | "log";

/** A share is typed as a percentage or as a decimal. */
function readShare(text: string): ReturnType<typeof parseNumber> {
  if (!text.endsWith("%")) return parseNumber(text);
  const percent = parseNumber(text.slice(0, -1).trim());
  return percent.read === "number" ? { read: "number", value: tidy(percent.value / 100) } : percent;
}

/** Rounds off what unit conversion leaves beyond any instrument, such as 127.57999999999998. */
function tidy(value: number): number {
  return Number(value.toPrecision(10));
}

/** A bare temperature that is in range on the other scale: 25 in a shop of °F. */
function otherScale({ unit, limits }: AnyInput, system: UnitSystem, value: number): string {
  const quantity = columnUnit(unit, system);
  const range = limits?.[system];
  if (quantity?.kind !== "temperature" || range === undefined) return "";
  const [symbol, word] = system === "US" ? (["°C", "C"] as const) : (["°F", "F"] as const);
  const other = fromSi(toSi(value, unitBySymbol(symbol, "temperature")), quantity.unit);
  return other >= range.low && other <= range.high
    ? ` If it is in ${symbol}, write "${figure(value, 3)} ${word}".`
    : "";
}

function checked(
  column: AnyInput,
  system: UnitSystem,
  text: string,
  value: number,
  converted: string | undefined,
): InputReading {
  const unit = column.unit === undefined ? "" : ` ${column.unit[system]}`;
  const limits = column.limits?.[system];
  if (limits !== undefined && (value < limits.low || value > limits.high)) {
    const meant = converted === undefined ? "" : ` (${converted})`;
    const hint = converted === undefined ? otherScale(column, system, value) : "";
    return {
      read: "problem",
      message: `${column.label}: "${text}"${meant} is out of range. ${allowedRange(column, system, unit)}${hint}`,
    };
  }
  if (column.type === "whole number" && !Number.isInteger(value))
    return problem(column, text, "is not a whole number.");
  return converted === undefined ? { read: "value", value } : { read: "value", value, converted };
}

function bareNumber({ type }: AnyInput, text: string): ReturnType<typeof parseNumber> {
  if (type === "share") return readShare(text);
  return type === "money" ? parseMoney(text) : parseNumber(text);
}

function readNumber(
  column: AnyInput,
  system: UnitSystem,
  text: string,
  writer: Writer,
  currency: string | undefined,
): InputReading {
  const unit = column.unit === undefined ? "" : ` ${column.unit[system]}`;
  const allowed = allowedRange(column, system, unit);
  const quantity = columnUnit(column.unit, system);
  const ambiguous = (readings: readonly [number, number]): InputReading =>
    problem(column, text, `can be ${figure(readings[0], 3)} or ${figure(readings[1], 3)}. Write it without the comma.`);
  if (quantity === undefined) {
    const other = column.type === "money" && currency !== undefined ? otherCurrency(text, currency) : undefined;
    if (other !== undefined)
      return problem(column, text, `is in ${other}, and the log is kept in ${currency ?? ""}. Convert it first.`);
    const reading = bareNumber(column, text);
    if (reading.read === "ambiguous") return ambiguous(reading.readings);
    if (reading.read === "nothing") return problem(column, text, `is not a number. ${allowed}`);
    return checked(column, system, text, reading.value, undefined);
  }
  const bare = parseNumber(text);
  const unclear =
    writer === "person" && bare.read === "number" ? unclearFigure(column.unit, bare.value, system) : undefined;
  if (unclear !== undefined) {
    const [slip, usual] = unclear.readings;
    return problem(column, text, `has no unit. Write "${slip}" (${unclear.slip}) or "${usual}".`);
  }
  const reading = parseQuantity(text, quantity.kind, system, quantity.unit);
  switch (reading.read) {
    case "quantity": {
      const value = tidy(fromSi(reading.si, quantity.unit));
      return checked(
        column,
        system,
        text,
        value,
        reading.unit === quantity.unit ? undefined : `${figure(value, 2)}${unit}`,
      );
    }
    case "ambiguous":
      return ambiguous(reading.readings);
    case "undecided":
      return problem(column, text, `needs a country: ${reading.choices.join(" or ")}.`);
    case "other kind":
      return problem(column, text, `is a ${reading.unit.kind}, not a ${quantity.kind}. ${allowed}`);
    case "unknown unit":
      return problem(column, text, `has a unit that is not known: ${reading.word}. Write a plain number for${unit}.`);
    case "nothing":
      return problem(column, text, `is not a number. ${allowed}`);
  }
}

/** Excel cuts off what is longer; nobody types so much into one field. */
const longestText = 1000;

/** Letters that look alike are one letter in the log too, or a name would not be found by the same name. */
function readText(column: AnyInput, typed: string): InputReading {
  const text = typed.normalize("NFC");
  if (text.length > longestText)
    return {
      read: "problem",
      message: `${column.label}: ${String(text.length)} characters are too many. Allowed: ${String(longestText)}.`,
    };
  if (column.key !== true) return { read: "value", value: text };
  if (unseen.test(text))
    return problem(column, text, "holds a character that cannot be seen. Type it instead of pasting it.");
  return isKeyText(text)
    ? { read: "value", value: text }
    : problem(column, text, `cannot be looked up. Allowed: ${keyTextAllowed}.`);
}

/**
 * Reads what a person typed for a column of the log: numbers as people write them, quantities in any
 * unit of their kind ("53.1 C"), date-times as a date-time field gives them. A problem names the
 * field, what was given and what is allowed. Of a person, a hardness such as 18 has to say its unit. `currency` is
 * the shop's, where it is known: an amount that names another is refused.
 */
export function readInput(
  column: AnyInput,
  system: UnitSystem,
  typed: string,
  writer: Writer = "person",
  currency?: string,
): InputReading {
  const text = typed.trim();
  if (text === "") return { read: "blank" };
  switch (column.type) {
    case "text":
      return readText(column, text);
    case "choice":
    case "yes or no":
      return { read: "value", value: text };
    case "date":
    case "date and time": {
      const serial = serialOf(text);
      if (serial === undefined) return problem(column, text, "is not a date. Write it as 2027-03-01 09:45.");
      return serial < firstDay
        ? problem(column, text, "is before the year 2000. Check the date.")
        : { read: "value", value: serial };
    }
    default:
      return readNumber(column, system, text, writer, currency);
  }
}

/** The name that a field bears in a form: the log's own header. */
export function fieldName(column: Pick<InputColumn, "label" | "unit">, system: UnitSystem): string {
  return headerOf(column, system);
}
