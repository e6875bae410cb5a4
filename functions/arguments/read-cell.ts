import { DomainError } from "../../src/core/limits/domain-error.ts";
import { americanSpelling } from "../../src/core/text/american-spelling.ts";
import { isMoney } from "../../src/core/units/parse-money.ts";
import { parseNumber } from "../../src/core/units/parse-number.ts";
import { plainText } from "../../src/core/units/plain-text.ts";
import type { CellInput, CellValue } from "../define-function.ts";
import { inWords, plainNumber, quoted } from "./wording.ts";

/** Refuses an argument; the message starts with the argument's name. */
export function refuse(name: string, rest: string): never {
  throw new DomainError("invalid", `${inWords(name)} ${rest}`);
}

/** One cell of a scalar argument; some hosts hand a single cell over as a range of one. */
export function singleCell(name: string, cell: CellInput): CellValue {
  if (!Array.isArray(cell)) return cell ?? null;
  const [row] = cell;
  if (cell.length > 1 || (row !== undefined && row.length > 1)) refuse(name, "must be one cell, not a range.");
  return row?.[0] ?? null;
}

/** Blank cells reach a function as 0, null or "", depending on the build of Excel. */
export function isBlankOrZero(cell: CellValue): boolean {
  return isBlank(cell) || cell === 0;
}

/** Blank for certain: not even 0. */
export function isBlank(cell: CellValue): boolean {
  return cell === null || (typeof cell === "string" && cell.trim() === "");
}

/** The heading of a list: a text without a digit, in its first cell and nowhere else. */
export function isHeader(cell: CellValue, row: number): boolean {
  return row === 0 && typeof cell === "string" && !/\p{Nd}/u.test(cell);
}

/** A cell's word in the one form that words are compared in: small letters, American spelling, single blanks. */
export function wordIn(cell: CellValue): string {
  return americanSpelling(plainText(String(cell)).toLowerCase());
}

/** "1,500" with both its readings. */
export function ambiguityMessage(given: string, readings: readonly [number, number], rest = ""): string {
  const unit = rest === "" ? "" : ` ${rest}`;
  const [decimal, thousands] = readings.map(plainNumber);
  return `is ${quoted(given)}, which could be ${String(decimal)}${unit} or ${String(thousands)}${unit}; write one of these.`;
}

/** A number with a letter after it that is no power of ten: most likely a unit. */
const numberAndUnit = /^\s*[+-]?[\d.,]+\s*(?!e[+-]?\d)\p{L}/iu;

/** A plain number from a number or a text number; refuses anything else. */
export function numberFrom(name: string, cell: CellValue): number {
  if (typeof cell === "number" && Number.isFinite(cell)) return cell;
  if (typeof cell === "string") {
    const reading = parseNumber(cell);
    if (reading.read === "number") return reading.value;
    if (reading.read === "ambiguous") refuse(name, ambiguityMessage(cell, reading.readings));
    if (isMoney(cell)) refuse(name, `is ${quoted(cell)}, an amount of money; write the number alone.`);
    refuse(
      name,
      `is ${quoted(cell)}${numberAndUnit.test(cell) ? "; write the number alone, without a unit." : ", not a number."}`,
    );
  }
  refuse(name, "must be a number.");
}
