import type * as z from "zod";

import { nearestWord } from "../../core/text/nearest-word.ts";
import type { LogContent, RowValue } from "../../joblog/model/definition.ts";
import { type Entry, limitFault } from "./cell-schema.ts";
import { inputsOf, type Job, jobSchema, typedFields, typedTables } from "./job-schema.ts";
import { isMoment, serialIn } from "./moments.ts";

/** A job, or what is wrong with it, each in a sentence that begins with the place. */
export type JobReading = { readonly job: Job } | { readonly faults: readonly string[] };

/** "Readings, row 3, pH as read". */
function placeOf([part, id, row, column]: readonly PropertyKey[]): string {
  const table = part === "rows" ? typedTables.find((one) => one.id === id) : undefined;
  const entry: Entry | undefined =
    table === undefined ? typedFields.find((one) => one.id === id) : inputsOf(table).find((one) => one.id === column);
  const named = [
    table?.name ?? (entry === undefined ? id : undefined),
    typeof row === "number" ? `row ${String(row + 1)}` : undefined,
    entry?.label ?? column,
  ].filter((one) => one !== undefined);
  if (named.length > 0) return named.map(String).join(", ");
  return part === undefined ? "The job" : String(part);
}

/** Ids that would have been known where an unknown one stands. */
function knownAt([part, id]: readonly PropertyKey[]): readonly string[] {
  if (part === "fields") return typedFields.map((one) => one.id);
  if (part !== "rows") return ["log", "system", "fields", "rows"];
  const table = typedTables.find((one) => one.id === id);
  return table === undefined ? typedTables.map((one) => one.id) : inputsOf(table).map((one) => one.id);
}

function unknownIn({ keys, path }: z.core.$ZodIssueUnrecognizedKeys): readonly string[] {
  return keys.map((key) => {
    const nearest = nearestWord(key, knownAt(path));
    return `${placeOf(path)}: "${key}" is not known${nearest === undefined ? "" : `; "${nearest}" is the nearest`}.`;
  });
}

const faultsOf = (issue: z.core.$ZodIssue): readonly string[] =>
  issue.code === "unrecognized_keys" ? unknownIn(issue) : [`${placeOf(issue.path)}: ${issue.message}`];

function limitFaults(job: Job): readonly string[] {
  const faults: string[] = [];
  const look = (entry: Entry, value: unknown, path: readonly PropertyKey[]): void => {
    const fault = limitFault(entry, value, job.system);
    if (fault !== undefined) faults.push(`${placeOf(path)}: ${fault}`);
  };
  for (const field of typedFields) look(field, job.fields?.[field.id], ["fields", field.id]);
  for (const table of typedTables)
    for (const [row, cells] of (job.rows?.[table.id] ?? []).entries())
      for (const column of inputsOf(table)) look(column, cells[column.id], ["rows", table.id, row, column.id]);
  return faults;
}

/** Reads the text of a job. */
export function readJob(text: string): JobReading {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (error) {
    const why = error instanceof Error ? error.message.replace(/\.$/, "") : "it is cut short";
    return { faults: [`The job: not JSON (${why}).`] };
  }
  const reading = jobSchema().safeParse(parsed);
  if (!reading.success) return { faults: reading.error.issues.flatMap(faultsOf) };
  const faults = limitFaults(reading.data);
  return faults.length === 0 ? { job: reading.data } : { faults };
}

function valueOf({ type }: Entry, value: RowValue | undefined): RowValue | undefined {
  return typeof value === "string" && isMoment(type) ? serialIn(value) : value;
}

/** What a log of the job is filled with; a cleared named cell is "", which a cell cannot otherwise hold. */
export function contentOfJob({ fields = {}, rows = {} }: Job): LogContent {
  return {
    fields: Object.fromEntries(
      typedFields.flatMap((field) => {
        const value = fields[field.id];
        return value === undefined ? [] : [[field.id, value === null ? "" : valueOf(field, value)]];
      }),
    ),
    rows: Object.fromEntries(
      typedTables.flatMap((table) => {
        const lines = rows[table.id];
        if (lines === undefined) return [];
        const columns = inputsOf(table);
        return [
          [
            table.id,
            lines.map((cells) =>
              Object.fromEntries(columns.map((column) => [column.id, valueOf(column, cells[column.id])])),
            ),
          ],
        ];
      }),
    ),
  };
}

/** Needed cells that a row leaves blank; a log takes such rows, and its figures say what they wait for. */
export function blanksIn({ rows = {} }: Job): readonly string[] {
  return typedTables.flatMap((table) =>
    (rows[table.id] ?? []).flatMap((cells, row) =>
      inputsOf(table)
        .filter(({ id, required }) => required && cells[id] === undefined)
        .map((column) => `${placeOf(["rows", table.id, row, column.id])}: left blank.`),
    ),
  );
}
