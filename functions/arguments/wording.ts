import type { Domain } from "../../src/core/limits/domain.ts";
import type { OutOfRange } from "../../src/core/limits/domain.ts";
import { reasonOf } from "../../src/core/limits/domain.ts";
import { nearestWord } from "../../src/core/text/nearest-word.ts";
import { fromSi, toSi } from "../../src/core/units/convert.ts";
import { defaultUnit } from "../../src/core/units/default-unit.ts";
import { unitBySymbol } from "../../src/core/units/find-unit.ts";
import type { UnclearNumber } from "../../src/core/units/unclear-number.ts";
import type { UnitDefinition } from "../../src/core/units/unit-definition.ts";
import type { UnitSystem } from "../../src/core/units/unit-system.ts";

/** A number for reading in a message: at most six figures, no exponent where one can be avoided. */
export function plainNumber(value: number): string {
  const rounded = Number(value.toPrecision(6));
  return Object.is(rounded, -0) ? "0" : String(rounded);
}

/** An argument's name without the unit that some names end in: `titrant_mL` becomes `titrant`. */
export function withoutUnit(name: string): string {
  return name.replace(/_(?:m?eq_L|mL|grains)$/, "");
}

/** Words so short that a sentence would swallow them: “to” is 60 °F. */
const quotedNames: ReadonlySet<string> = new Set(["to", "from", "as", "when"]);

/** One cell of a list: a refusal of it says "One of the temperatures". */
export function oneOfThe(name: string): string {
  return `one_of_the_${name}`;
}

/** An argument's name as a person says it: `opening_dose` becomes "Opening dose". */
export function inWords(name: string): string {
  if (quotedNames.has(name)) return quoted(name);
  const words = withoutUnit(name)
    .replaceAll("_", " ")
    .replace(/\bph\b/i, "pH")
    .replace(/\btds\b/i, "TDS")
    .replace(/\bmv\b/i, "mV");
  return /^(?:pH|mV)/.test(words) ? words : words.charAt(0).toUpperCase() + words.slice(1);
}

/** Quotes what was given, cut where someone put a whole page into a cell. */
export function quoted(text: string): string {
  return text.length > 40 ? `“${text.slice(0, 40)}…”` : `“${text}”`;
}

/** What is asked for instead of a word or unit that is not known, after the one that was most likely meant. */
export function askInstead(given: string, nearest: string | undefined, request: string): string {
  const asked =
    nearest === undefined
      ? request
      : `did you mean ${quoted(nearest)}? ${request.charAt(0).toUpperCase()}${request.slice(1)}`;
  return `is ${quoted(given)}; ${asked}`;
}

/** Both readings of a bare number, ready to be typed: write “18 gpg” (308 mg/L) or “18 mg/L”. */
export function writeOneOf({ readings: [slip, usual], slip: comesTo }: UnclearNumber): string {
  return `write ${quoted(slip)} (${comesTo}) or ${quoted(usual)}`;
}

/** The refusal of a word that is none of a few, with all of them. `rest`: what else may stand there. */
export function notOneOf(given: string, words: readonly string[], rest = ""): string {
  return askInstead(given, nearestWord(given, words), `write ${words.map(quoted).join(", ")}${rest}.`);
}

/** Where a bare temperature is out of range and would be in range on the other scale. */
export function otherDegreesHint({ domain }: OutOfRange, bare: number, system: UnitSystem): string {
  if (domain.measure !== "temperature") return "";
  const [symbol, word] = system === "US" ? (["°C", "C"] as const) : (["°F", "F"] as const);
  const other = toSi(bare, unitBySymbol(symbol, "temperature"));
  const isAllowed = other > domain.low && other <= domain.high;
  return isAllowed ? ` If it is in ${symbol}, write “${plainNumber(bare)} ${word}”.` : "";
}

/** The refusal of a chemical that is none of a few: a near word may be another substance, so none is guessed. */
export function notOneOfChemicals(given: string, words: readonly string[], rest = ""): string {
  return askInstead(given, undefined, `write ${words.map(quoted).join(", ")}${rest}.`);
}

interface Scaled {
  readonly value: (si: number) => number;
  readonly unit: string;
}

function scaleOf(domain: Domain, system: UnitSystem, unit: UnitDefinition | undefined): Scaled {
  if (domain.measure === "number" || domain.measure === "pH") return { value: (si) => si, unit: "" };
  const usual = domain.measure === "strength" ? unitBySymbol("%", "strength") : defaultUnit(domain.measure, system);
  const shown = unit?.kind === domain.measure ? unit : usual;
  return { value: (si) => fromSi(si, shown), unit: shown.symbol === "" ? "" : ` ${shown.symbol}` };
}

/** The allowed range in the user's unit: "more than 0 and at most 3937 in". */
function allowedRange(domain: Domain, system: UnitSystem, unit?: UnitDefinition): string {
  const scaled = scaleOf(domain, system, unit);
  const low = plainNumber(scaled.value(domain.low));
  const from = domain.openLow === true ? `more than ${low}` : `at least ${low}`;
  if (domain.high === Infinity) return `${from}${scaled.unit}`;
  const high = plainNumber(scaled.value(domain.high));
  if (domain.openHigh === true) return `${from} and less than ${high}${scaled.unit}`;
  return domain.openLow === true ? `${from} and at most ${high}${scaled.unit}` : `${low} to ${high}${scaled.unit}`;
}

/** The message for an input outside its range. `unit`: the unit the user gave, where it is known. */
export function outOfRangeMessage(refusal: OutOfRange, system: UnitSystem, unit?: UnitDefinition): string {
  const scaled = scaleOf(refusal.domain, system, unit);
  const value = scaled.value(refusal.given);
  const given = Number.isFinite(value) ? `${plainNumber(value)}${scaled.unit}` : "too large";
  const range = `${inWords(refusal.subject)} is ${given}; allowed: ${allowedRange(refusal.domain, system, unit)}.`;
  const reason = reasonOf(refusal);
  return reason === undefined ? range : `${range} ${reason}`;
}
