import type { Argument, CallContext, CellInput, CellValue } from "../define-function.ts";
import { isBlankOrZero, isHeader, numberFrom, refuse } from "./read-cell.ts";
import { oneOfThe } from "./wording.ts";

interface ListHelp<Item> {
  readonly help: string;
  readonly unit?: string;
  readonly read: (cell: CellValue, call: CallContext) => Item;
}

/** The cells of one column or one row, in order; a column keeps a cell for each of its rows. */
export function cellsOf(name: string, input: CellInput): readonly CellValue[] {
  if (!Array.isArray(input)) return [input ?? null];
  if (input.length === 1) return input[0] ?? [];
  return input.map((row) => (row.length > 1 ? refuse(name, "must be one column or one row.") : (row[0] ?? null)));
}

/**
 * One column or row in which a blank, a 0 or a header on top is nothing, so that several lists keep their rows side
 * by side; refused where all of it is. A word further down is no header: whoever reads the cell refuses it.
 */
export function alignedList<Item, const Name extends string>(
  name: Name,
  { help, unit, read }: ListHelp<Item>,
): Argument<readonly (Item | undefined)[], Name> {
  return {
    name,
    help,
    ...(unit === undefined ? {} : { unit }),
    excelType: "any",
    dimensionality: "matrix",
    optional: false,
    read: (input, call) => {
      const cells = cellsOf(name, input);
      if (cells.every(isBlankOrZero)) refuse(name, "are all blank or 0.");
      return cells.map((cell, row) => (isBlankOrZero(cell) || isHeader(cell, row) ? undefined : read(cell, call)));
    },
  };
}

/** One column or row of which only the used cells count. */
export function list<Item, const Name extends string>(
  name: Name,
  about: ListHelp<Item>,
): Argument<readonly Item[], Name> {
  const aligned = alignedList(name, about);
  return {
    ...aligned,
    read: (input, call) => {
      const used = aligned.read(input, call).filter((item) => item !== undefined);
      return used.length > 0 ? used : refuse(name, "hold no number.");
    },
  };
}

/** A card or a table of more lines nobody reads, and each line takes the model hundredths of a second. */
const mostLines = 100;

/** The same list, held to what one table of estimates works out at once. */
export function linesOfTable<Item, const Name extends string>(
  lines: Argument<readonly Item[], Name>,
): Argument<readonly Item[], Name> {
  return {
    ...lines,
    help: `${lines.help}; at most ${String(mostLines)}`,
    read: (input, call) => {
      const read = lines.read(input, call);
      return read.length <= mostLines
        ? read
        : refuse(
            lines.name,
            `are ${String(read.length)}, and one table takes at most ${String(mostLines)}: split them.`,
          );
    },
  };
}

/** A plain number in a list. */
export function numberOf(name: string): (cell: CellValue) => number {
  return (cell) => numberFrom(oneOfThe(name), cell);
}
