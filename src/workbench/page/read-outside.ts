/** What reaches the page from outside: its address, and the files that the build put beside it. */
import * as z from "zod/mini";

import type { FunctionsMetadata } from "../host/functions/metadata.ts";
import type { SavedWorkbook } from "../host/save.ts";
import type { Lateness } from "../host/workbook/answers.ts";

/** The start that an address asks for; the demo week unless it says otherwise. */
export function startOf(search: string): "demo" | "empty" {
  return z.catch(z.enum(["demo", "empty"]), "demo").parse(new URLSearchParams(search).get("start"));
}

/** The page that an address asks for in the pane: `?check` for the checks of Excel. */
export function paneOf(search: string): string {
  return new URLSearchParams(search).has("check") ? "excel-check.html" : "taskpane.html";
}

/** A pace at which a person sees the pane wait, and a test hardly does. */
const lateMs = 60;

/** How the add-in's functions answer: at once, or late as in Excel where the address asks for it. */
export function latenessOf(search: string): Lateness | undefined {
  const given = new URLSearchParams(search);
  if (given.get("answers") !== "late") return undefined;
  const seed = z.catch(z.coerce.number().check(z.int()), 1).parse(given.get("seed") ?? undefined);
  return { until: "any of them", seed, within: lateMs };
}

const pair = <Value extends z.ZodMiniType>(value: Value) => z.readonly(z.tuple([z.string(), value]));
const record = z.record(z.string(), z.unknown());
/** The grid checks its own data as it opens them. */
const gridData = z.custom<SavedWorkbook["grid"]>((value) => record.safeParse(value).success);

const calculatedColumn = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("same text"), text: z.string() }),
  z.object({ kind: z.literal("relative"), text: z.string(), row: z.number() }),
]);

const savedWorkbook: z.ZodMiniType<SavedWorkbook> = z.object({
  version: z.literal(1, { error: ({ input }) => `has version ${String(input)}; this workbench reads version 1.` }),
  grid: gridData,
  activeSheet: z.string(),
  tables: z.array(
    z.object({
      sheet: z.string(),
      at: z.string(),
      name: z.string(),
      style: z.string(),
      calculated: z.array(pair(calculatedColumn)),
    }),
  ),
  formulas: z.record(z.string(), z.record(z.string(), z.string())),
  formats: z.array(pair(z.string())),
  nameComments: z.array(pair(z.string())),
  chartNames: z.array(pair(z.string())),
  chartMinimums: z.array(pair(z.number())),
  validationWords: z.array(pair(record)),
  notes: z.array(pair(z.array(pair(z.unknown())))),
});

const parameter = z.object({
  name: z.string(),
  description: z.exactOptional(z.string()),
  type: z.exactOptional(z.string()),
  dimensionality: z.exactOptional(z.string()),
  optional: z.exactOptional(z.boolean()),
  repeating: z.exactOptional(z.boolean()),
  customEnumId: z.exactOptional(z.string()),
});

const functions: z.ZodMiniType<FunctionsMetadata> = z.object({
  functions: z.array(
    z.object({
      id: z.string(),
      name: z.string(),
      description: z.exactOptional(z.string()),
      helpUrl: z.exactOptional(z.string()),
      parameters: z.array(parameter),
      result: z.exactOptional(
        z.object({ type: z.exactOptional(z.string()), dimensionality: z.exactOptional(z.string()) }),
      ),
    }),
  ),
  enums: z.exactOptional(
    z.array(
      z.object({
        id: z.string(),
        type: z.literal("string"),
        values: z.array(z.object({ name: z.string(), stringValue: z.string(), tooltip: z.string() })),
      }),
    ),
  ),
});

/** Places count from 1, as people do. */
function damaged(file: string, { path, message }: z.core.$ZodIssue): RangeError {
  if (path[0] === "version") return new RangeError(`${file} ${message}`);
  const place = path.map((part) => (typeof part === "number" ? String(part + 1) : String(part))).join(", ");
  return new RangeError(place === "" ? `${file} is damaged.` : `${file} is damaged at ${place}.`);
}

function read<Content>(schema: z.ZodMiniType<Content>, file: string, given: unknown): Content {
  const reading = schema.safeParse(given);
  if (reading.success) return reading.data;
  const [first] = reading.error.issues;
  throw first === undefined ? new RangeError(`${file} is damaged.`) : damaged(file, first);
}

/** Throws a RangeError that says where a saved workbook is not what `saveWorkbook` gives. */
export const readSavedWorkbook = (given: unknown): SavedWorkbook => read(savedWorkbook, "The saved workbook", given);

/** Throws a RangeError that says where the description of the functions is none. */
export const readFunctions = (given: unknown): FunctionsMetadata => read(functions, "functions.json", given);
