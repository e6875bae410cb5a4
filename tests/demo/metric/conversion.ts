import type { UnitOf } from "../../../src/joblog/model/definition.ts";

/** The systems that the US week is held against. */
export type OtherSystem = "metric" | "imperial";

// Exact: the inch is 2.54 cm, the US gallon 231 cubic inches, the pound 0.45359237 kg (NIST Handbook 44,
// appendix C); the imperial gallon is 4.54609 L (Weights and Measures Act 1985, schedule 1).
const centimeters = 2.54;
const liters = (231 * centimeters ** 3) / 1000;
const imperialGallons = liters / 4.54609;
const kilograms = 0.45359237;
const squareMeters = ((12 * centimeters) / 100) ** 2;

/** How many of the other system's units one US unit is, by the unit words of the log. */
const factors: Readonly<Record<string, number>> = {
  "gal -> L": liters,
  "gal -> imperial gal": imperialGallons,
  "in -> cm": centimeters,
  "gal/in -> L/cm": liters / centimeters,
  "gal/in -> imperial gal/in": imperialGallons,
  "ft² -> m²": squareMeters,
  "per gal -> per L": 1 / liters,
  "per gal -> per imperial gal": 1 / imperialGallons,
  "lb -> kg": kilograms,
  // The week's acid, citric, is dry.
  "lb or gal -> kg or L": kilograms,
  "lb or gal -> kg or imperial gal": kilograms,
};

/** A figure of the US log in the unit that the other log has for it. Throws a RangeError for units that this list does not know. */
export function inOtherUnit(
  value: number,
  unit: UnitOf | undefined,
  to: OtherSystem,
  kind: "figure" | "difference" = "figure",
): number {
  if (unit === undefined || unit.US === unit[to]) return value;
  if (unit.US === "°F" && unit[to] === "°C") return kind === "difference" ? value / 1.8 : (value - 32) / 1.8;
  const factor = factors[`${unit.US} -> ${unit[to]}`];
  if (factor === undefined) throw new RangeError(`No conversion of ${unit.US} to ${unit[to]}.`);
  return value * factor;
}
