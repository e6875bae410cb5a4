import { readFile } from "node:fs/promises";
import path from "node:path";

import { projectFolder } from "../../../scripts/project.ts";
import type { Surroundings } from "../../../src/command-line/command.ts";
import { Cancelled } from "../../../src/command-line/failure.ts";
import { fileAccess } from "../../../src/command-line/files.ts";
import { run } from "../../../src/command-line/run.ts";

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly said: readonly string[];
  readonly written: ReadonlyMap<string, Uint8Array>;
}

const queries = path.join(projectFolder, "src", "command-line", "rollup", "figures");

/** Runs a command line on files that stand in memory alone; `goOn` says how often the person lets it go on. */
export async function runCommand(
  args: readonly string[],
  files: Readonly<Record<string, Uint8Array | string>> = {},
  goOn = Number.POSITIVE_INFINITY,
): Promise<Ran> {
  let out = "";
  const said: string[] = [];
  const written = new Map<string, Uint8Array>();
  let asked = 0;
  const around: Surroundings = {
    out: (text) => {
      out += text;
    },
    say: (line) => {
      said.push(line);
    },
    progress: () => undefined,
    readFile: (file) => {
      const content = files[file];
      if (content === undefined) throw new RangeError(`The test has no file ${file}.`);
      return Promise.resolve(typeof content === "string" ? new TextEncoder().encode(content) : content);
    },
    listFiles: (folder) =>
      Promise.resolve(
        Object.keys(files)
          .filter((file) => file.startsWith(`${folder}/`))
          .sort(),
      ),
    isSameFile: (one, other) => one === other,
    writeFile: (file, content) => {
      written.set(file, content);
      return Promise.resolve();
    },
    writeFolder: (folder, content) => {
      for (const file of content) written.set(`${folder}/${file.path}`, file.content);
      return Promise.resolve();
    },
    temporaryFolder: fileAccess.temporaryFolder,
    queryText: (name) => readFile(path.join(queries, `${name}.sql`), "utf8"),
    requireGoingOn: () => {
      asked += 1;
      return asked > goOn ? Promise.reject(new Cancelled()) : Promise.resolve();
    },
  };
  return { code: await run(args, "0.0.0", around), out, said, written };
}
