import { neutralizedPh, sewerLimit } from "../../core/limits/domains.ts";
import type { LimitsOf, UnitOf } from "./definition.ts";

/** The same unit word in every system. */
function always(unit: string): UnitOf {
  return { US: unit, metric: unit, imperial: unit };
}

/** The same limits in every system. */
export function between(low: number, high: number): LimitsOf {
  return { US: { low, high }, metric: { low, high }, imperial: { low, high } };
}

export const volume: UnitOf = { US: "gal", metric: "L", imperial: "imperial gal" };
export const depth: UnitOf = { US: "in", metric: "cm", imperial: "in" };
export const area: UnitOf = { US: "ft²", metric: "m²", imperial: "ft²" };
export const volumeByDepth: UnitOf = { US: "gal/in", metric: "L/cm", imperial: "imperial gal/in" };
export const temperature: UnitOf = { US: "°F", metric: "°C", imperial: "°C" };
export const priceByVolume: UnitOf = { US: "per gal", metric: "per L", imperial: "per imperial gal" };
export const hardness: UnitOf = always("mg/L as CaCO3");
export const waterAlkalinity: UnitOf = always("mg/L as CaCO3");
export const dissolvedSolids: UnitOf = always("mg/L");
export const density: UnitOf = always("kg/L");
export const sequestering: UnitOf = always("mg CaCO3/mL");
export const equivalents: UnitOf = always("eq/L");
export const conductivity: UnitOf = always("mS/cm");
/** Hardness as a mass, and alkali as equivalents, that water brings into a bath. */
export const hardnessAdded: UnitOf = always("g CaCO3");
export const alkaliAdded: UnitOf = always("eq");
export const millivolts: UnitOf = always("mV");
export const mass: UnitOf = { US: "lb", metric: "kg", imperial: "kg" };
/** Dry acids are weighed, liquid ones measured. */
export const acidAmount: UnitOf = { US: "lb or gal", metric: "kg or L", imperial: "kg or imperial gal" };
export const titrant: UnitOf = always("mL");
export const minutes: UnitOf = always("min");
export const seconds: UnitOf = always("s");
export const hours: UnitOf = always("hours");
export const days: UnitOf = always("days");
export const power: UnitOf = always("kW");

/** A wash tank is taken to hold no more than a small swimming pool. */
export const volumeLimits: LimitsOf = {
  US: { low: 0, high: 5000 },
  metric: { low: 0, high: 20000 },
  imperial: { low: 0, high: 5000 },
};

export const depthLimits: LimitsOf = {
  US: { low: 0, high: 400 },
  metric: { low: 0, high: 1000 },
  imperial: { low: 0, high: 400 },
};

/** Levels are read to a tenth or so, and a hot bath loses a little all the time: a difference of less says nothing (common practice, no source). */
export const leastLevel = { US: 0.5, metric: 1.5, imperial: 0.5 } as const;

export const areaLimits: LimitsOf = {
  US: { low: 0, high: 10_000 },
  metric: { low: 0, high: 1000 },
  imperial: { low: 0, high: 10_000 },
};

/** From freezing to boiling water. */
export const temperatureLimits: LimitsOf = {
  US: { low: 32, high: 212 },
  metric: { low: 0, high: 100 },
  imperial: { low: 0, high: 100 },
};

/** A meter that shows 0 stands dry or is switched off: no reading. */
export const phLimits: LimitsOf = between(0.1, 14.5);
/** Said with those limits, which are no help with a slip (common practice, no source). */
export const usualPh = "An alkaline bath usually reads 10 to 12.5.";
export const moneyLimits: LimitsOf = between(0, 1_000_000);
/** What a permit may ask and a bath be brought to; the functions that judge and size it take no other. */
export const sewerLimits: LimitsOf = between(sewerLimit.low, sewerLimit.high);
export const neutralizedPhLimits: LimitsOf = between(neutralizedPh.low, sewerLimit.high);
/** mg/L, as ACIDTO takes a number without a unit: less was most likely meant as meq/L, more no bath holds. */
export const bathAlkalinityLimits: LimitsOf = between(100, 25_000);
