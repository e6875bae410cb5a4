import { unitsNamed } from "../../src/core/units/find-unit.ts";
import { parseNumber } from "../../src/core/units/parse-number.ts";
import { alignedList } from "../arguments/list-arguments.ts";
import { isBlankOrZero, numberFrom, refuse, singleCell } from "../arguments/read-cell.ts";
import { oneOfThe, quoted } from "../arguments/wording.ts";
import type { Argument, CellValue } from "../define-function.ts";

/** A number and the word after it. */
const numberWithWord = /^([+-]?[\d.,]+)\s*(\D.*)$/s;

/** None is none in every unit that starts at 0, which degrees of temperature do not. */
function isNoneOf(amount: string, unit: string): boolean {
  const number = parseNumber(amount);
  if (number.read !== "number" || number.value !== 0) return false;
  const units = unitsNamed(unit, "US");
  return units.length > 0 && units.every(({ scale }) => scale.type === "proportional");
}

/** A plain number, or a none written with its unit, such as "0 gpg". */
function valueFrom(name: string, cell: CellValue): number {
  const parts = typeof cell === "string" ? numberWithWord.exec(cell.trim()) : null;
  if (parts === null || parseNumber(String(cell)).read !== "nothing") return numberFrom(name, cell);
  if (isNoneOf(parts[1] ?? "", parts[2] ?? "")) return 0;
  return refuse(name, `is ${quoted(String(cell))}; write plain numbers, all in one unit.`);
}

/** How to write a value that is truly 0, since a bare 0 may be a blank cell. */
export const writtenNone = "If it is truly none, write “0 mg/L”.";

const unit = "any one unit";

/** A required value of a conserved quantity in whatever unit its neighbors have. */
export function value<const Name extends string>(name: Name, help: string): Argument<number, Name> {
  return {
    name,
    help,
    unit,
    excelType: "any",
    dimensionality: "scalar",
    optional: false,
    read: (input) => {
      const cell = singleCell(name, input);
      if (isBlankOrZero(cell)) refuse(name, `is blank or 0. ${writtenNone}`);
      return valueFrom(name, cell);
    },
  };
}

/** One column or row of such values; a blank, a bare 0 or a header on top is nothing. */
export function valueList<const Name extends string>(
  name: Name,
  help: string,
): Argument<readonly (number | undefined)[], Name> {
  return alignedList(name, { help, unit, read: (cell) => valueFrom(oneOfThe(name), cell) });
}
