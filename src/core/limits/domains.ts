import { celsiusZero } from "../units/exact-constants.ts";
import type { Domain } from "./domain.ts";
import { corrosiveAlkali, meterDoubt, sewerFloor } from "./legal-limits.ts";

/**
 * Generous limits that no shop tank reaches: they catch a slipped decimal point or a wrong unit, not
 * a bad practice.
 */
export const tankLength: Domain = { measure: "length", low: 0, openLow: true, high: 100 };
export const liquidVolume: Domain = { measure: "volume", low: 0, openLow: true, high: 100 };
/** Beside another in the same unit, which nobody says: it may be milliliters. */
export const volumeInAnyUnit: Domain = { ...liquidVolume, high: 10_000 };
export const displacedVolume: Domain = { measure: "volume", low: 0, high: 10_000 };
export const bathStrength: Domain = { measure: "strength", low: 0, openLow: true, high: 1 };
/** What a tank is charged at: beyond one part and one part, concentrate and water were mixed up. */
export const chargeStrength = {
  ...bathStrength,
  low: 1e-4,
  openLow: false,
  tooLow:
    "No wash bath is thinner than 1+9999: is a percentage divided by 100 twice, or a ratio too long by some zeros?",
  high: 0.5,
  tooHigh: "A bath is never more concentrate than water: 1+40 is 1 part of concentrate and 40 parts of water.",
} as const satisfies Domain;
/** As far as the chemistry's constants were checked, with a little room. */
export const bathTemperature: Domain = { measure: "temperature", low: celsiusZero, high: celsiusZero + 80 };
/** Up to 2000 mg/L as calcium carbonate: no supply is harder (common practice, no source), and mg/L written as gpg soon is. */
export const waterHardness: Domain = {
  measure: "hardness",
  low: 0,
  high: 20,
  tooHigh: "No tap or well water is as hard: is the figure in another unit?",
};
/** Up to 10 000 mg/L as calcium carbonate. */
export const waterAlkalinity: Domain = { measure: "alkalinity", low: 0, high: 200 };
/** Saturated sodium hydroxide solution holds about 20 eq/L (common practice, no source). */
export const concentrateAlkalinity: Domain = { measure: "alkalinity", low: 0, openLow: true, high: 25_000 };
export const sequesteringCapacity: Domain = { measure: "amount per volume", low: 0, openLow: true, high: 1000 };
/** Dissolved ion up to 100 g/L. */
export const ionConcentration: Domain = { measure: "amount per volume", low: 0, high: 100 };
/** What a wash bath can hold: 0.5 eq/L is 20 g/L of sodium hydroxide, several times a strong charge; common practice, no source. */
export const bathAlkalinity: Domain = { measure: "alkalinity", low: 0, openLow: true, high: 500 };
export const readablePh: Domain = { measure: "pH", low: 0, high: 14.5 };
const nearCorrosive = corrosiveAlkali - meterDoubt;
/** A pH that an amount is worked out to reach. */
export const aimedPh: Domain = {
  ...readablePh,
  high: nearCorrosive,
  tooHigh:
    "No amount is worked out for more: a bath that is poured away at 12.5 is hazardous waste, D002 (40 CFR 261.22), and within 0.1 of that no meter decides.",
};
/** A spent bath that may be neutralized without asking anybody. */
export const treatedPh: Domain = {
  ...readablePh,
  high: nearCorrosive,
  tooHigh:
    "At 12.5 a spent bath is hazardous waste, D002, before any acid (40 CFR 261.22), and within 0.1 of that no meter decides: ask the authority before it is treated.",
};
export const neutralizedPh: Domain = {
  ...readablePh,
  low: 6,
  tooLow:
    "Federal law lets nothing below pH 5.0 into a sewer (40 CFR 403.5(b)(2)), and so near it a little acid moves the pH far: aim at 6 or higher.",
};
/** A limit that a shop may write for its own drain. */
export const sewerLimit: Domain = {
  ...readablePh,
  low: sewerFloor,
  high: nearCorrosive,
  tooLow:
    "Federal law lets nothing below pH 5.0 into a sewer, except to a treatment plant designed for it (40 CFR 403.5(b)(2)).",
  tooHigh: "At 12.5 and more it is hazardous waste, D002 (40 CFR 261.22), and within 0.1 of that no meter decides.",
};
/** How far a meter may be off, either way. */
export const meterAccuracy: Domain = { measure: "number", low: 0, openLow: true, high: 0.5 };
/** As a shop may set it: less than a meter can tell calls for a top-up always, and 5 is a slip for 0.5. */
export const phDrop: Domain = { measure: "number", low: 0.05, high: 3 };
/** Farther from its baseline no bath counts as back. */
export const phTolerance: Domain = { measure: "number", low: 0, openLow: true, high: 1 };
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
/** Pounds, kilograms, gallons or liters of acid: the largest tank here takes less. */
export const stagedAcid: Domain = { measure: "number", low: 0, openLow: true, high: 10_000 };
/** The standards of the meter are certified between these at best. */
export const bufferTemperature: Domain = { measure: "temperature", low: celsiusZero, high: celsiusZero + 60 };
/** A buret or a syringe holds no liter. */
export const titrantVolume: Domain = { measure: "volume", low: 0, high: 0.001 };
export const sampleVolume: Domain = { measure: "volume", low: 0, openLow: true, high: 0.01 };
/** Up to 10 eq/L; the methods use 0.02 to 0.1. */
export const titrantNormality: Domain = { measure: "alkalinity", low: 0, openLow: true, high: 10_000 };
/** A water or a bath, up to 5 eq/L. */
export const titratedWater: Domain = { measure: "alkalinity", low: 0, high: 5000 };
/** A concentration, conductivity or the like, in whatever unit it was given. */
export const blendedValue: Domain = { measure: "number", low: 0, high: 1e9 };
/** From a faucet's cartridge to 10 million grains. */
export const softenerCapacity: Domain = { measure: "mass", low: 0, openLow: true, high: 650 };
/** Printed conventions are 2, 3 and 4. */
export const ironFactor: Domain = { measure: "number", low: 0, openLow: true, high: 10 };
export const waterRecovery: Domain = { measure: "number", low: 0, openLow: true, high: 1, openHigh: true };
export const saltRejection: Domain = { measure: "number", low: 0, high: 1 };
/** Below 4.5 no alkalinity is left; above about 9.5 it is no longer bicarbonate, which the index takes it for (from memory). */
export const langelierPh: Domain = { measure: "pH", low: 4.5, high: 9.5 };
export const langelierTemperature: Domain = { measure: "temperature", low: celsiusZero, high: celsiusZero + 100 };
/** From 0.1 mg/L, the least that a test tells; the logarithm of less says nothing of a water. */
export const langelierHardness: Domain = { measure: "hardness", low: 0.001, high: 100 };
export const langelierAlkalinity: Domain = { ...waterAlkalinity, low: 0.002 };
/** 10 to 10,000 mg/L: A is 0 at the low end, and brine needs another index (ASTM D3739 family, from memory). */
export const langelierSolids: Domain = { measure: "amount per volume", low: 0.01, high: 10 };
/** Days of a date in Excel up to the year 9999, or hours and minutes since a start. */
export const recordedTime: Domain = { measure: "number", low: 0, openLow: true, high: 1e8 };
/** An error of more is a reading typed in the place of an error. */
export const asFoundError: Domain = { measure: "number", low: -2, high: 2 };
/** Millivolts: what the input of a pH meter can show. */
export const electrodePotential: Domain = { measure: "number", low: -2000, high: 2000 };
/** An amount that may be none, in whatever unit it was given. */
export const amountOrNone: Domain = { measure: "number", low: 0, high: 1e9 };
export const loadCount: Domain = { measure: "number", low: 0, high: 1e6 };
/** Up to 104 °F, above which federal law lets nothing reach the treatment works (40 CFR 403.5(b)(5)). */
export const releaseTemperature: Domain = {
  measure: "temperature",
  low: celsiusZero,
  high: celsiusZero + 40,
  tooHigh: "Let it cool and read again: a hot alkaline bath reads lower than a cool one.",
};
/** Of a bath that acid goes into. */
export const treatedTemperature: Domain = {
  ...releaseTemperature,
  tooHigh:
    "Let it cool and read again: acid makes a hot bath foam and spit, and a hot bath reads lower than a cool one.",
};
/** Liquid water at the pressure of the air. */
export const liquidWater: Domain = { measure: "temperature", low: celsiusZero, high: celsiusZero + 100 };
/** Up to a megawatt. */
export const heaterPower: Domain = { measure: "power", low: 0, openLow: true, high: 1e6 };
/** Days; a delivery takes no longer than ten years. */
export const leadTime: Domain = { measure: "number", low: 0, openLow: true, high: 3650 };
/** What left the shelf in a day; the least is far below a drop, so that a number of days stays countable. */
export const issuedAmount: Domain = { measure: "number", low: 1e-6, high: 1e9 };
