import type { Area } from "../../address.ts";
import { invalidArgument } from "../../excel-error.ts";
import { targetOf } from "../requests/client-object.ts";

/** The cells of a range that was handed to a method; asked when the batch runs. */
export function rangeTarget(range: Excel.Range): () => Area {
  const target = targetOf(range) as (() => Area) | undefined;
  if (target === undefined) throw invalidArgument("A range of this workbook is needed.");
  return target;
}
