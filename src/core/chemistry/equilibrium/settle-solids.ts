import { DomainError } from "../../limits/domain-error.ts";
import type { ChemicalSystem, Solid } from "./chemical-system.ts";
import { equilibrate } from "./equilibrate.ts";
import { logBruciteSaturation, logCalciteSaturation } from "./saturation.ts";

/** Further supersaturation than this, as a natural logarithm, forms a solid. */
const supersaturated = 1e-6;
/** A solid that would hold less than this has dissolved, mol/kg. */
const dissolved = -1e-12;
const mostRounds = 12;
/**
 * Near saturation a solid may be called for without itself and come out negative with it, since its ions change
 * the activity coefficients. One that went this often stays dissolved: what it would hold is beyond notice.
 */
const mostDissolutions = 2;

function dissolve(solid: Solid): boolean {
  if (!solid.present || solid.amount >= dissolved) return false;
  solid.present = false;
  solid.amount = 0;
  return true;
}

function form(solid: Solid, logSaturation: number | undefined): boolean {
  if (solid.present || logSaturation === undefined || logSaturation <= supersaturated) return false;
  solid.present = true;
  return true;
}

/** Equilibrium in which calcite and brucite form where the water is supersaturated with them. */
export function equilibrateWithSolids(system: ChemicalSystem): void {
  let [calciteGone, bruciteGone] = [0, 0];
  for (let round = 0; round < mostRounds; round += 1) {
    equilibrate(system);
    const gone = [dissolve(system.calcite), dissolve(system.brucite)];
    calciteGone += Number(gone[0]);
    bruciteGone += Number(gone[1]);
    if (gone.includes(true)) continue;
    const formed = [
      calciteGone < mostDissolutions && form(system.calcite, logCalciteSaturation(system)),
      bruciteGone < mostDissolutions && form(system.brucite, logBruciteSaturation(system)),
    ];
    if (!formed.includes(true)) return;
  }
  throw new DomainError(
    "no-answer",
    "The amounts of lime scale and magnesium hydroxide did not settle for this composition",
  );
}
