import type { Composition } from "../composition.ts";
import { ph } from "../quantities.ts";
import type { Kelvin, PH } from "../quantities.ts";
import type { ChemicalSystem } from "./chemical-system.ts";
import { equilibrate } from "./equilibrate.ts";
import { setTemperature } from "./set-temperature.ts";
import { equilibrateWithSolids } from "./settle-solids.ts";
import { setTotals, startCold } from "./start.ts";
import { systemFor } from "./system-registry.ts";

/** Whether calcite and brucite may form. */
export type Solids = "none" | "calcite and brucite";

/** A run of solves at one temperature, each of which starts from the answer before it. */
export interface Sweep {
  readonly system: ChemicalSystem;
  readonly solids: Solids;
}

/** Starts a sweep over compositions that hold no component which `widest` lacks. */
export function beginSweep(widest: Composition, temperature: Kelvin, solids: Solids): Sweep {
  const system = systemFor(widest);
  setTemperature(system, temperature);
  setTotals(system, widest);
  startCold(system);
  return { system, solids };
}

function settle(sweep: Sweep): void {
  if (sweep.solids === "none") equilibrate(sweep.system);
  else equilibrateWithSolids(sweep.system);
}

/** pH of a composition. */
export function sweepPH(sweep: Sweep, totals: Composition): PH {
  const { system } = sweep;
  system.hydrogenIsGiven = false;
  setTotals(system, totals);
  settle(sweep);
  return ph(-system.logHydrogen / Math.LN10);
}

/** Strong acid that brings a composition to a pH, eq per kg of water; negative for strong base. */
export function sweepAcid(sweep: Sweep, totals: Composition, target: PH): number {
  const { system } = sweep;
  system.hydrogenIsGiven = true;
  system.logHydrogen = -Number(target) * Math.LN10;
  setTotals(system, totals);
  settle(sweep);
  return system.acidToClose;
}
