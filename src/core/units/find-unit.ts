import { memoize } from "../numeric/bounded-cache.ts";
import { americanSpelling } from "../text/american-spelling.ts";
import { plainText } from "./plain-text.ts";
import type { QuantityKind } from "./quantity.ts";
import type { UnitDefinition } from "./unit-definition.ts";
import type { UnitSystem } from "./unit-system.ts";
import { unitSystems } from "./unit-system.ts";
import { unitTable } from "./unit-table.ts";

/** What a unit word turned out to be. */
export type UnitSearch =
  | { readonly found: "unit"; readonly unit: UnitDefinition }
  /** A gallon, quart, pint or fluid ounce without a country where the system does not decide. */
  | { readonly found: "undecided"; readonly choices: readonly string[] }
  | { readonly found: "other kind"; readonly unit: UnitDefinition }
  | { readonly found: "nothing" };

const countryWords: Readonly<Record<UnitSystem, string | undefined>> = {
  US: "US",
  imperial: "imperial",
  metric: undefined,
};

/** Measures that differ between the US and the imperial system or exist in one only, by the words people use. */
const undecidedMeasure =
  /(^|[\s/]|per )(gallons?|gals?|quarts?|qts?|pints?|pts?|cups?|fluid ounces?|fl\.? ?ozs?)\.?(?=$|[\s/])/gi;

const measureSymbols: readonly (readonly [RegExp, string])[] = [
  [/^gal/i, "gal"],
  [/^q/i, "qt"],
  [/^p/i, "pt"],
  [/^c/i, "cup"],
  [/^fl/i, "fl oz"],
];

function key(word: string): string {
  return americanSpelling(plainText(word))
    .replace(/\s*\bper\b\s*/gi, "/")
    .replace(/[\s().]/g, "")
    .replace(/₃/g, "3")
    .toLowerCase();
}

type UnitIndex = ReadonlyMap<string, readonly UnitDefinition[]>;

/** Words of a unit, with "per" read as a stroke; a price such as "$/gal" keeps its leading stroke. */
function indexByWord(): UnitIndex {
  const index = new Map<string, UnitDefinition[]>();
  for (const unit of unitTable) {
    for (const word of new Set([unit.symbol, unit.name, ...unit.spellings].map(key))) {
      index.set(word, [...(index.get(word) ?? []), unit]);
    }
  }
  return index;
}

/** Made for the first word that is looked up, so that the script of the functions loads without it. */
let byWord: UnitIndex | undefined;

function withCountry(word: string, country: string): string {
  return word.replace(undecidedMeasure, (_whole, before: string, measure: string) => {
    const symbol = measureSymbols.find(([pattern]) => pattern.test(measure))?.[1] ?? measure;
    return `${before}${country} ${symbol}`;
  });
}

/** "imp fl oz/imp gal" is found by the symbols of its parts, "imperial fl oz/imperial gal". */
function bySymbols(word: string, index: UnitIndex): string | undefined {
  const parts = word.split("/");
  const symbols = parts.map((part) => index.get(part)?.[0]?.symbol);
  return parts.length === 2 && symbols.every((symbol) => symbol !== undefined) ? key(symbols.join("/")) : undefined;
}

function candidates(word: string): readonly UnitDefinition[] {
  byWord ??= indexByWord();
  const written = key(word);
  return (
    byWord.get(written) ??
    byWord.get(written.replace(/^[$€£]\//, "/")) ??
    byWord.get(bySymbols(written, byWord) ?? "") ??
    []
  );
}

function lookUp(word: string, system: UnitSystem): readonly UnitDefinition[] {
  const direct = candidates(word);
  const country = countryWords[system];
  return direct.length > 0 || country === undefined ? direct : candidates(withCountry(word, country));
}

/** A column asks for the same few words again and again. */
const wordsKept = 500;
/** No unit's word is longer. */
const longestWord = 60;

const lookUpIn = Object.fromEntries(
  unitSystems.map((system) => [
    system,
    memoize(
      wordsKept,
      (word: string) => word,
      (word) => lookUp(word, system),
    ),
  ]),
) as Readonly<Record<UnitSystem, (word: string) => readonly UnitDefinition[]>>;

/** All units that a word may mean, whatever their kind; a bare gallon follows the system. */
export function unitsNamed(word: string, system: UnitSystem): readonly UnitDefinition[] {
  return word.length > longestWord ? [] : lookUpIn[system](word);
}

/** A grain is a weight, and what every American who softens water calls a grain per gallon. */
const grains = /^(?:grains?|gr)$/;

/** Whether a hardness is said in grains: each to the gallon of its country. */
export function saysGrains(word: string, kind: QuantityKind): boolean {
  return (kind === "hardness" || kind === "alkalinity") && grains.test(key(word));
}

/** The unit of one kind that a word means. */
export function findUnit(word: string, kind: QuantityKind, system: UnitSystem): UnitSearch {
  const named = unitsNamed(word, system);
  const unit = named.find((candidate) => candidate.kind === kind);
  if (unit !== undefined) return { found: "unit", unit };
  if (system === "US" && saysGrains(word, kind)) return { found: "unit", unit: unitBySymbol("gpg", kind) };
  const [other] = named;
  if (other !== undefined) return { found: "other kind", unit: other };
  const choices = ["US", "imperial"]
    .map((country) => withCountry(word, country))
    .filter((choice) => candidates(choice).length > 0);
  return choices.length > 0 ? { found: "undecided", choices } : { found: "nothing" };
}

/** The units that bear a symbol; hardness and alkalinity share theirs. */
const bySymbol = new Map<string, readonly UnitDefinition[]>();
for (const unit of unitTable) bySymbol.set(unit.symbol, [...(bySymbol.get(unit.symbol) ?? []), unit]);

/** The unit with exactly this symbol and kind. */
export function unitBySymbol(symbol: string, kind: QuantityKind): UnitDefinition {
  const unit = bySymbol.get(symbol)?.find((candidate) => candidate.kind === kind);
  if (unit === undefined) throw new RangeError(`The unit table holds no ${symbol} of kind ${kind}`);
  return unit;
}
