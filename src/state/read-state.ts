/** A state that comes from outside: a file that the build made, or what a browser kept. */
import * as z from "zod/mini";

import {
  type BookState,
  type ChartState,
  type FigureState,
  type Look,
  type SheetState,
  stateVersion,
  type WorkbookState,
} from "./workbook-state.ts";

const count = z.number().check(z.int(), z.nonnegative());
const value = z.union([z.string(), z.number(), z.boolean(), z.object({ error: z.string() })]);
const record = z.record(z.string(), z.unknown());
/** What the grid or Office.js reads with checks of its own. */
const asGiven = <Type>() => z.custom<Type>((given) => record.safeParse(given).success);

const book: z.ZodMiniType<BookState> = z.object({
  version: z.literal(stateVersion, {
    error: ({ input }) => `has version ${String(input)}; this workbench reads version ${String(stateVersion)}.`,
  }),
  order: z.array(z.string()),
  activeSheet: z.string(),
  names: z.array(
    z.object({
      name: z.string(),
      refersTo: z.string(),
      comment: z.exactOptional(z.string()),
      sheet: z.exactOptional(z.string()),
    }),
  ),
  others: z.exactOptional(record),
});

const table = z.object({
  name: z.string(),
  area: z.string(),
  style: z.string(),
  drawnAs: z.exactOptional(z.string()),
  headerRow: z.boolean(),
  totalsRow: z.boolean(),
  filterButtons: z.boolean(),
  bandedRows: z.boolean(),
  bandedColumns: z.boolean(),
  firstColumn: z.boolean(),
  lastColumn: z.boolean(),
  calculated: z.array(z.object({ header: z.string(), formula: z.string(), row: z.exactOptional(count) })),
});

const validation = z.object({
  ranges: z.array(z.string()),
  criterion: z.object({
    type: z.string(),
    values: z.array(z.string()),
    dateValue: z.exactOptional(z.string()),
    displayStyle: z.exactOptional(z.string()),
  }),
  blocks: z.boolean(),
  words: z.exactOptional(asGiven<NonNullable<SheetState["validations"][number]["words"]>>()),
});

const figure: z.ZodMiniType<FigureState> = z.object({
  row: count,
  column: count,
  offset: z.object({ x: z.number(), y: z.number() }),
  width: z.number(),
  height: z.number(),
  chart: z.exactOptional(asGiven<ChartState>()),
  other: z.exactOptional(z.object({ tag: z.string(), name: z.exactOptional(z.string()), data: z.unknown() })),
});

const sizes = z.record(
  z.string(),
  z.object({ size: z.exactOptional(z.number()), hidden: z.exactOptional(z.boolean()) }),
);

const sheet: z.ZodMiniType<SheetState> = z.object({
  id: z.string(),
  name: z.string(),
  rows: count,
  columns: count,
  formulas: z.array(z.string().check(z.startsWith("="))),
  looks: z.array(asGiven<Look>()),
  typed: z.array(z.tuple([count, count, count, value])),
  worked: z.array(z.tuple([count, count, count, count])),
  dressed: z.array(z.tuple([count, count, count])),
  kept: z.array(z.tuple([count, count, value])),
  tables: z.array(table),
  validations: z.array(validation),
  conditionalFormats: z.array(
    z.object({
      ranges: z.array(z.string()),
      rule: asGiven<SheetState["conditionalFormats"][number]["rule"]>(),
      stopIfTrue: z.exactOptional(z.boolean()),
    }),
  ),
  figures: z.array(figure),
  merges: z.array(z.string()),
  columnSizes: sizes,
  rowSizes: sizes,
  columnGroups: z.exactOptional(z.array(z.object({ first: count, last: count, folded: z.boolean() }))),
  frozen: z.object({ rows: count, columns: count }),
  gridlines: z.boolean(),
  visible: z.boolean(),
  locked: z.boolean(),
  tabColor: z.exactOptional(z.string()),
  print: asGiven<SheetState["print"]>(),
  others: z.exactOptional(record),
});

/** Places count from 1, as people do. */
function damaged({ path, message }: z.core.$ZodIssue, name: string): RangeError {
  if (path.at(-1) === "version") return new RangeError(`The saved workbook ${message}`);
  const place = [name, ...path.map((part) => (typeof part === "number" ? String(part + 1) : String(part)))]
    .filter((part) => part !== "")
    .join(", ");
  return new RangeError(place === "" ? "The saved workbook is damaged." : `The saved workbook is damaged at ${place}.`);
}

function read<Content>(schema: z.ZodMiniType<Content>, given: unknown, name = ""): Content {
  const reading = schema.safeParse(given);
  if (reading.success) return reading.data;
  const [first] = reading.error.issues;
  throw first === undefined ? new RangeError("The saved workbook is damaged.") : damaged(first, name);
}

/** Cells must stand on the sheet and name looks and formulas that it has. */
function requireCellsInPlace({ name, rows, columns, looks, formulas, ...cells }: SheetState): void {
  const refuse = (row: number, column: number): never => {
    throw new RangeError(
      `The saved workbook is damaged at sheet ${name}, row ${String(row + 1)}, column ${String(column + 1)}.`,
    );
  };
  for (const [row, column] of [...cells.typed, ...cells.worked, ...cells.dressed, ...cells.kept])
    if (row >= rows || column >= columns) refuse(row, column);
  for (const [row, column, look] of [...cells.typed, ...cells.worked, ...cells.dressed])
    if (look >= looks.length) refuse(row, column);
  for (const [row, column, , formula] of cells.worked) if (formula >= formulas.length) refuse(row, column);
}

/** Throws a RangeError that says where it is no book's state. */
export function readBook(given: unknown): BookState {
  return read(book, given);
}

/** Throws a RangeError that says where it is no sheet's state. */
export function readSheet(given: unknown): SheetState {
  const named = z.object({ name: z.string() }).safeParse(given);
  const found = read(sheet, given, named.success ? `sheet ${named.data.name}` : "a sheet");
  requireCellsInPlace(found);
  return found;
}

/** Throws a RangeError that says where it is no workbook's state. */
export function readState(given: unknown): WorkbookState {
  const { book: head, sheets } = read(z.object({ book: z.unknown(), sheets: z.array(z.unknown()) }), given);
  const found = { book: readBook(head), sheets: sheets.map(readSheet) };
  const ids = found.sheets.map(({ id }) => id);
  if (ids.length === 0 || ids.join("\n") !== found.book.order.join("\n"))
    throw new RangeError("The saved workbook is damaged: its sheets are not those that it lists.");
  return found;
}
