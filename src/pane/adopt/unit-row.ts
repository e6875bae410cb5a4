import { findUnit } from "../../core/units/find-unit.ts";
import type { QuantityKind } from "../../core/units/quantity.ts";
import { cellWords, isBlankCell } from "./cell-words.ts";
import { isTimeWord } from "./column-units.ts";

const kinds: readonly QuantityKind[] = ["temperature", "volume", "length", "area", "hardness", "conductivity"];

/** "(°F)" and "[°F]" are "°F". */
export function bareUnit(value: unknown): string {
  return cellWords(value).replace(/^[([] ?(.*?) ?[)\]]$/, "$1");
}

/** What stands among units where a column has none: nothing, a dash, how a date or time is written, pH. */
const noUnit = /^(?:-|ph|hh?:mm(?::ss)?|(?:mm?|dd?|yy(?:yy)?)(?:[-/.](?:mm?|dd?|yy(?:yy)?)){1,2})$/i;

function namesUnit(text: string): boolean {
  if (isTimeWord(text)) return true;
  return kinds.some((kind) => {
    const { found } = findUnit(text, kind, "US");
    return found === "unit" || found === "undecided";
  });
}

/** Whether a row beneath the headings holds their units and nothing else. */
export function isUnitRow(cells: readonly unknown[]): boolean {
  const held = cells.filter((value) => !isBlankCell(value));
  const texts = held.filter((value) => typeof value === "string").map(bareUnit);
  return (
    texts.length === held.length && texts.some(namesUnit) && texts.every((text) => namesUnit(text) || noUnit.test(text))
  );
}
