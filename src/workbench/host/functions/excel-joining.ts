import type { FunctionArgument, OSpreadsheet } from "../library.ts";

/** The digits with which Excel writes a number into a text. */
const digits = 15;

function asExcelWrites(part: FunctionArgument): FunctionArgument {
  if (Array.isArray(part) || part === undefined || typeof part.value !== "number") return part;
  // Most numbers that are joined are counts and row numbers, and to write and read them again takes time.
  if (Number.isSafeInteger(part.value) && Math.abs(part.value) < 10 ** digits) return part;
  return { value: Number(part.value.toPrecision(digits)) };
}

/**
 * Lets `&` write numbers as Excel does, where the grid writes all digits of the binary fraction: what is
 * compared by such a text, as in COUNTIFS with ">"&A1, must meet here what it meets in Excel.
 */
export function registerJoining(library: OSpreadsheet): void {
  const { functionRegistry } = library.registries;
  const joining = functionRegistry.get("CONCATENATE");
  const { compute } = joining;
  functionRegistry.replace("CONCATENATE", {
    ...joining,
    compute(...parts) {
      return compute.apply(this, parts.map(asExcelWrites));
    },
  });
}
