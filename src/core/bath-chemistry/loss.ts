import { DomainError } from "../domain-error.ts";
import { combine, combineInto, nothingDissolved } from "../solution/composition.ts";
import type { Composition, MutableComposition } from "../solution/composition.ts";
import { beginSweep, sweepAcid } from "../solution/equilibrium/sweep.ts";
import { mostDissolved } from "../solution/limits.ts";
import type { PH } from "../solution/quantities.ts";
import type { AnchoredBath } from "./anchored-bath.ts";
import { rootOfRising } from "./root-of-rising.ts";

/** How a bath lost its alkali: to acid soil, to drag-out replaced by water, to carbon dioxide of the air. */
export type Loss = "acid" | "dilution" | "carbon dioxide";

function withAcid(bath: AnchoredBath, reading: PH): Composition {
  const acid = sweepAcid(beginSweep(bath.opening, bath.temperature, bath.solids), bath.opening, reading);
  return { ...bath.opening, chloride: bath.opening.chloride + acid };
}

function withWater(bath: AnchoredBath, reading: PH): Composition {
  const { opening, water } = bath;
  const sweep = beginSweep(opening, bath.temperature, bath.solids);
  const mixture: MutableComposition = { ...nothingDissolved };
  const spare = (replaced: number): number => {
    combineInto(mixture, 1 - replaced, opening, replaced, water);
    return -sweepAcid(sweep, mixture, reading);
  };
  const atLow = spare(0);
  const replaced = rootOfRising(spare, atLow, -atLow / bath.load, 1);
  if (replaced === undefined) {
    throw new DomainError("no-answer", `Dilution with this water does not bring the bath down to pH ${reading.toFixed(2)}`);
  }
  return combine(1 - replaced, opening, replaced, water);
}

/** Equivalents of hydroxide that one mol of carbon dioxide uses up at most. */
const hydroxideTaken = 2;
const carbonDioxide: Composition = { ...nothingDissolved, carbonate: 1 };

function withCarbonDioxide(bath: AnchoredBath, reading: PH): Composition {
  const { opening } = bath;
  const mixture: MutableComposition = { ...combine(1, opening, 1, carbonDioxide) };
  const sweep = beginSweep(mixture, bath.temperature, bath.solids);
  const spare = (taken: number): number => {
    combineInto(mixture, 1, opening, taken, carbonDioxide);
    return -sweepAcid(sweep, mixture, reading);
  };
  const atLow = spare(0);
  const taken = rootOfRising(spare, atLow, -atLow / hydroxideTaken, mostDissolved);
  if (taken === undefined) {
    throw new DomainError("no-answer", `Carbon dioxide does not bring this bath down to pH ${reading.toFixed(2)}`);
  }
  return combine(1, opening, taken, carbonDioxide);
}

/**
 * The bath after the loss that brings it from its baseline to a reading at the same temperature; the
 * opening bath where the reading is not below the baseline. Throws `no-answer` where that loss cannot.
 */
export function afterLoss(bath: AnchoredBath, reading: PH, loss: Loss): Composition {
  if (reading >= bath.baseline) return bath.opening;
  switch (loss) {
    case "acid":
      return withAcid(bath, reading);
    case "dilution":
      return withWater(bath, reading);
    case "carbon dioxide":
      return withCarbonDioxide(bath, reading);
  }
}
