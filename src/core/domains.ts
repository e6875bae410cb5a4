import { celsiusZero } from "./units/exact-constants.ts";
import type { Domain } from "./domain.ts";

/**
 * Generous limits that no shop tank reaches: they catch a slipped decimal point or a wrong unit, not
 * a bad practice.
 */
export const tankLength: Domain = { measure: "length", low: 0, openLow: true, high: 100 };
export const liquidVolume: Domain = { measure: "volume", low: 0, openLow: true, high: 10_000 };
export const displacedVolume: Domain = { measure: "volume", low: 0, high: 10_000 };
export const bathStrength: Domain = { measure: "strength", low: 0, openLow: true, high: 1 };
/** As far as the chemistry's constants were checked, with a little room. */
export const bathTemperature: Domain = { measure: "temperature", low: celsiusZero, high: celsiusZero + 80 };
/** Up to 10 000 mg/L as calcium carbonate. */
export const waterHardness: Domain = { measure: "hardness", low: 0, high: 100 };
/** Up to 10 000 mg/L as calcium carbonate. */
export const waterAlkalinity: Domain = { measure: "alkalinity", low: 0, high: 200 };
/** Saturated sodium hydroxide solution holds about 20 eq/L (common practice, no source). */
export const concentrateAlkalinity: Domain = { measure: "alkalinity", low: 0, openLow: true, high: 25_000 };
export const sequesteringCapacity: Domain = { measure: "amount per volume", low: 0, openLow: true, high: 1000 };
/** Dissolved ion up to 100 g/L. */
export const ionConcentration: Domain = { measure: "amount per volume", low: 0, high: 100 };
export const readablePh: Domain = { measure: "pH", low: 0, high: 14.5 };
export const phDrop: Domain = { measure: "number", low: 0, openLow: true, high: 5 };
export const phTolerance: Domain = { measure: "number", low: 0, openLow: true, high: 5 };
export const shareOfWhole: Domain = { measure: "number", low: 0, openLow: true, high: 1 };
export const packPrice: Domain = { measure: "number", low: 0, openLow: true, high: 1e9 };
/** Sums up to this size keep every cent exactly in a double. */
export const moneyTotal: Domain = { measure: "number", low: -1e12, high: 1e12 };
export const shareWeight: Domain = { measure: "number", low: 0, high: 1e12 };
/**
 * Percent by weight. 1 and less is refused: a cell formatted as a percentage hands over 0.3145 for 31.45 %, and
 * would call for a hundred times the acid.
 */
export const purityByWeight: Domain = { measure: "number", low: 1, openLow: true, high: 100 };
/** An amount of something to add, in whatever unit it was given. */
export const plainAmount: Domain = { measure: "number", low: 0, openLow: true, high: 1e9 };
/** The standards of the meter are certified between these at best. */
export const bufferTemperature: Domain = { measure: "temperature", low: celsiusZero, high: celsiusZero + 60 };
