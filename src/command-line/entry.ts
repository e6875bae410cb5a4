/** The program `bathsheet`. */
import { readFile } from "node:fs/promises";
import path from "node:path";
import { setImmediate } from "node:timers/promises";

import { version } from "../../package.json";
import type { Surroundings } from "./command.ts";
import { Cancelled } from "./failure.ts";
import { fileAccess } from "./files.ts";
import { run } from "./run.ts";

let shown = "";

/** One line that is written over; gone before anything else is said. */
function progress(line: string): void {
  if (!process.stderr.isTTY) return;
  const text = line === "" ? "" : `${line} …`;
  process.stderr.write(`\r${text.padEnd(shown.length)}${text === "" ? "\r" : ""}`);
  shown = text;
}

let isCancelled = false;
let isWatching = false;

/** From the first question on, Ctrl-C waits for the next one; a second Ctrl-C ends the program at once. */
async function requireGoingOn(): Promise<void> {
  if (!isWatching) {
    isWatching = true;
    process.once("SIGINT", () => {
      isCancelled = true;
    });
  }
  await setImmediate();
  if (isCancelled) throw new Cancelled();
}

const around: Surroundings = {
  ...fileAccess,
  out: (text) => {
    progress("");
    process.stdout.write(text);
  },
  say: (line) => {
    progress("");
    process.stderr.write(`bathsheet: ${line}\n`);
  },
  progress,
  queryText: (name) => readFile(path.join(import.meta.dirname, "figures", `${name}.sql`), "utf8"),
  requireGoingOn,
};

// A reader that has seen enough, such as `head`, closes the pipe.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

process.exitCode = await run(process.argv.slice(2), version, around);
progress("");
