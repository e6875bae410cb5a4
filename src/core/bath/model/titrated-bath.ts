import { totalAlkalinityEnd } from "../../chemistry/alkalinities.ts";
import type { Composition } from "../../chemistry/composition.ts";
import { combine, combineInto, composition } from "../../chemistry/composition.ts";
import { beginSweep, sweepAcid } from "../../chemistry/equilibrium/sweep.ts";
import { mostDissolved } from "../../chemistry/limits.ts";
import { rootOfRising } from "../../chemistry/root-of-rising.ts";
import { DomainError } from "../../limits/domain-error.ts";
import type { EquivalentsPerKilogram } from "../../units/quantity.ts";
import type { CalibratedBath } from "./calibrated-bath.ts";

/** At most two bases a mol: carbonate. */
const basesPerMole = 2;
const sodiumCarbonate = composition({ sodium: 2, carbonate: 1 });

/** Closes the charge at the reading with the acid that the soil brought, or with base the builder lacks. */
function closed(totals: Composition, acid: number): Composition {
  return { ...totals, chloride: totals.chloride + Math.max(0, acid), sodium: totals.sodium + Math.max(0, -acid) };
}

/** Adds `buffer` to `base`, at the bath's reading, until the titration to pH 4.5 comes out as measured. */
function matchWith(
  bath: CalibratedBath,
  base: Composition,
  buffer: Composition,
  alkalinity: number,
): Composition | undefined {
  const mixture = { ...combine(1, base, mostDissolved, buffer) };
  const sweep = beginSweep({ ...mixture, sodium: mixture.sodium + mostDissolved }, bath.temperature, bath.solids);
  const excess = (amount: number): number => {
    combineInto(mixture, 1, base, amount, buffer);
    const acid = sweepAcid(sweep, mixture, bath.baseline);
    return sweepAcid(sweep, mixture, totalAlkalinityEnd) - acid - alkalinity;
  };
  const atLow = excess(0);
  if (atLow > 0) return undefined;
  const amount = rootOfRising(excess, atLow, -atLow / basesPerMole, mostDissolved);
  if (amount === undefined) return undefined;
  combineInto(mixture, 1, base, amount, buffer);
  return closed(mixture, sweepAcid(sweep, mixture, bath.baseline));
}

/**
 * A used bath of which both the pH (the calibration's baseline) and the acid to pH 4.5 are known: more builder,
 * partly used up by acid, or, where the builder holds no buffer, carbonate taken up from the air. Throws
 * `no-answer` where the titration found less than the pH alone calls for.
 */
export function titratedBath(bath: CalibratedBath, alkalinity: EquivalentsPerKilogram): Composition {
  const water = combine(1 - bath.openingShare, bath.water, 0, bath.water);
  const matched =
    matchWith(bath, water, bath.builder, alkalinity) ?? matchWith(bath, water, sodiumCarbonate, alkalinity);
  if (matched !== undefined) return matched;
  const reading = `pH ${bath.baseline.toFixed(2)}`;
  throw new DomainError(
    "no-answer",
    `A bath at ${reading} holds more alkalinity than was titrated; check the titration and the reading`,
  );
}
