import type { Surroundings } from "../../../src/command-line/command.ts";
import { run } from "../../../src/command-line/run.ts";

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly said: readonly string[];
  readonly written: ReadonlyMap<string, Uint8Array>;
}

/** Runs a command line on files that stand in memory alone. */
export async function runCommand(
  args: readonly string[],
  files: Readonly<Record<string, Uint8Array | string>> = {},
): Promise<Ran> {
  let out = "";
  const said: string[] = [];
  const written = new Map<string, Uint8Array>();
  const around: Surroundings = {
    out: (text) => {
      out += text;
    },
    say: (line) => {
      said.push(line);
    },
    progress: () => undefined,
    readFile: (path) => {
      const content = files[path];
      if (content === undefined) throw new RangeError(`The test has no file ${path}.`);
      return Promise.resolve(typeof content === "string" ? new TextEncoder().encode(content) : content);
    },
    listFiles: (folder) =>
      Promise.resolve(
        Object.keys(files)
          .filter((path) => path.startsWith(`${folder}/`))
          .sort(),
      ),
    isSameFile: (one, other) => one === other,
    writeFile: (path, content) => {
      written.set(path, content);
      return Promise.resolve();
    },
  };
  return { code: await run(args, "0.0.0", around), out, said, written };
}
