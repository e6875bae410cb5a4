import { nearestWord } from "../text/nearest-word.ts";
import { defaultUnit } from "./default-unit.ts";
import { plainText } from "./plain-text.ts";
import type { QuantityKind } from "./quantity.ts";
import type { UnitSystem } from "./unit-system.ts";
import { unitTable } from "./unit-table.ts";

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

/** The unit word that was most likely meant by one that is not known: of two that are as near, the system's own. */
export function nearestUnitWord(written: string, kind?: QuantityKind, system: UnitSystem = "US"): string | undefined {
  const units = unitTable.filter((unit) => kind === undefined || unit.kind === kind);
  const usual = units.filter((unit) => unit === defaultUnit(unit.kind, system));
  const words = [...usual, ...units].flatMap((unit) => [unit.symbol, ...unit.spellings, unit.name]);
  return nearestWord(
    plainText(written),
    kind === undefined || kind === "volume" ? [...withoutCountry, ...words] : words,
  );
}
