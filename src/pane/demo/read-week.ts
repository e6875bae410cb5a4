import * as z from "zod/mini";

import { LogProblem } from "../../excel/office-problems.ts";
import { jobLog } from "../../joblog/job-log.ts";
import type { ColumnDefinition, FieldDefinition, LogContent, TableDefinition } from "../../joblog/model/definition.ts";

const words = ["text", "choice", "yes or no"];

const valueOf = ({ type }: Pick<ColumnDefinition | FieldDefinition, "type">) =>
  z.optional(
    words.includes(type)
      ? z.union([z.string(), z.number(), z.boolean()], "neither text nor a number.")
      : z.number("not a number."),
  );

const rowsOf = ({ columns }: TableDefinition) =>
  z.optional(
    z.array(
      z.strictObject(
        Object.fromEntries(
          columns.filter(({ role }) => role === "input").map((column) => [column.id, valueOf(column)]),
        ),
        "no row.",
      ),
      "no list of rows.",
    ),
  );

const fields = jobLog.sheets.flatMap((sheet) => sheet.fields);
const tables = jobLog.sheets.flatMap((sheet) => sheet.tables);

const week = () =>
  z.strictObject(
    {
      fields: z.strictObject(
        Object.fromEntries(
          fields.filter(({ formula }) => formula === undefined).map((field) => [field.id, valueOf(field)]),
        ),
        "its named cells are missing.",
      ),
      rows: z.strictObject(
        Object.fromEntries(tables.map((table) => [table.id, rowsOf(table)])),
        "its tables are missing.",
      ),
    },
    "it cannot be read.",
  );

const wordsFor = (issue: z.core.$ZodIssue): string =>
  issue.code === "unrecognized_keys"
    ? `${issue.keys.map((key) => `"${key}"`).join(", ")} is not known.`
    : issue.message;

/** "Readings, row 3, pH as read: not a number." */
function faultOf(issue: z.core.$ZodIssue): string {
  const [part, id, row, column] = issue.path;
  const table = part === "rows" ? tables.find((one) => one.id === id) : undefined;
  const label =
    table === undefined
      ? fields.find((one) => one.id === id)?.label
      : table.columns.find((one) => one.id === column)?.label;
  const place = [table?.name, typeof row === "number" ? `row ${String(row + 1)}` : undefined, label].filter(
    (one) => one !== undefined,
  );
  return `${place.length === 0 ? "The file" : place.join(", ")}: ${wordsFor(issue)}`;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** The file of what was typed in the invented week. Throws a LogProblem where it is not what this log takes. */
export function readWeek(text: string): LogContent {
  const reading = week().safeParse(parsed(text));
  if (reading.success) return reading.data;
  const [first] = reading.error.issues;
  throw new LogProblem({
    what: `The invented week came damaged. ${first === undefined ? "" : faultOf(first)} Nothing was written.`,
    remedy: "Close the pane and open it again, so that all of its files are of one version.",
  });
}
