import { DomainError } from "../domain-error.ts";
import { checkWithin } from "../domain.ts";
import { ionicProductExponent } from "../solution/ionic-product.ts";
import { isPlainHydroxide } from "../solution/builder.ts";
import { losses } from "./bath-model.ts";
import { readablePh } from "../domains.ts";
import type { Estimate, FallenBath, Loss } from "./bath-model.ts";
import type { Kelvin, PH } from "../units/quantity.ts";

/** Hydroxide in excess of hydrogen ions, eq/m3, taking activity as concentration. */
function excessHydroxide(reading: PH, temperature: Kelvin): number {
  return 1000 * (10 ** (reading - ionicProductExponent(temperature)) - 1 / 10 ** reading);
}

/** The highest alkalinity that the tables behind the band cover, about 200 mg/L as calcium carbonate. */
const alkalinityWhenUnknown = 4; // eq/m3

/** The tables behind the band say little about a bath that fell further. */
const largestDrop = 1;

/**
 * Edges of the band for buffered builders. They enclose the top-ups of three recipes (silicate with
 * carbonate, carbonate with citrate, phosphate with EDTA) in purified, softened and hard water,
 * computed with the equilibrium program PHREEQC and a database of published constants: for half a
 * point from 11.3 at 45 °C, 0.57 to 0.94 of the opening dose after acid and 0.48 to 0.77 after
 * dilution; dilution also from the same recipes' pH over dose at 25, 45 and 60 °C; larger drops by
 * acid from their titrations. A band around those baths, not an equilibrium calculation for this one.
 */
interface Edges {
  /** Times the share in unbuffered bath whose water first takes its alkalinity in hydroxide. */
  readonly low: number;
  /** Times the hydroxide-linear share, by the drop in pH. */
  readonly high: (drop: number) => number;
}

const edges: Readonly<Record<Loss, Edges>> = {
  acid: { low: 1.05, high: (drop) => 1.4 + 2 * Math.max(0, drop - 0.5) },
  dilution: { low: 1, high: (drop) => 1.15 + 0.5 * Math.max(0, 0.5 - drop) },
};

function buffered(bath: FallenBath, linear: number, baselineHydroxide: number, loss: Loss): Estimate {
  const alkalinity = bath.alkalinity ?? alkalinityWhenUnknown;
  const inItsWater = (linear * baselineHydroxide) / (baselineHydroxide + alkalinity);
  const low = Math.min(linear, edges[loss].low * inItsWater);
  const high = edges[loss].high(bath.baseline - bath.reading) * linear;
  return { low, best: (low + high) / 2, high };
}

/**
 * Share of the opening dose that brings a fallen bath back to its baseline. Plain hydroxide: the share
 * of its hydroxide that is gone, 1 − 10^−drop well above neutral. Other builders: a band.
 *
 * @throws OutOfRange where the baseline is not alkaline
 * @throws DomainError where the band does not reach (no answer)
 */
export function topUpBand(bath: FallenBath): Estimate {
  const neutral = ionicProductExponent(bath.temperature) / 2;
  checkWithin("baseline", bath.baseline, { ...readablePh, low: neutral, openLow: true });
  const atBaseline = excessHydroxide(bath.baseline, bath.temperature);
  if (bath.reading >= bath.baseline) return { low: 0, best: 0, high: 0 };
  const linear = 1 - excessHydroxide(bath.reading, bath.temperature) / atBaseline;
  if (isPlainHydroxide(bath.builder)) return { low: linear, best: linear, high: linear };
  if (bath.baseline - bath.reading > largestDrop) {
    throw new DomainError("no-answer", "The bath has fallen by more than 1.0 pH: titrate it, bench test it or change it out");
  }
  const ways = losses.filter((loss) => bath.loss === undefined || bath.loss === loss);
  const bands = ways.map((loss) => buffered(bath, linear, atBaseline, loss));
  return {
    low: Math.min(...bands.map(({ low }) => low)),
    best: bands.reduce((sum, { best }) => sum + best, 0) / bands.length,
    high: Math.max(...bands.map(({ high }) => high)),
  };
}
