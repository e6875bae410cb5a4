import { readWorkbook } from "../../files/read/read-workbook.ts";
import { FileRefused } from "../../files/unpack.ts";
import type { Command, Given, Surroundings } from "../command.ts";
import { CommandFailure, type ExitCode, exitCodes, inOneSentence } from "../failure.ts";
import { typedFields, typedTables } from "../job/job-schema.ts";
import { logIn, type LogInFile, typedBookOf } from "../job/log-in-book.ts";
import { scanBook } from "../scan/scan-book.ts";

/** The typed content of a log's file. Throws CommandFailure, with the file's name, for what is no log or cannot be opened. */
export function readLogFile(file: string, bytes: Uint8Array): LogInFile {
  try {
    // What a formula gives stands beside it in the file; none is worked out, so no function need be known.
    return logIn(scanBook(bytes) ?? typedBookOf(readWorkbook(bytes, [])));
  } catch (error) {
    if (error instanceof FileRefused || error instanceof CommandFailure)
      throw new CommandFailure(`${file}: ${inOneSentence(error.message)}`);
    throw error;
  }
}

function inWords({ job: { system, fields = {}, rows = {} } }: LogInFile): string {
  const titles = typedFields.filter(({ id }) => ["shop", "jobNumber"].includes(id));
  return [
    ...titles.map(({ id, label }) => `${label}: ${String(fields[id] ?? "left blank")}`),
    `Units: ${system}`,
    ...typedTables.map(({ id, name }) => `${name}: ${String(rows[id]?.length ?? 0)} rows`),
    "",
  ].join("\n");
}

async function run({ words: [file = ""], switches }: Given, around: Surroundings): Promise<ExitCode> {
  around.progress(`reading ${file}`);
  const read = readLogFile(file, await around.readFile(file));
  around.out(switches.has("json") ? `${JSON.stringify(read.job, undefined, 2)}\n` : inWords(read));
  for (const { sheet, cell, reason } of read.exceptions) around.say(`${file}, sheet ${sheet}, ${cell}: ${reason}`);
  if (read.otherSheets.length > 0)
    around.say(`${file}: left out, as they are no sheets of the log: ${read.otherSheets.join(", ")}.`);
  return read.exceptions.length === 0 ? exitCodes.done : exitCodes.refused;
}

export const read: Command = {
  name: "read",
  usage: "FILE.xlsx [--json]",
  summary: "Reads what is typed into a log; as JSON it is the job that bathsheet log takes.",
  options: [{ name: "json", help: "all of it as JSON; without it the shop, the job and the number of rows" }],
  examples: ["bathsheet read job.xlsx", "bathsheet read job.xlsx --json > job.json"],
  words: { least: 1, most: 1 },
  run,
};
