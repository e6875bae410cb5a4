import type { Argument } from "../define-function.ts";
import { isBlankOrZero, numberFrom, refuse, singleCell } from "./read-cell.ts";
import { plainNumber } from "./wording.ts";

/** A required share of a whole: 0.75, a percent cell, or text such as "75%". A true zero is written "0%". */
export function fraction<const Name extends string>(name: Name, help: string): Argument<number, Name> {
  return {
    name,
    help,
    unit: "share, 0 to 1",
    excelType: "any",
    dimensionality: "scalar",
    optional: false,
    read: (input) => {
      const cell = singleCell(name, input);
      if (isBlankOrZero(cell)) refuse(name, "is blank or 0.");
      const percent = typeof cell === "string" ? /^(.*?)\s*%\s*$/s.exec(cell) : null;
      if (percent !== null) return numberFrom(name, percent[1] ?? "") / 100;
      const share = numberFrom(name, cell);
      if (share >= 2 && share <= 100)
        refuse(
          name,
          `is ${plainNumber(share)}; write a share such as ${plainNumber(share / 100)}, or ${plainNumber(share)}%.`,
        );
      return share;
    },
  };
}

/** A share that may be left out; blank and 0 mean the fallback. */
export function optionalFraction<const Name extends string>(
  name: Name,
  help: string,
  fallback: number,
): Argument<number, Name> {
  const given = fraction(name, help);
  return {
    ...given,
    optional: true,
    read: (input, call) => (isBlankOrZero(singleCell(name, input)) ? fallback : given.read(input, call)),
  };
}
