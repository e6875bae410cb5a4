import { readdirSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";

import type { WorksheetFunction } from "../../functions/define-function.ts";
import type { Reference } from "../../functions/reference/reference.ts";
import { projectFolder } from "../project.ts";

/** What a file of functions/ exports that the catalogue is about. */
export interface DefinitionFile {
  /** Below functions/, without `.ts`, as help-order.ts lists it. */
  readonly file: string;
  /** By the name of its export. */
  readonly functions: ReadonlyMap<string, WorksheetFunction>;
  readonly references: ReadonlyMap<string, Reference>;
}

const has = (value: unknown, ...members: readonly string[]): boolean =>
  typeof value === "object" && value !== null && members.every((member) => member in value);

const isFunction = (entry: [string, unknown]): entry is [string, WorksheetFunction] =>
  has(entry[1], "compute", "examples");

const isReference = (entry: [string, unknown]): entry is [string, Reference] =>
  has(entry[1], "symbols", "where", "source", "cautions");

/** Every file in the folders of functions/ that exports a function or a reference. */
export async function definitionFiles(): Promise<readonly DefinitionFile[]> {
  const folder = path.join(projectFolder, "functions");
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts") && path.dirname(file) !== ".")
    .sort();
  const read = await Promise.all(
    files.map(async (file): Promise<DefinitionFile> => {
      const exported: unknown = await import(pathToFileURL(path.join(folder, file)).href);
      const entries: [string, unknown][] =
        typeof exported === "object" && exported !== null ? Object.entries(exported) : [];
      return {
        file: file.replaceAll(path.sep, "/").replace(/\.ts$/, ""),
        functions: new Map(entries.filter(isFunction)),
        references: new Map(entries.filter(isReference)),
      };
    }),
  );
  return read.filter(({ functions, references }) => functions.size + references.size > 0);
}
