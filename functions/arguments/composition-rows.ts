import type { Ingredient } from "../../src/core/chemistry/chemicals/composition-of.ts";
import { DomainError } from "../../src/core/limits/domain-error.ts";
import { parseNumber } from "../../src/core/units/parse-number.ts";
import type { CellMatrix, CellValue } from "../define-function.ts";
import { isBlankOrZero, isHeader, numberFrom, refuse } from "./read-cell.ts";
import { inWords, quoted } from "./wording.ts";

const water = /^(?:water|aqua|h2o)$/i;

/** A header has no number in its second column; of water, which counts for nothing, an SDS may say "balance". */
function isUsed([chemical = null, amount = null]: readonly CellValue[], row: number): boolean {
  if (isBlankOrZero(chemical) || isBlankOrZero(amount) || isHeader(amount, row)) return false;
  return !(water.test(String(chemical).trim()) && typeof amount === "string" && !/\p{Nd}/u.test(amount));
}

/** Safety data sheets print ranges such as "5-10%": which figure of it to take is the shop's to say. */
function amountOf(name: string, chemical: string, cell: CellValue, inPercent: boolean): number {
  if (typeof cell !== "string") return numberFrom(name, cell);
  const text = cell.replace(/%\s*$/, "");
  if (text !== cell && !inPercent) {
    refuse(name, `gives ${quoted(cell)} for ${quoted(chemical)}; write mol per kg of water, without a percent sign.`);
  }
  if (parseNumber(text).read === "nothing") {
    refuse(name, `gives ${quoted(cell)} for ${quoted(chemical)}; write one number, such as the middle of a range.`);
  }
  return numberFrom(name, text);
}

function ingredientOf(name: string, row: readonly CellValue[], inPercent: boolean): Ingredient {
  const amount = amountOf(name, String(row[0]), row[1] ?? null, inPercent);
  if (amount < 0) refuse(name, `holds an amount below 0 for ${quoted(String(row[0]))}.`);
  return { chemical: String(row[0]), amount };
}

/** Rows of a two-column range, component and amount in words; a header on top and unused rows are skipped. */
export function compositionRows(name: string, rows: CellMatrix, amount: string): readonly Ingredient[] {
  const inPercent = amount.startsWith("%");
  if (rows.some((row) => row.length !== 2)) refuse(name, `as a range must have two columns: component and ${amount}.`);
  const used = rows.filter(isUsed).map((row) => ingredientOf(name, row, inPercent));
  return used.length > 0 ? used : refuse(name, `is a range without a row of component and ${amount}.`);
}

/** Names the argument in a refusal that came from its list, and adds what to do. */
export function naming<Value>(name: string, advice: string, read: () => Value): Value {
  try {
    return read();
  } catch (refusal) {
    if (!(refusal instanceof DomainError)) throw refusal;
    throw new DomainError(refusal.refusal, `${inWords(name)}: ${refusal.message}. ${advice}`);
  }
}
