import * as z from "zod/mini";

import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { Cells, InputColumn, RowValue } from "../../joblog/model/definition.ts";
import { readInput } from "../controls/read-input.ts";
import { limitColumn, limitIds } from "./limit-fields.ts";
import { crossed } from "./limits-form.ts";
import { fileKind, type FileTable, fileTables, fileVersion } from "./shop-file.ts";
import { inputsOf, keyColumn, tableWords } from "./shop-tables.ts";

/** What a file holds for this log, or every reason why it is refused. */
export type ShopFileReading =
  | { readonly read: "shop"; readonly limits: Cells; readonly tables: Readonly<Record<FileTable, readonly Cells[]>> }
  | { readonly read: "refused"; readonly problems: readonly string[] };

/** Far more than any shop's lists; a larger file is something else. */
export const largestFile = 1_000_000;

const fileName = "Shop defaults";
const foreign = "This is no file of shop defaults. Choose one that was saved here.";
const damaged = "The file is damaged: its limits or its lists are missing.";

/** Looked at first, and in this order: the rest of a file of another kind says nothing. */
const headOf = (system: UnitSystem) =>
  z.object(
    {
      kind: z.literal(fileKind, foreign),
      version: z.literal(fileVersion, {
        error: ({ input }) =>
          `The file is of version ${String(input)}, and this Bathsheet reads version ${String(fileVersion)}.`,
      }),
      units: z.literal(system, {
        error: ({ input }) =>
          `The file is in ${String(input)} units and this log in ${system} units. Save it from a log in the same units.`,
      }),
      limits: z.looseObject({}, damaged),
      tables: z.looseObject({}, damaged),
    },
    foreign,
  );

/** A value as a form would read it, so that a file can hold nothing that a form would refuse. */
function valueOf(
  column: InputColumn,
  system: UnitSystem,
  given: string,
): { readonly value?: RowValue } | { readonly problem: string } {
  const reading = readInput(column, system, given, "log");
  const { label, choices, required } = column;
  if (reading.read === "problem") return { problem: reading.message };
  if (reading.read === "blank") return required ? { problem: `${label}: missing.` } : {};
  if (choices?.kind !== "fixed" || choices.choices.includes(String(reading.value))) return reading;
  return { problem: `${label}: "${String(reading.value)}" is not one of ${choices.choices.join(", ")}.` };
}

/** A cell; whatever is wrong with it is said after the column's label. */
function cell(column: InputColumn, system: UnitSystem) {
  const { label, required } = column;
  const written = z.union([z.number(), z.string()], {
    error: ({ input }) => (input === undefined ? `${label}: missing.` : `${label}: neither a number nor text.`),
  });
  const read = z.pipe(
    written,
    z.transform((given, { issues }): RowValue | undefined => {
      const reading = valueOf(column, system, String(given));
      if (!("problem" in reading)) return reading.value;
      issues.push({ code: "custom", message: reading.problem, input: given });
      return undefined;
    }),
  );
  return required ? read : z.optional(read);
}

const cells = (columns: readonly InputColumn[], system: UnitSystem) =>
  z.strictObject(Object.fromEntries(columns.map((column) => [column.id, cell(column, system)])), {
    error: ({ code }) => (code === "invalid_type" ? "no entry." : undefined),
  });

const isEntry = (value: unknown): boolean => typeof value === "object" && value !== null;

/** Limits that cross are named even where another limit is at fault. */
const limitCells = (system: UnitSystem) =>
  cells(limitIds.map(limitColumn), system).check(
    z.superRefine(
      (limits, found) => {
        for (const { message } of crossed((id) => {
          const value = limits[id];
          return typeof value === "number" ? value : undefined;
        }))
          found.addIssue(message);
      },
      { when: ({ value }) => isEntry(value) },
    ),
  );

/** The rows of a list; a name that stands twice is told even where a cell is at fault. */
function rowsOf(table: FileTable, system: UnitSystem) {
  const { all, one } = tableWords[table];
  const key = keyColumn(table).id;
  return z.array(cells(inputsOf(table), system), `${all}: no list.`).check(
    z.superRefine(
      (rows, found) => {
        const names = rows.map((row) => String(row[key] ?? "").toLowerCase());
        const again = rows.filter((_, index) => names[index] !== "" && names.indexOf(names[index] ?? "") < index);
        for (const name of new Set(again.map((row) => String(row[key]))))
          found.addIssue(`${one} ${name}: is listed twice.`);
      },
      { when: ({ value }) => Array.isArray(value) && value.every(isEntry) },
    ),
  );
}

const bodyOf = (system: UnitSystem) =>
  z.object({
    limits: limitCells(system),
    tables: z.object({
      tanks: rowsOf("tanks", system),
      waters: rowsOf("waters", system),
      concentrates: rowsOf("concentrates", system),
      people: rowsOf("people", system),
      // Files of before there was such a list are read as well.
      keepOutWords: z.prefault(rowsOf("keepOutWords", system), []),
    }),
  });

type Issue = z.core.$ZodIssue;

/** Where in the file a fault is, as a shop says it: "tank T1", or "tank 2" where the row has no name. */
function placeOf([part, table, index]: Issue["path"], tables: Readonly<Record<string, unknown>>): string {
  if (part === "limits") return `${fileName}, limits`;
  const found = fileTables.find((one) => one === table);
  if (found === undefined || typeof index !== "number") return fileName;
  const key = keyColumn(found).id;
  const named = z.array(z.unknown()).safeParse(tables[found]).data?.[index];
  const name = z.looseObject({ [key]: z.string().check(z.minLength(1)) }).safeParse(named).data?.[key];
  return `${fileName}, ${tableWords[found].one} ${String(name ?? index + 1)}`;
}

function words(issue: Issue, tables: Readonly<Record<string, unknown>>): readonly string[] {
  const place = placeOf(issue.path, tables);
  if (issue.code === "unrecognized_keys") return issue.keys.map((id) => `${place}: "${id}" is not known.`);
  return [`${place}${issue.message === "no entry." ? ":" : ","} ${issue.message}`];
}

function refused(...problems: readonly string[]): ShopFileReading {
  return { read: "refused", problems };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Reads a file of shop defaults for a log of that unit system. One fault refuses the whole file; all faults are named. */
export function readShopFile(text: string, system: UnitSystem): ShopFileReading {
  if (text.length > largestFile) return refused("The file is too large to be a file of shop defaults.");
  const given = parsed(text);
  const head = headOf(system).safeParse(given);
  if (!head.success) return refused(head.error.issues[0]?.message ?? foreign);
  const body = bodyOf(system).safeParse(given);
  return body.success
    ? { read: "shop", ...body.data }
    : refused(...body.error.issues.flatMap((issue) => words(issue, head.data.tables)));
}
