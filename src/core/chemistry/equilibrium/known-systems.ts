import type { Composition } from "../composition.ts";
import { buildSystem, componentsIn, presenceOf } from "./build-system.ts";
import type { ChemicalSystem } from "./chemical-system.ts";

/** A shop meets a handful of sets of components; a caller that meets more loses only the reuse. */
const mostKept = 64;

const kept = new Map<number, ChemicalSystem>();

/** The system for the components that are present, built on first use. */
export function systemFor(totals: Composition): ChemicalSystem {
  const presence = presenceOf(totals);
  const known = kept.get(presence);
  if (known !== undefined) return known;
  if (kept.size >= mostKept) kept.clear();
  const built = buildSystem(componentsIn(presence));
  kept.set(presence, built);
  return built;
}
