import { amountAtPH } from "../../chemistry/amount-at-ph.ts";
import type { Composition } from "../../chemistry/composition.ts";
import { combine, composition } from "../../chemistry/composition.ts";
import { beginSweep, sweepAcid } from "../../chemistry/equilibrium/sweep.ts";
import { mostDissolved } from "../../chemistry/limits.ts";
import { DomainError } from "../../limits/domain-error.ts";
import type { PH } from "../../units/quantity.ts";
import type { CalibratedBath } from "./calibrated-bath.ts";

/** How a bath lost its alkali: to acid soil, to drag-out replaced by water, to carbon dioxide of the air. */
export type Loss = "acid" | "dilution" | "carbon dioxide";

function withAcid(bath: CalibratedBath, reading: PH): Composition {
  const { opening, temperature, solids } = bath;
  const acid = sweepAcid(beginSweep(opening, temperature, solids, reading), opening, reading);
  return { ...opening, chloride: opening.chloride + acid };
}

/** Adds `direction` to the opening bath until the reading; undefined where even the most falls short. */
function along(
  bath: CalibratedBath,
  reading: PH,
  direction: Composition,
  guess: number,
  most: number,
): Composition | undefined {
  const { opening, temperature, solids } = bath;
  const amount = amountAtPH({
    base: opening,
    direction,
    effect: "lowers",
    temperature,
    target: reading,
    solids,
    guess,
    most,
  });
  return amount === undefined ? undefined : combine(1, opening, amount, direction);
}

/** Half of the bath replaced is where the search starts. */
const half = 0.5;
const carbonDioxide = composition({ carbonate: 1 });

/**
 * The bath after the loss that brings it from its baseline to a reading at the same temperature; the
 * opening bath where the reading is not below the baseline. Throws `no-answer` where that loss cannot.
 */
export function afterLoss(bath: CalibratedBath, reading: PH, loss: Loss): Composition {
  if (reading >= bath.baseline) return bath.opening;
  if (loss === "acid") return withAcid(bath, reading);
  const spent =
    loss === "dilution"
      ? along(bath, reading, combine(1, bath.water, -1, bath.opening), half, 1)
      : along(bath, reading, carbonDioxide, bath.load * half, mostDissolved);
  if (spent !== undefined) return spent;
  const cause = loss === "dilution" ? "Dilution with this water" : "Carbon dioxide";
  throw new DomainError("no-answer", `${cause} does not bring the bath down to pH ${reading.toFixed(2)}`);
}
