import type { Reference } from "./reference/reference.ts";
import { references } from "./references.ts";

/** What a reader gets besides the definition. Throws a RangeError for what is no function's id. */
export function referenceOf(id: string): Reference {
  const reference = references[id];
  if (reference === undefined) throw new RangeError(`No function BATH.${id} is in functions/references.ts.`);
  return reference;
}
