import type { UnitSystem } from "../../core/units/unit-system.ts";
import { ownLogIn } from "../../files/read/own-log.ts";
import { readArea, splitSheet } from "../../files/read/read-address.ts";
import type { ReadWorkbook } from "../../files/read/reading.ts";
import { jobLog } from "../../joblog/job-log.ts";
import { columnLetters } from "../../joblog/layout/addresses.ts";
import type { FieldDefinition, InputColumn, RowValue, TableDefinition } from "../../joblog/model/definition.ts";
import { headerOf } from "../../joblog/model/headers.ts";
import type { SheetState, StateValue } from "../../state/workbook-state.ts";
import { CommandFailure } from "../failure.ts";
import { type Entry, entrySchema, limitFault } from "./cell-schema.ts";
import { inputsOf, type Job, typedFields, typedTables } from "./job-schema.ts";
import { isMoment, momentText } from "./moments.ts";

/** A cell that holds something else than the log takes. */
interface Exception {
  readonly sheet: string;
  /** As Excel counts it, such as `E12`. */
  readonly cell: string;
  readonly reason: string;
}

export interface LogInFile {
  readonly job: Job;
  /** The sheet's row of each of the job's rows, as Excel counts it, by table. */
  readonly sheetRows: SheetRows;
  readonly exceptions: readonly Exception[];
  /** Sheets that are none of the log's, whose content a job does not hold. */
  readonly otherSheets: readonly string[];
}

export type SheetRows = ReadonlyMap<string, readonly number[]>;

type Cells = ReadonlyMap<number, StateValue>;

/** A sheet as far as a log's typed cells need it. */
export interface TypedSheet {
  readonly name: string;
  readonly tables: readonly { readonly name: string; readonly area: string; readonly totalsRow: boolean }[];
  /** What cells show, by `cellKey`. */
  readonly cells: Cells;
}

export interface TypedBook {
  readonly names: readonly { readonly name: string; readonly refersTo: string }[];
  /** Those on which something of a log stands. */
  readonly sheets: readonly TypedSheet[];
  readonly sheetNames: readonly string[];
}

/** Excel's own number of columns. */
const mostColumns = 16_384;

export const cellKey = (row: number, column: number): number => row * mostColumns + column;

const sameName = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

/** What the cells of a sheet show: what is typed, and what the file gives beside formulas. */
function cellsOf(sheet: SheetState, values: readonly (StateValue | null)[] = []): Cells {
  const cells = new Map<number, StateValue>();
  for (const [row, column, , value] of sheet.typed) cells.set(cellKey(row, column), value);
  sheet.worked.forEach(([row, column], index) => {
    const value = values[index] ?? null;
    if (value !== null && value !== "") cells.set(cellKey(row, column), value);
  });
  return cells;
}

/** The same of a workbook that was read whole. */
export function typedBookOf({ state, values }: ReadWorkbook): TypedBook {
  return {
    names: state.book.names,
    sheets: state.sheets.map((sheet) => ({
      name: sheet.name,
      tables: sheet.tables,
      cells: cellsOf(sheet, values[sheet.id]),
    })),
    sheetNames: state.sheets.map(({ name }) => name),
  };
}

class LogReader {
  readonly exceptions: Exception[] = [];
  readonly sheetRows = new Map<string, readonly number[]>();

  constructor(
    private readonly book: TypedBook,
    private readonly system: UnitSystem,
  ) {}

  private entryAt(entry: Entry, sheet: TypedSheet, row: number, column: number): RowValue | undefined {
    const value = sheet.cells.get(cellKey(row, column));
    if (value === undefined) return undefined;
    const except = (reason: string): void => {
      this.exceptions.push({
        sheet: sheet.name,
        cell: `${columnLetters(column)}${String(row + 1)}`,
        reason: `${entry.label} is ${JSON.stringify(value)}, ${reason}`,
      });
    };
    if (typeof value === "object") {
      this.exceptions.push({
        sheet: sheet.name,
        cell: `${columnLetters(column)}${String(row + 1)}`,
        reason: `${entry.label} shows the error ${value.error} and is left out.`,
      });
      return undefined;
    }
    const reading = entrySchema(entry).safeParse(value);
    const fault = reading.success ? limitFault(entry, value, this.system) : reading.error.issues[0]?.message;
    if (fault !== undefined) except(fault);
    return typeof value === "number" && isMoment(entry.type) ? momentText(value) : value;
  }

  /** undefined for a cell that is blank. */
  field(field: FieldDefinition): RowValue | undefined {
    const named = this.book.names.find(({ name }) => sameName(name, field.name));
    const { sheet: on, local } = splitSheet(named?.refersTo ?? "");
    const area = readArea(local);
    const sheet = this.book.sheets.find(({ name }) => sameName(name, on ?? ""));
    if (area === undefined || sheet === undefined)
      throw new CommandFailure(
        `the log is damaged: the named cell ${field.name} ("${field.label}") is missing or renamed.`,
      );
    return this.entryAt(field, sheet, area.row, area.column);
  }

  rows(table: TableDefinition): readonly Readonly<Record<string, RowValue>>[] {
    const sheet = this.book.sheets.find(({ tables }) => tables.some(({ name }) => sameName(name, table.name)));
    const found = sheet?.tables.find(({ name }) => sameName(name, table.name));
    const area = readArea(found?.area ?? "");
    if (sheet === undefined || found === undefined || area === undefined)
      throw new CommandFailure(`the log is damaged: the table ${table.name} is missing or renamed.`);
    const places = inputsOf(table).map((column) => ({ column, at: this.placeOf(column, sheet, area, table) }));
    const last = area.row + area.rows - (found.totalsRow ? 1 : 0);
    const rows: Readonly<Record<string, RowValue>>[] = [];
    const sheetRows: number[] = [];
    for (let row = area.row + 1; row < last; row += 1) {
      const cells: Record<string, RowValue> = {};
      for (const { column, at } of places) {
        const value = this.entryAt(column, sheet, row, at);
        if (value !== undefined) cells[column.id] = value;
      }
      if (Object.keys(cells).length === 0) continue;
      rows.push(cells);
      sheetRows.push(row + 1);
    }
    this.sheetRows.set(table.id, sheetRows);
    return rows;
  }

  private placeOf(
    column: InputColumn,
    sheet: TypedSheet,
    area: { readonly row: number; readonly column: number; readonly columns: number },
    table: TableDefinition,
  ): number {
    const header = headerOf(column, this.system);
    for (let at = area.column; at < area.column + area.columns; at += 1)
      if (sheet.cells.get(cellKey(area.row, at)) === header) return at;
    throw new CommandFailure(
      `the log is damaged: the column "${header}" of table ${table.name} (sheet ${sheet.name}, row ${String(area.row + 1)}) is missing or renamed.`,
    );
  }
}

/** Throws CommandFailure where the workbook is no log of this version. */
function requireOwnLog({ names, sheets }: TypedBook): UnitSystem {
  const own = ownLogIn({
    names,
    valueAt: (on, row, column) => sheets.find(({ name }) => sameName(name, on ?? ""))?.cells.get(cellKey(row, column)),
  });
  if (own === undefined) throw new CommandFailure("the workbook is no Bathsheet log.");
  if (own.version < jobLog.version)
    throw new CommandFailure(
      `the log is of version ${String(own.version)}, and version ${String(jobLog.version)} is read here; upgrade it in the add-in first.`,
    );
  if (own.version > jobLog.version)
    throw new CommandFailure(
      `the log is of version ${String(own.version)}, and this Bathsheet reads none later than version ${String(jobLog.version)}; get the newest one.`,
    );
  return own.system;
}

/** What is typed into the log that was read from a file. Throws CommandFailure where it is none that can be read. */
export function logIn(book: TypedBook): LogInFile {
  const system = requireOwnLog(book);
  const reader = new LogReader(book, system);
  const fields: Record<string, RowValue | null> = {};
  for (const field of typedFields) {
    const value = reader.field(field);
    if (value !== undefined) fields[field.id] = value;
    else if (field.initial !== undefined) fields[field.id] = null;
  }
  const rows = Object.fromEntries(typedTables.map((table) => [table.id, reader.rows(table)]));
  const own = new Set(jobLog.sheets.map(({ name }) => name.toLowerCase()));
  return {
    job: { log: jobLog.version, system, fields, rows },
    sheetRows: reader.sheetRows,
    exceptions: reader.exceptions,
    otherSheets: book.sheetNames.filter((name) => !own.has(name.toLowerCase())),
  };
}
