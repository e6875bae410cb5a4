import { bufferPh } from "../../src/core/meter/buffer-ph.ts";
import { standardBuffers } from "../../src/core/meter/standard-buffers.ts";
import { parseNumber } from "../../src/core/units/parse-number.ts";
import type { Kelvin, PH } from "../../src/core/units/quantity.ts";
import { ph } from "../../src/core/units/quantity.ts";
import { isBlankOrZero, numberFrom, refuse, singleCell, wordIn } from "../arguments/read-cell.ts";
import { notOneOfChemicals } from "../arguments/wording.ts";
import type { Argument } from "../define-function.ts";

const names = standardBuffers.map(({ name }) => name);

const standardNamed = (word: string) => standardBuffers.find((one) => one.name === word);

/** A buffer's pH at the temperature it has: as typed, or from a standard's certificate. */
export type BufferValue = (temperature: Kelvin) => PH;

/** A required buffer: its pH as a number, or a primary standard by name. */
export function bufferValue<const Name extends string>(name: Name, help: string): Argument<BufferValue, Name> {
  return {
    name,
    help,
    unit: "pH",
    excelType: "any",
    dimensionality: "scalar",
    optional: false,
    read: (input) => {
      const cell = singleCell(name, input);
      if (isBlankOrZero(cell)) refuse(name, "is blank or 0.");
      const standard = typeof cell === "string" ? standardNamed(wordIn(cell)) : undefined;
      if (standard !== undefined) return (temperature) => bufferPh(standard, temperature);
      if (typeof cell === "string" && parseNumber(cell).read === "nothing")
        refuse(name, notOneOfChemicals(cell, names, ", or its pH from the bottle"));
      const value = ph(numberFrom(name, cell));
      return () => value;
    },
  };
}
