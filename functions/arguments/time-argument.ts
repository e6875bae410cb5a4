import { hoursAmongDates } from "../../src/core/units/one-clock.ts";
import { parseNumber } from "../../src/core/units/parse-number.ts";
import type { Argument, CellValue } from "../define-function.ts";
import { alignedList } from "./list-arguments.ts";
import { isBlankOrZero, numberFrom, refuse, singleCell } from "./read-cell.ts";
import { oneOfThe, plainNumber, quoted } from "./wording.ts";

const unit = "date and time, or hours";

/** A date that is text sorts and subtracts as no date does, and which of 3/4 is the month nobody knows. */
export function timeFrom(name: string, cell: CellValue): number {
  if (typeof cell === "string" && parseNumber(cell).read === "nothing") {
    refuse(name, `is ${quoted(cell)}, which is text; enter it as a date and time, or as a number of hours.`);
  }
  return numberFrom(name, cell);
}

/** A required point in time: a date of Excel, which is a number of days, or a number of hours. */
export function time<const Name extends string>(name: Name, help: string): Argument<number, Name> {
  return {
    name,
    help,
    unit,
    excelType: "any",
    dimensionality: "scalar",
    optional: false,
    read: (input) => {
      const cell = singleCell(name, input);
      if (isBlankOrZero(cell)) refuse(name, "is blank or 0.");
      return timeFrom(name, cell);
    },
  };
}

/** One column or row of points in time; a blank, a 0 or a header on top is nothing. */
export function timeList<const Name extends string>(
  name: Name,
  help: string,
): Argument<readonly (number | undefined)[], Name> {
  return alignedList(name, { help, unit, read: (cell) => timeFrom(oneOfThe(name), cell) });
}

/** Refuses dates and hours in one list: the difference between two of them would be neither. */
export function checkOneClock(name: string, times: readonly (number | undefined)[]): void {
  const hours = hoursAmongDates(times);
  if (hours !== undefined)
    refuse(name, `hold dates and hours, such as ${plainNumber(hours)}; write all as dates or all as hours.`);
}
