import { dose } from "./charge/dose.ts";
import { strength } from "./units/strength.ts";
import { tankVolume } from "./tank/tank-volume.ts";
import type { WorksheetFunction } from "./define-function.ts";

/** Every worksheet function, in the order of the help. */
export const catalogue: readonly WorksheetFunction[] = [strength, tankVolume, dose];

/** The function with this id, without its `BATH.`; case does not matter. */
export function findFunction(id: string): WorksheetFunction | undefined {
  return catalogue.find((fn) => fn.id === id.toUpperCase());
}
