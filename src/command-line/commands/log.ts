import type { Command, Given, Surroundings } from "../command.ts";
import { CommandFailure, type ExitCode, exitCodes, inOneSentence, WrongUsage } from "../failure.ts";
import type { Job } from "../job/job-schema.ts";
import { typedTables } from "../job/job-schema.ts";
import { blanksIn, readJob } from "../job/read-job.ts";
import { writeLog } from "../job/write-log.ts";

/** A long list of faults mostly has one cause. */
const mostLines = 25;

function sayAll(file: string, lines: readonly string[], say: Surroundings["say"]): void {
  for (const line of lines.slice(0, mostLines)) say(`${file}: ${inOneSentence(line)}`);
  if (lines.length > mostLines) say(`${file}: ${String(lines.length - mostLines)} more like these.`);
}

function countedRows({ rows = {} }: Job): string {
  const counts = typedTables.flatMap(({ id, name }) => {
    const count = rows[id]?.length ?? 0;
    return count === 0 ? [] : [`${name} ${String(count)}`];
  });
  return counts.length === 0 ? "no rows" : `rows: ${counts.join(", ")}`;
}

async function run({ words: [file = ""], values, switches }: Given, around: Surroundings): Promise<ExitCode> {
  const output = values["output"];
  const checkOnly = switches.has("check");
  if (checkOnly === (output !== undefined))
    throw new WrongUsage(
      "bathsheet log wants either -o FILE.xlsx to write the log, or --check to look the job over alone.",
    );
  const reading = readJob(new TextDecoder().decode(await around.readFile(file)));
  if ("faults" in reading) {
    sayAll(file, reading.faults, around.say);
    return exitCodes.refused;
  }
  const { job } = reading;
  sayAll(file, blanksIn(job), around.say);
  if (output === undefined) {
    around.out(`${file} is in order: ${job.system} units, ${countedRows(job)}.\n`);
    return exitCodes.done;
  }
  if (!/\.xlsx$/i.test(output))
    throw new CommandFailure(`The log is an Excel workbook, so ${output} must end with .xlsx.`);
  around.progress("working out the log");
  const workbook = await writeLog(job);
  around.progress(`writing ${output}`);
  await around.writeFile(output, workbook, { replace: switches.has("replace") });
  return exitCodes.done;
}

export const log: Command = {
  name: "log",
  usage: "JOB.json (-o FILE.xlsx [--replace] | --check)",
  summary: "Writes a filled log from a job in JSON, with true values in every cell.",
  options: [
    { name: "output", short: "o", value: "FILE.xlsx", help: "the log to write" },
    { name: "replace", help: "write over FILE.xlsx where there is one" },
    { name: "check", help: "look the job over and write nothing" },
  ],
  examples: ["bathsheet log --check job.json", "bathsheet log job.json -o job.xlsx"],
  words: { least: 1, most: 1 },
  run,
};
