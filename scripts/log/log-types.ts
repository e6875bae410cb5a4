import path from "node:path";

import { jobLog } from "../../src/joblog/job-log.ts";
import type { ContentType } from "../../src/joblog/model/definition.ts";
import { projectFolder } from "../project.ts";

interface Described {
  readonly id: string;
  readonly type: ContentType;
  readonly words?: readonly string[];
  readonly choices?: { readonly kind: string; readonly choices?: readonly string[] };
}

/** What a cell of that column can hold, as TypeScript writes it. */
function typeOf({ type, words, choices }: Described): string {
  const few = words ?? choices?.choices;
  if (few !== undefined) return few.map((word) => JSON.stringify(word)).join(" | ");
  return type === "text" || type === "choice" || type === "yes or no" ? "string" : "number";
}

const membersOf = (all: readonly Described[], indent: string): string =>
  all.map((one) => `${indent}readonly ${one.id}: ${typeOf(one)};`).join("\n");

export const logTypesFile = path.join(projectFolder, "src", "joblog", "formula", "log-types.ts");

/** The ids of the log's tables, columns and named cells as types, from its description. */
export function logTypes(): string {
  const tables = jobLog.sheets.flatMap((sheet) => sheet.tables);
  const fields = jobLog.sheets.flatMap((sheet) => sheet.fields);
  return [
    "// Written by `npm run describe-log` from the sheets' descriptions; never edited.",
    "",
    "/** What the cells of every column hold, by table and column id. */",
    "export interface LogTables {",
    ...tables.map(({ id, columns }) => `  readonly ${id}: {\n${membersOf(columns, "    ")}\n  };`),
    "}",
    "",
    "/** What every named cell holds, by field id. */",
    "export interface LogFields {",
    membersOf(fields, "  "),
    "}",
    "",
    "export type TableId = keyof LogTables;",
    "",
  ].join("\n");
}
