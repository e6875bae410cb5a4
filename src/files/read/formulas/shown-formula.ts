import { withCode } from "./formula-pieces.ts";

/** Words that files put before functions and parameters newer than the format's first edition (ECMA-376; Excel 2019). */
const prefixes = /_(?:xlfn|xlws|xludf|xlpm)\./gi;

/** Other programs change the case of an add-in's function. */
const ours = /\b_xldudf_bath_(\w+)(?=\s*\()/gi;

/** A formula as a person sees it in Excel, with "=", from what a file holds: the other way round than `storedFormula`. */
export function shownFormula(stored: string): string {
  const plain = stored.replace(/^=/, "");
  return `=${withCode(plain, (code) =>
    code.replace(ours, (_, name: string) => `BATH.${name.toUpperCase().replaceAll("_", ".")}`).replace(prefixes, ""),
  )}`;
}
