import { catalogue } from "./catalogue.ts";
import type { WorksheetFunction } from "./define-function.ts";

/** The function with this id, without its `BATH.`; case does not matter. */
export function findFunction(id: string): WorksheetFunction | undefined {
  return catalogue.find((fn) => fn.id === id.toUpperCase());
}
