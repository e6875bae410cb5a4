import { fromSi, toSi } from "./convert.ts";
import { defaultUnit } from "./default-unit.ts";
import { unitBySymbol } from "./find-unit.ts";
import type { QuantityKind } from "./quantity.ts";
import type { UnitSystem } from "./unit-system.ts";

/** A number without a unit that people give in either of two, and what it comes to in the usual one. */
export interface UnclearNumber {
  /** Ready to be typed: "18 gpg", "18 mg/L". The first is the likely slip. */
  readonly readings: readonly [string, string];
  /** The slip in the usual unit: "308 mg/L". */
  readonly slip: string;
}

interface Doubt {
  readonly low: number;
  readonly high: number;
  /** Symbol, and the word that people type for it. */
  readonly slip: Readonly<Partial<Record<UnitSystem, readonly [symbol: string, word: string]>>>;
  readonly usual: string;
}

/** °F between which a sample's bare temperature is asked about: from the first, to below the second. */
export const coldSample = { low: 32, high: 60 } as const;

/**
 * Where two units are in daily use and one number makes sense in both, a bare one is asked about (ranges are common
 * practice, no source):
 *
 * - hardness from 1 to 50: softener people count grains or degrees, laboratories mg/L, 17 or 18 times as many;
 * - alkalinity of a water up to 20: laboratories give meq/L too, 50 times as much;
 * - the temperature of a wash bath's sample, or that a bath is heated to, from 32 to below 60 where bare numbers are
 *   °F. A sample comes from a warm bath and is cooled in a room, so 60 °F is an ordinary one and 53 °F hardly; as °C
 *   these are the temperatures that baths are kept at. Water from the supply or a buffer may well be as cold: they are
 *   not asked about.
 */
const doubts = {
  hardness: {
    low: 1,
    high: 50,
    slip: { US: ["gpg", "gpg"], metric: ["°dH", "°dH"], imperial: ["°e", "°Clark"] },
    usual: "mg/L",
  },
  alkalinity: {
    low: Number.MIN_VALUE,
    high: 20,
    slip: { US: ["meq/L", "meq/L"], metric: ["meq/L", "meq/L"], imperial: ["meq/L", "meq/L"] },
    usual: "mg/L",
  },
  temperature: { low: coldSample.low, high: coldSample.high - 1e-9, slip: { US: ["°C", "C"] }, usual: "F" },
} as const satisfies Partial<Record<QuantityKind, Doubt>>;

export type DoubtfulKind = keyof typeof doubts;

/** Whether a bare number of that kind can mean two things in some system of units. */
export function isDoubtful(kind: QuantityKind): kind is DoubtfulKind {
  return kind in doubts;
}

/** The two readings of a bare number of that kind; undefined where it can mean only one. */
export function unclearNumber(kind: DoubtfulKind, value: number, system: UnitSystem): UnclearNumber | undefined {
  const { low, high, slip, usual }: Doubt = doubts[kind];
  const [symbol, word] = slip[system] ?? [];
  if (symbol === undefined || word === undefined || !(value >= low && value <= high)) return undefined;
  return bothReadings(kind, value, [symbol, word], usual, system);
}

function bothReadings(
  kind: DoubtfulKind,
  value: number,
  [symbol, word]: readonly [symbol: string, word: string],
  usual: string,
  system: UnitSystem,
): UnclearNumber {
  const slip = fromSi(toSi(value, unitBySymbol(symbol, kind)), defaultUnit(kind, system));
  const digits = kind === "temperature" ? 4 : 3;
  const given = String(Number(value.toPrecision(6)));
  return {
    readings: [`${given} ${word}`, `${given} ${usual}`],
    slip: `${String(Number(slip.toPrecision(digits)))} ${kind === "temperature" ? "°F" : usual}`,
  };
}

/** A bare temperature of a US call in both its readings, whatever it is. */
export function fahrenheitOrCelsius(value: number): UnclearNumber {
  return bothReadings("temperature", value, ["°C", "C"], "F", "US");
}
