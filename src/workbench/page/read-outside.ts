/** What reaches the page from outside: its address, and the files that the build put beside it. */
import * as z from "zod/mini";

import type { FunctionsMetadata } from "../host/functions/metadata.ts";
import type { Lateness } from "../host/workbook/answers.ts";
import type { Start } from "./keep/opening.ts";

/** The start that an address asks for: a kept log by its id, or a new one; undefined where it asks for none. */
export function startOf(search: string): Start {
  const given = new URLSearchParams(search);
  const log = given.get("log");
  if (log !== null) return { log };
  const fresh = z.enum(["demo", "empty"]).safeParse(given.get("start"));
  return fresh.success ? { fresh: fresh.data } : undefined;
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
function damaged(file: string, { path }: z.core.$ZodIssue): RangeError {
  const place = path.map((part) => (typeof part === "number" ? String(part + 1) : String(part))).join(", ");
  return new RangeError(place === "" ? `${file} is damaged.` : `${file} is damaged at ${place}.`);
}

function read<Content>(schema: z.ZodMiniType<Content>, file: string, given: unknown): Content {
  const reading = schema.safeParse(given);
  if (reading.success) return reading.data;
  const [first] = reading.error.issues;
  throw first === undefined ? new RangeError(`${file} is damaged.`) : damaged(file, first);
}

/** Throws a RangeError that says where the description of the functions is none. */
export const readFunctions = (given: unknown): FunctionsMetadata => read(functions, "functions.json", given);
