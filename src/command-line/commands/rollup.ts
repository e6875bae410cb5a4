import type { Command, Given, Surroundings } from "../command.ts";
import { CommandFailure, type ExitCode, exitCodes, WrongUsage } from "../failure.ts";
import { type Group, groupCsv, groupWorkbook } from "../rollup/group-workbook.ts";
import { type LeftOut, type Line, LogLines } from "../rollup/log-lines.ts";
import { readLogFile } from "./read.ts";

/** A shop writes a log a week; a group of sixty shops writes so many in a year. */
const mostFiles = 3000;

/** Excel's own mark of a workbook that is open. */
const isOpenMark = (file: string): boolean => /(?:^|[\\/])~\$/.test(file);

/** Adds the logs up one by one; each is forgotten once its rows are taken. */
async function added(folder: string, files: readonly string[], around: Surroundings): Promise<Group> {
  const lines: Line[] = [];
  const leftOut: LeftOut[] = [];
  const seen = new Map<string, string>();
  let refused = 0;
  const refuse = (file: string, reason: string): void => {
    refused += 1;
    leftOut.push({ file, sheet: "", row: "", reason });
  };
  for (const [index, name] of files.entries()) {
    // Figures of the same logs are the same wherever their folder stands.
    const file = name.startsWith(`${folder}/`) ? name.slice(folder.length + 1) : name;
    around.progress(`log ${String(index + 1)} of ${String(files.length)}: ${file}`);
    try {
      const { job, sheetRows, exceptions } = readLogFile(file, await around.readFile(name));
      const content = JSON.stringify(job);
      const twin = seen.get(content);
      if (twin !== undefined) {
        refuse(file, `It holds the same as ${twin}, and would be counted twice.`);
        continue;
      }
      const { lines: own, leftOut: incomplete } = new LogLines(file, job, sheetRows);
      seen.set(content, file);
      for (const line of own) lines.push(line);
      leftOut.push(
        ...exceptions.map(({ sheet, cell, reason }) => ({ file, sheet, row: cell.replace(/^[A-Z]+/, ""), reason })),
        ...incomplete,
      );
    } catch (error) {
      if (!(error instanceof CommandFailure)) throw error;
      const named = [file, name].find((one) => error.message.startsWith(`${one}: `));
      refuse(file, named === undefined ? error.message : error.message.slice(named.length + 2));
    }
  }
  return { lines, leftOut, read: files.length - refused, refused };
}

async function run({ words: [folder = ""], values, switches }: Given, around: Surroundings): Promise<ExitCode> {
  const { output, csv } = values;
  if (output === undefined) throw new WrongUsage("bathsheet rollup wants -o FILE.xlsx, the workbook to write.");
  if (!/\.xlsx$/i.test(output))
    throw new CommandFailure(`The figures go into an Excel workbook, so ${output} must end with .xlsx.`);
  const listed = await around.listFiles(folder);
  const files = listed.filter((file) => /\.xlsx$/i.test(file) && !isOpenMark(file) && !around.isSameFile(file, output));
  if (files.length === 0) throw new CommandFailure(`${folder}: it holds no .xlsx file.`);
  if (files.length > mostFiles)
    throw new CommandFailure(
      `${folder}: it holds ${String(files.length)} files, and at most ${String(mostFiles)} are added up at once.`,
    );
  const group = await added(folder.replace(/[\\/]+$/, ""), files, around);
  if (group.read === 0)
    throw new CommandFailure(
      `${folder}: none of its ${String(files.length)} files is a log that can be read; the first: ${group.leftOut[0]?.reason ?? ""}`,
    );
  around.progress(`writing ${output}`);
  const replace = switches.has("replace");
  await around.writeFile(output, await groupWorkbook(group), { replace });
  if (csv !== undefined)
    for (const { name, text } of groupCsv(group))
      await around.writeFile(`${csv}/${name}`, new TextEncoder().encode(text), { replace });
  around.out(
    `${String(group.read)} logs added up, ${String(group.refused)} files left out, ${String(group.leftOut.length)} exceptions; the sheet Exceptions names each.\n`,
  );
  return group.refused === 0 ? exitCodes.done : exitCodes.refused;
}

export const rollup: Command = {
  name: "rollup",
  usage: "FOLDER -o FILE.xlsx [--csv FOLDER] [--replace]",
  summary: "Adds up all the logs of a folder by shop, month, claim, bath and concentrate.",
  options: [
    { name: "output", short: "o", value: "FILE.xlsx", help: "the workbook to write" },
    { name: "csv", value: "FOLDER", help: "write the same tables as CSV files into this folder, which must be there" },
    { name: "replace", help: "write over files that are there" },
  ],
  examples: ["bathsheet rollup logs -o group.xlsx", "bathsheet rollup logs -o group.xlsx --csv figures --replace"],
  words: { least: 1, most: 1 },
  run,
};
