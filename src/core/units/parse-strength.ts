import { memoize } from "../numeric/bounded-cache.ts";
import { unitBySymbol } from "./find-unit.ts";
import { parseNumber } from "./parse-number.ts";
import { parseQuantity } from "./parse-quantity.ts";
import { plainText } from "./plain-text.ts";
import type { VolumeFraction } from "./quantity.ts";
import { volumeFraction } from "./quantity.ts";
import type { UnitSystem } from "./unit-system.ts";
import { unitSystems } from "./unit-system.ts";

/** What a text turned out to be as the strength of a bath. */
export type StrengthReading =
  | { readonly read: "strength"; readonly fraction: VolumeFraction }
  | { readonly read: "ambiguous"; readonly readings: readonly [number, number] }
  /** More concentrate than water in a ratio: most likely the two numbers are the wrong way round. */
  | { readonly read: "reversed"; readonly parts: number; readonly water: number }
  | { readonly read: "undecided"; readonly choices: readonly string[] }
  /** A weight: a strength is volume in volume. */
  | { readonly read: "weight" }
  | { readonly read: "unknown unit"; readonly word: string }
  /** A bare number, left to the caller's rule. */
  | { readonly read: "number"; readonly value: number }
  | { readonly read: "nothing" };

const ratio = /^(.+?)\s*(?:\+|:|\bto\b)\s*(.+)$/i;
const share = /^(.+?)\s*\bin\b\s*(.+)$/i;
const percent = /^(.+?)\s*(?:vol\.?\s*)?(?:%|percent)\s*(?:v\/v|vol\.?|by volume)?$/i;
const byWeight = /w\/[wv]$|(?<![a-z])(?:wt|weight)(?![a-z])/i;
const perVolume = /^(.+?)\s*(?:\/|\bper\b)\s*([\d.,]*\s*[a-z][a-z\d³.\s]*)$/i;

/** Ounces that are not said to be a weight: in a strength they are fluid ounces. */
const ounces = /(?<![a-z])(?:fl(?:uid|\.)?\s*)?(?:ozs?|ounces?)(?![a-z])\.?(?!\s*\(?(?:wt|av|by weight|weight))/gi;
/** "1 in 28 parts water" and "3 oz per gallon of water" say what the concentrate is added to; without the word it is the bath. */
const saysWater = /(?<![a-z])water$/i;
const ofWater = /\s*(?<![a-z])(?:of )?water$/i;
const partWords = /(?<![a-z])parts?(?![a-z])(?: of)?(?: (?:concentrate|water|bath))?/gi;
const article = /(?<![a-z])(?:the|an?) (?=[a-z])/gi;

type NumberOrVolume =
  | { readonly is: "number"; readonly value: number }
  | { readonly is: "volume"; readonly value: number }
  | { readonly is: "problem"; readonly problem: StrengthReading };

function numberOrVolume(text: string, system: UnitSystem): NumberOrVolume {
  const number = parseNumber(text);
  if (number.read === "ambiguous") return { is: "problem", problem: number };
  if (number.read === "number") return { is: "number", value: number.value };
  const cubicMeter = unitBySymbol("m³", "volume");
  const one = /^\p{L}/u.test(text) ? `1 ${text}` : text;
  const reading = parseQuantity(one, "volume", system, cubicMeter);
  switch (reading.read) {
    case "quantity":
      return { is: "volume", value: reading.si };
    case "ambiguous":
      return { is: "problem", problem: { read: "ambiguous", readings: reading.readings } };
    case "undecided":
    case "unknown unit":
      return { is: "problem", problem: reading };
    case "other kind":
      return { is: "problem", problem: reading.unit.kind === "mass" ? { read: "weight" } : { read: "nothing" } };
    case "nothing":
      return { is: "problem", problem: reading };
  }
}

function pair(
  left: string,
  right: string,
  system: UnitSystem,
  combine: (a: number, b: number) => StrengthReading,
): StrengthReading {
  const a = numberOrVolume(left, system);
  if (a.is === "problem") return a.problem;
  const b = numberOrVolume(right, system);
  if (b.is === "problem") return b.problem;
  if (a.is !== b.is || a.value <= 0 || b.value <= 0) return { read: "nothing" };
  return combine(a.value, b.value);
}

function strength(fraction: number): StrengthReading {
  return { read: "strength", fraction: volumeFraction(fraction) };
}

/** Concentrate and water side by side; read as one part plus N parts of water. */
function partsPlusWater(concentrate: number, water: number): StrengthReading {
  return concentrate > water && concentrate !== 1
    ? { read: "reversed", parts: concentrate, water }
    : strength(concentrate / (concentrate + water));
}

const usMeasure = /(?<![a-z])u\.?s\.?(?![a-z])/i;
const imperialMeasure = /(?<![a-z])(?:imp|imperial|uk)(?![a-z])/i;

/** "3 oz/imp gal" names its country once, and means it for both measures. */
function systemOf(text: string, system: UnitSystem): UnitSystem {
  const [us, imperial] = [usMeasure.test(text), imperialMeasure.test(text)];
  if (us === imperial) return system;
  return us ? "US" : "imperial";
}

function parse(text: string, usual: UnitSystem): StrengthReading {
  const plain = plainText(text).replace(ounces, " fl oz");
  const system = systemOf(plain, usual);
  const tidy = plain.replace(partWords, "").replace(article, "").replace(ofWater, "").trim();
  const intoBath = (part: number, bath: number): StrengthReading => strength(part / bath);
  const added = saysWater.test(plain) ? partsPlusWater : intoBath;
  const bare = parseNumber(tidy);
  if (bare.read === "ambiguous") return bare;
  if (bare.read === "number" && !tidy.includes("/")) return { read: "number", value: bare.value };

  if (byWeight.test(tidy)) return { read: "weight" };
  const ofHundred = percent.exec(tidy);
  if (ofHundred !== null) {
    const number = parseNumber(ofHundred[1] ?? "");
    return number.read === "number" ? strength(number.value / 100) : number;
  }
  const inBath = share.exec(tidy);
  if (inBath !== null) return pair(inBath[1] ?? "", inBath[2] ?? "", system, added);
  const toWater = ratio.exec(tidy);
  if (toWater !== null) return pair(toWater[1] ?? "", toWater[2] ?? "", system, partsPlusWater);

  const ofBath = perVolume.exec(tidy);
  if (ofBath !== null) return pair(ofBath[1] ?? "", ofBath[2] ?? "", system, added);
  return { read: "nothing" };
}

/** Long enough for any strength; what is longer is a page in a cell. */
const longestText = 200;

/** A column of doses has one strength. */
const parseIn = Object.fromEntries(
  unitSystems.map((system) => [
    system,
    memoize(
      100,
      (text: string) => text,
      (text) => parse(text, system),
    ),
  ]),
) as Readonly<Record<UnitSystem, (text: string) => StrengthReading>>;

/**
 * Reads every way a label writes a strength: 1+40 and 1:40 (one part plus 40 parts of water),
 * 1 in 40 (one part in 40 parts of finished bath), a percentage, a volume per volume of finished
 * bath, or a volume added to a volume of water, as "1 in 28 parts water" says it too. Ounces are fluid ounces unless
 * they are said to be a weight.
 */
export function parseStrength(text: string, system: UnitSystem): StrengthReading {
  return text.length > longestText ? { read: "nothing" } : parseIn[system](text);
}
