import type { Argument } from "../define-function.ts";
import { optionalNumber } from "./arguments.ts";

/** A required plain number for which 0 makes sense, so that a blank is 0 too. */
export function numberOrNone<const Name extends string>(
  name: Name,
  help: string,
  unit: string,
): Argument<number, Name> {
  return { ...optionalNumber(name, help, unit, 0), optional: false };
}
