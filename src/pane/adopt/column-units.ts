import { findUnit } from "../../core/units/find-unit.ts";
import type { QuantityKind } from "../../core/units/quantity.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { InputColumn } from "../../joblog/model/definition.ts";
import { minutes, seconds } from "../../joblog/model/units-of.ts";
import { columnUnit } from "../controls/unit-kinds.ts";

/** Units that home-made sheets are kept in, by kind. */
const offered: Readonly<Partial<Record<QuantityKind, readonly string[]>>> = {
  temperature: ["°F", "°C"],
  volume: ["US gal", "imperial gal", "L", "mL", "US fl oz", "imperial fl oz", "US qt"],
  length: ["in", "cm", "mm", "ft"],
  area: ["ft²", "m²"],
  hardness: ["mg/L CaCO3", "gpg"],
  conductivity: ["mS/cm", "µS/cm"],
};

const secondsIn: Readonly<Record<string, number>> = { s: 1, min: 60, h: 3600 };

const timeWords: readonly (readonly [RegExp, string])[] = [
  [/^(?:s|secs?|seconds?)$/, "s"],
  [/^(?:m|mins?|minutes?)$/, "min"],
  [/^(?:h|hrs?|hours?)$/, "h"],
];

/** Under which the unit of a second column of the same kind is answered. */
export const secondKey = (id: string): string => `${id}2`;

/** Minutes or seconds by whatever word. */
export const isTimeWord = (word: string): boolean => timeWords.some(([words]) => words.test(word.toLowerCase()));

const isTime = (column: InputColumn): boolean => column.unit === minutes || column.unit === seconds;

/** The unit of time that a word names in a column of minutes or seconds. */
export function timeUnitOf(word: string, column: InputColumn): string | undefined {
  return isTime(column) ? timeWords.find(([words]) => words.test(word.toLowerCase()))?.[1] : undefined;
}

/** The units between which a person chooses where a heading names none; none where the column's numbers are bare. */
export function unitChoices(column: InputColumn, system: UnitSystem): readonly string[] {
  if (isTime(column)) return Object.keys(secondsIn);
  const quantity = columnUnit(column.unit, system);
  return quantity === undefined ? [] : (offered[quantity.kind] ?? [quantity.unit.symbol]);
}

/** Parts of a heading that can be a unit: in brackets, after a comma, its last words. */
function unitTexts(heading: string): readonly string[] {
  const words = heading.trim().split(/\s+/);
  return [
    ...[...heading.matchAll(/[([]([^)\]]+)[)\]]/g)].map((found) => found[1] ?? ""),
    heading.split(",").at(-1) ?? "",
    ...[3, 2, 1].map((count) => words.slice(-count).join(" ")),
  ];
}

/** The unit that a heading names: "Temp F", "Amount (gal)", "Level, in". A gallon without a country follows the system, and in a metric log nothing. */
export function unitInHeading(heading: string, column: InputColumn, system: UnitSystem): string | undefined {
  const texts = unitTexts(heading);
  if (isTime(column)) return texts.flatMap((text) => timeUnitOf(text.trim(), column) ?? [])[0];
  const quantity = columnUnit(column.unit, system);
  if (quantity === undefined) return undefined;
  for (const text of texts) {
    const search = findUnit(text, quantity.kind, system);
    if (search.found === "unit") return search.unit.symbol;
  }
  return undefined;
}

/** The unit that a word of a unit column names; undefined where it names none of that kind, such as an ounce that may be a weight. */
export function unitOfWord(word: string, column: InputColumn, system: UnitSystem): string | undefined {
  const quantity = columnUnit(column.unit, system);
  const search = quantity === undefined ? undefined : findUnit(word, quantity.kind, system);
  return search?.found === "unit" ? search.unit.symbol : undefined;
}

/** A bare number of a sheet's column as text that a field of the log reads, in the chosen unit. */
export function withUnit(text: string, number: number, unit: string, column: InputColumn): string {
  if (!isTime(column)) return `${text} ${unit}`;
  const own = column.unit === seconds ? 1 : 60;
  return String(Number(((number * (secondsIn[unit] ?? own)) / own).toPrecision(12)));
}
