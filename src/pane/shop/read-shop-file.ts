import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { InputColumn, LogRow, RowValue } from "../../joblog/definition.ts";
import { readInput } from "../fields/read-input.ts";
import { limitColumn, limitIds } from "./limit-fields.ts";
import { crossed } from "./limits-form.ts";
import { fileKind, fileTables, fileVersion, type FileTable } from "./shop-file.ts";
import { inputsOf, keyColumn, tableWords } from "./shop-tables.ts";

/** What a file holds for this log, or every reason why it is refused. */
export type ShopFileReading =
  | { readonly read: "shop"; readonly limits: LogRow; readonly tables: Readonly<Record<FileTable, readonly LogRow[]>> }
  | { readonly read: "refused"; readonly problems: readonly string[] };

/** Far more than any shop's lists; a larger file is something else. */
export const largestFile = 1_000_000;

type Things = Readonly<Record<string, unknown>>;

const isThings = (value: unknown): value is Things => typeof value === "object" && value !== null && !Array.isArray(value);

/** A value as a form would read it, so that a file can hold nothing that a form would refuse. */
function readValue(column: InputColumn, system: UnitSystem, where: string, given: unknown, problems: string[]): RowValue | undefined {
  if (typeof given !== "number" && typeof given !== "string") {
    problems.push(`${where}, ${column.label}: neither a number nor text.`);
    return undefined;
  }
  if (typeof given === "number" && (column.type === "text" || column.type === "choice" || column.type === "date")) return readValue(column, system, where, String(given), problems);
  const reading = readInput(column, system, String(given));
  const { choices } = column;
  if (reading.read === "problem") problems.push(`${where}, ${reading.message}`);
  else if (reading.read === "value" && choices?.kind === "fixed" && !choices.choices.includes(String(reading.value))) {
    problems.push(`${where}, ${column.label}: "${String(reading.value)}" is not one of ${choices.choices.join(", ")}.`);
  } else if (reading.read === "value") return reading.value;
  return undefined;
}

function readCells(columns: readonly InputColumn[], system: UnitSystem, where: string, given: Things, problems: string[]): LogRow {
  const unknown = Object.keys(given).filter((id) => !columns.some((column) => column.id === id));
  problems.push(...unknown.map((id) => `${where}: "${id}" is not known.`));
  return Object.fromEntries(columns.flatMap((column) => {
    const value = given[column.id] === undefined ? undefined : readValue(column, system, where, given[column.id], problems);
    return value === undefined ? [] : [[column.id, value] as const];
  }));
}

function readRows(table: FileTable, system: UnitSystem, given: unknown, problems: string[]): readonly LogRow[] {
  const { all, one } = tableWords[table];
  if (!Array.isArray(given)) {
    problems.push(`${all}: no list.`);
    return [];
  }
  const columns = inputsOf(table);
  const key = keyColumn(table).id;
  const rows = given.map((row: unknown, index): LogRow => {
    const where = `${one} ${isThings(row) && typeof row[key] === "string" ? row[key] : String(index + 1)}`;
    if (!isThings(row)) {
      problems.push(`${where}: no entry.`);
      return {};
    }
    const missing = columns.filter(({ id, required }) => required && (row[id] === undefined || row[id] === ""));
    problems.push(...missing.map(({ label }) => `${where}, ${label}: missing.`));
    return readCells(columns, system, where, row, problems);
  });
  const names = rows.map((row) => String(row[key] ?? "").toLowerCase());
  problems.push(...new Set(rows.flatMap((row, index) => (names.indexOf(names[index] ?? "") < index && names[index] !== "" ? [`${one} ${String(row[key])}: stands twice.`] : []))));
  return rows;
}

function refused(...problems: readonly string[]): ShopFileReading {
  return { read: "refused", problems };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

/** Reads a file of shop defaults for a log of that unit system. One fault refuses the whole file; all faults are named. */
export function readShopFile(text: string, system: UnitSystem): ShopFileReading {
  if (text.length > largestFile) return refused("The file is too large to be a file of shop defaults.");
  const given = parsed(text);
  if (!isThings(given) || given["kind"] !== fileKind) return refused("This is no file of shop defaults. Choose one that was saved here.");
  if (given["version"] !== fileVersion) return refused(`The file is of version ${String(given["version"])}, and this Bathsheet reads version ${String(fileVersion)}.`);
  if (given["units"] !== system) return refused(`The file is in ${String(given["units"])} units and this log in ${system} units. Save it from a log in the same units.`);
  const { limits, tables } = given;
  if (!isThings(limits) || !isThings(tables)) return refused("The file is damaged: its limits or its lists are missing.");
  const problems: string[] = [];
  const values = readCells(limitIds.map(limitColumn), system, "Limits", limits, problems);
  problems.push(...crossed((id) => { const value = values[id]; return typeof value === "number" ? value : undefined; }).map(({ message }) => `Limits, ${message}`));
  const [tanks = [], waters = [], concentrates = [], people = []] = fileTables.map((table) => readRows(table, system, tables[table], problems));
  return problems.length > 0 ? refused(...problems) : { read: "shop", limits: values, tables: { tanks, waters, concentrates, people } };
}
