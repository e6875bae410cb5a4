import type { Kelvin, PH } from "../../units/quantity.ts";
import { ph } from "../../units/quantity.ts";
import type { Composition } from "../composition.ts";
import type { ChemicalSystem } from "./chemical-system.ts";
import { equilibrate } from "./equilibrate.ts";
import { systemFor } from "./known-systems.ts";
import { setTemperature } from "./set-temperature.ts";
import { equilibrateWithSolids } from "./settle-solids.ts";
import { setTotals, startCold } from "./start.ts";

/** Whether calcite and brucite may form. */
export type Solids = "none" | "calcite and brucite";

/** A run of solves at one temperature, each of which starts from the answer before it. */
export interface Sweep {
  readonly system: ChemicalSystem;
  readonly solids: Solids;
  /** pH to start from while nothing has been solved yet. */
  readonly guess: PH;
  started: boolean;
}

/** In the middle of the wash baths. */
const usualPH = ph(10);

/**
 * Prepares a sweep over compositions that hold no component which `widest` lacks. It starts cold, so an
 * answer is the same to the last digit whatever was solved before; two sweeps may not take turns.
 */
export function beginSweep(widest: Composition, temperature: Kelvin, solids: Solids, guess: PH = usualPH): Sweep {
  const system = systemFor(widest);
  setTemperature(system, temperature);
  return { system, solids, guess, started: false };
}

function load(sweep: Sweep, totals: Composition): void {
  setTotals(sweep.system, totals);
  if (!sweep.started) startCold(sweep.system, sweep.guess);
  sweep.started = true;
}

function settle(sweep: Sweep): void {
  if (sweep.solids === "none") equilibrate(sweep.system);
  else equilibrateWithSolids(sweep.system);
}

/** pH of a composition. */
export function sweepPH(sweep: Sweep, totals: Composition): PH {
  const { system } = sweep;
  load(sweep, totals);
  system.hydrogenIsGiven = false;
  settle(sweep);
  return ph(-system.logHydrogen / Math.LN10);
}

/** Strong acid that brings a composition to a pH, eq per kg of water; negative for strong base. */
export function sweepAcid(sweep: Sweep, totals: Composition, target: PH): number {
  const { system } = sweep;
  load(sweep, totals);
  system.hydrogenIsGiven = true;
  system.logHydrogen = -Number(target) * Math.LN10;
  settle(sweep);
  return system.acidToClose;
}
