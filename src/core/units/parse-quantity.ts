import { memoize } from "../numeric/bounded-cache.ts";
import { toSi } from "./convert.ts";
import { findUnit } from "./find-unit.ts";
import type { NumberReading } from "./parse-number.ts";
import { parseNumber } from "./parse-number.ts";
import { plainText } from "./plain-text.ts";
import type { QuantityKind } from "./quantity.ts";
import type { UnitDefinition } from "./unit-definition.ts";
import type { UnitSystem } from "./unit-system.ts";

/** What a text turned out to be as a quantity of one kind. */
export type QuantityReading =
  | {
      readonly read: "quantity";
      readonly si: number;
      readonly unit: UnitDefinition;
      /** The number where it stood alone. */
      readonly bare?: number;
    }
  | { readonly read: "ambiguous"; readonly readings: readonly [number, number]; readonly rest: string }
  | { readonly read: "undecided"; readonly choices: readonly string[] }
  | { readonly read: "other kind"; readonly unit: UnitDefinition }
  | { readonly read: "unknown unit"; readonly word: string }
  | { readonly read: "nothing" };

/** Number first, unit after it. An apostrophe before anything but three digits is a foot, "e" before a letter no power. */
const numberThenWord =
  /^([+-]? ?[.,]?\d(?:[\d.,]| (?=\d)|'(?=\d{3})| ?\/ ?(?=\d)|-(?=\d+ ?\/))*(?:e[+-]?\d+(?![a-z])| ?[×x*·] ?10(?: ?\^ ?[+-]?\d+|[⁺⁻]?[⁰¹²³⁴-⁹]+))?) ?(.*)$/i;

interface Parts {
  readonly number: NumberReading;
  readonly word: string;
}

function split(text: string): Parts {
  const alone = parseNumber(text);
  if (alone.read !== "nothing") return { number: alone, word: "" };
  const [, number, word] = numberThenWord.exec(plainText(text)) ?? [];
  return { number: parseNumber(number ?? ""), word: word ?? "" };
}

/** Long enough for any quantity; what is longer is a page in a cell. */
const longestText = 200;
const partsOf = memoize(500, (text: string) => text, split);

/**
 * Reads "60 gal", "1 1/2 gal", "131 °F". A number without a unit is in `bareUnit`; a bare gallon
 * follows the system.
 */
export function parseQuantity(
  text: string,
  kind: QuantityKind,
  system: UnitSystem,
  bareUnit: UnitDefinition,
): QuantityReading {
  if (text.length > longestText) return { read: "nothing" };
  const { number, word } = partsOf(text);
  if (number.read === "nothing") return { read: "nothing" };
  if (number.read === "ambiguous") return { read: "ambiguous", readings: number.readings, rest: word };
  if (word === "") return { read: "quantity", si: toSi(number.value, bareUnit), unit: bareUnit, bare: number.value };
  const search = findUnit(word, kind, system);
  switch (search.found) {
    case "unit":
      return { read: "quantity", si: toSi(number.value, search.unit), unit: search.unit };
    case "undecided":
      return { read: "undecided", choices: search.choices };
    case "other kind":
      return { read: "other kind", unit: search.unit };
    case "nothing":
      return { read: "unknown unit", word };
  }
}
