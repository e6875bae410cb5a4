import { memoize } from "../numeric/bounded-cache.ts";
import { americanSpelling } from "../text/american-spelling.ts";
import { nearestWord } from "../text/nearest-word.ts";
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

function candidates(word: string): readonly UnitDefinition[] {
  byWord ??= indexByWord();
  return byWord.get(key(word)) ?? byWord.get(key(word).replace(/^[$€£]\//, "/")) ?? [];
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

/** The unit of one kind that a word means. */
export function findUnit(word: string, kind: QuantityKind, system: UnitSystem): UnitSearch {
  const named = unitsNamed(word, system);
  const unit = named.find((candidate) => candidate.kind === kind);
  if (unit !== undefined) return { found: "unit", unit };
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

/** Words that follow the system and so stand in no unit's own spellings. */
const withoutCountry = [
  "gal",
  "gallon",
  "gallons",
  "quart",
  "quarts",
  "pint",
  "pints",
  "fl oz",
  "fluid ounce",
  "fluid ounces",
];

/** The unit word that was most likely meant by one that is not known; of one kind, or of any. */
export function nearestUnitWord(written: string, kind?: QuantityKind): string | undefined {
  const units = unitTable.filter((unit) => kind === undefined || unit.kind === kind);
  const words = units.flatMap((unit) => [unit.symbol, ...unit.spellings, unit.name]);
  return nearestWord(
    plainText(written),
    kind === undefined || kind === "volume" ? [...withoutCountry, ...words] : words,
  );
}
