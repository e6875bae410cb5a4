/** The program `bathsheet`. */
import { version } from "../../package.json";
import type { Surroundings } from "./command.ts";
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
};

// A reader that has seen enough, such as `head`, closes the pipe.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

process.exitCode = await run(process.argv.slice(2), version, around);
progress("");
