import type { FunctionArgument, FunctionResult, OSpreadsheet } from "../library.ts";

/**
 * Rounds as Excel does: half away from zero, on the 15 significant digits that Excel shows, so that
 * 1.005 to two places is 1.01 although the nearest binary fraction lies below it.
 */
export function excelRound(value: number, places: number): number {
  const shifted = Math.round(shift(Number(Math.abs(value).toPrecision(15)), places));
  return Math.sign(value) * shift(shifted, -places);
}

/** The number with its decimal point moved, digit for digit. */
function shift(value: number, places: number): number {
  const [digits = "0", exponent = "0"] = value.toExponential().split("e");
  return Number(`${digits}e${Number(exponent) + places}`);
}

/** Puts Excel's rounding in the place of the grid's, which rounds the binary fraction. */
export function registerRound(library: OSpreadsheet): void {
  const { functionRegistry } = library.registries;
  const { toNumber } = library.helpers;
  const locale = library.DEFAULT_LOCALE;
  const compute = (value: FunctionArgument, places: FunctionArgument = { value: 0 }): FunctionResult => {
    const digits = Math.trunc(toNumber(places as FunctionResult, locale));
    const { format } = value as FunctionResult;
    return {
      value: excelRound(toNumber(value as FunctionResult, locale), digits),
      ...(format === undefined ? {} : { format }),
    };
  };
  functionRegistry.replace("ROUND", { ...functionRegistry.get("ROUND"), compute: compute });
}
