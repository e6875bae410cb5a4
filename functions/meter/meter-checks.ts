import type { MeterCheck } from "../../src/core/meter/drift.ts";
import { isBlankOrZero, isHeader, numberFrom, refuse } from "../arguments/read-cell.ts";
import { timeFrom } from "../arguments/time-argument.ts";
import { oneOfThe } from "../arguments/wording.ts";
import type { Argument, CellValue } from "../define-function.ts";

/** The cells of one column or row; none where all are blank, as in a log without a check yet. */
function cells<const Name extends string>(
  name: Name,
  help: string,
  unit: string,
): Argument<readonly CellValue[], Name> {
  return {
    name,
    help,
    unit,
    excelType: "any",
    dimensionality: "matrix",
    optional: false,
    read: (input) => {
      const rows = Array.isArray(input) ? input : [[input ?? null]];
      if (rows.length > 1 && rows.some((row) => row.length > 1)) refuse(name, "must be one column or one row.");
      const all = rows.flat();
      return all.every(isBlankOrZero) ? [] : all;
    },
  };
}

export const checkTimes = cells(
  "check_times",
  "when the meter was checked and then adjusted, in any order; rows without a time are skipped",
  "date and time, or hours",
);

export const asFoundErrors = cells(
  "as_found_errors",
  "reading less buffer before each adjustment, in the buffer nearest to the reading's pH, in the same order; blank and 0 beside a time are a check that found no error",
  "pH",
);

/** Pairs times with errors; an error that has no time is refused, since it may belong to any. */
export function checksOf(times: readonly CellValue[], errors: readonly CellValue[]): readonly MeterCheck[] {
  if (times.length === 0 && errors.length > 0) refuse(checkTimes.name, "are blank or 0, where there are errors.");
  if (errors.length > 0 && times.length !== errors.length) {
    refuse(
      checkTimes.name,
      `and as-found errors have ${times.length} and ${errors.length} cells; they must have the same number.`,
    );
  }
  return times.flatMap((time, index) => {
    const error = errors[index] ?? null;
    const noTime = isBlankOrZero(time) || isHeader(time, index);
    if (noTime && (isBlankOrZero(error) || isHeader(error, index))) return [];
    if (noTime)
      return refuse(checkTimes.name, `has no time in cell ${index + 1} of its range, where there is an error.`);
    return [
      {
        time: timeFrom(oneOfThe(checkTimes.name), time),
        asFoundError: isBlankOrZero(error) ? 0 : numberFrom(oneOfThe(asFoundErrors.name), error),
      },
    ];
  });
}
