import { celsiusZero } from "../units/exact-constants.ts";
import { ionicProductExponent } from "../solution/ionic-product.ts";
import { isPlainHydroxide } from "../solution/builder.ts";
import { kelvin, ph } from "../units/quantity.ts";
import type { BathChemistry, Estimate } from "./bath-model.ts";
import type { Kelvin, PH } from "../units/quantity.ts";

/**
 * A bath of plain hydroxide moves with pKw of water when it is heated; a buffered one moves by a part
 * of that. The parts below enclose about forty baths (three recipes with silicate, carbonate, citrate or
 * phosphate, in purified and in softened water, pH 9.9 to 12.5 at 25 °C) computed between 25 and
 * 60 °C with the equilibrium program PHREEQC and a database of published constants. They are a band
 * around those baths, not an equilibrium calculation for this one.
 */
type PartAt25 = readonly (readonly [pH: number, part: number])[];

const lowestInSoftenedWater: PartAt25 = [[7, 0], [9.8, 0.28], [10.15, 0.34], [10.75, 0.51], [11.3, 0.75], [11.8, 0.86], [12.3, 0.89]];
const lowestInPurifiedWater: PartAt25 = [[7, 0], [9.8, 0.28], [10.8, 0.8], [11.3, 0.88], [11.8, 0.9], [12.3, 0.9]];
/** Ionic strength makes even plain hydroxide move a little more than pKw. */
const highestPart = 1.01;

/** Alkalinity of the softened water of those baths, about 200 mg/L as calcium carbonate. */
const softenedAlkalinity = 4; // eq/m3

const roomTemperature = kelvin(celsiusZero + 25);

function interpolate(points: PartAt25, pH: number): number {
  const [first] = points;
  let [beforePh, beforePart] = first ?? [0, 0];
  for (const [nextPh, nextPart] of points) {
    if (pH <= nextPh) {
      const width = nextPh - beforePh;
      return width <= 0 ? nextPart : beforePart + ((pH - beforePh) / width) * (nextPart - beforePart);
    }
    [beforePh, beforePart] = [nextPh, nextPart];
  }
  return beforePart;
}

type Part = (pHAt25: number) => number;

function lowestPart(bath: BathChemistry): Part {
  const weight = bath.alkalinity === undefined ? 1 : Math.min(2, bath.alkalinity / softenedAlkalinity);
  return (pH) => {
    const purified = interpolate(lowestInPurifiedWater, pH);
    const softened = interpolate(lowestInSoftenedWater, pH);
    return Math.max(0, purified + weight * (softened - purified));
  };
}

/** The pH at 25 °C of a bath that reads `reading` at `temperature`: the one whose shifted pH is the reading. */
function backTo25(reading: number, temperature: Kelvin, part: Part): number {
  const shift = ionicProductExponent(temperature) - ionicProductExponent(roomTemperature);
  let [low, high] = [-4, 20];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (middle + part(middle) * shift < reading) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function shifted(reading: number, from: Kelvin, to: Kelvin, part: Part): number {
  const at25 = backTo25(reading, from, part);
  const room = ionicProductExponent(roomTemperature);
  return at25 + part(at25) * (ionicProductExponent(to) - room);
}

/** What the bath reads at another temperature: exact for plain hydroxide, a band for any other builder. */
export function temperatureBand(bath: BathChemistry, reading: PH, from: Kelvin, to: Kelvin): Estimate {
  if (from === to) return { low: reading, best: reading, high: reading };
  if (isPlainHydroxide(bath.builder)) {
    const moved = ph(reading + ionicProductExponent(to) - ionicProductExponent(from));
    return { low: moved, best: moved, high: moved };
  }
  const lowest = lowestPart(bath);
  const ends = [shifted(reading, from, to, lowest), shifted(reading, from, to, () => highestPart)];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  return { low, best: (low + high) / 2, high };
}
