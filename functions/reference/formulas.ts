import type { Formula } from "./formula.ts";
import { formulasOfCharge } from "./formulas-of-charge.ts";
import { formulasOfPh } from "./formulas-of-ph.ts";
import { formulasOfRelease } from "./formulas-of-release.ts";
import { formulasOfTopUp } from "./formulas-of-top-up.ts";
import { formulasOfWater } from "./formulas-of-water.ts";

/** The formula of every function, by its id. */
export const formulas: Readonly<Record<string, Formula>> = {
  ...formulasOfCharge,
  ...formulasOfWater,
  ...formulasOfPh,
  ...formulasOfTopUp,
  ...formulasOfRelease,
};
