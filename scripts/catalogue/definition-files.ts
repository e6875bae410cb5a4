import { readdirSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";

import type { WorksheetFunction } from "../../functions/define-function.ts";
import type { Reference } from "../../functions/reference/reference.ts";
import { projectFolder } from "../project.ts";

/** What a file of functions/ and the reference beside it export. */
export interface DefinitionFile {
  /** Below functions/, without `.ts`, as help-order.ts lists it. */
  readonly file: string;
  /** By the name of its export. */
  readonly functions: ReadonlyMap<string, WorksheetFunction>;
  /** From `<file>.reference.ts`, by the name of its export. */
  readonly references: ReadonlyMap<string, Reference>;
}

const has = (value: unknown, ...members: readonly string[]): boolean =>
  typeof value === "object" && value !== null && members.every((member) => member in value);

const isFunction = (entry: [string, unknown]): entry is [string, WorksheetFunction] =>
  has(entry[1], "compute", "examples");

const isReference = (entry: [string, unknown]): entry is [string, Reference] =>
  has(entry[1], "symbols", "where", "source", "cautions");

async function exportsOf(file: string): Promise<[string, unknown][]> {
  const exported: unknown = await import(pathToFileURL(file).href);
  return typeof exported === "object" && exported !== null ? Object.entries(exported) : [];
}

/** Every file in the folders of functions/ that defines a function, with the reference beside it, and every lone reference. */
export async function definitionFiles(): Promise<readonly DefinitionFile[]> {
  const folder = path.join(projectFolder, "functions");
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter(
    (file) => file.endsWith(".ts") && path.dirname(file) !== ".",
  );
  const stems = [...new Set(files.map((file) => file.replace(/(?:\.reference)?\.ts$/, "")))].sort();
  const exportsFrom = async (file: string): Promise<[string, unknown][]> =>
    files.includes(file) ? exportsOf(path.join(folder, file)) : [];
  const read = await Promise.all(
    stems.map(async (stem): Promise<DefinitionFile> => ({
      file: stem.replaceAll(path.sep, "/"),
      functions: new Map((await exportsFrom(`${stem}.ts`)).filter(isFunction)),
      references: new Map((await exportsFrom(`${stem}.reference.ts`)).filter(isReference)),
    })),
  );
  return read.filter(({ functions, references }) => functions.size + references.size > 0);
}
