import type { Command, Given, Surroundings } from "../command.ts";
import { CommandFailure, type ExitCode, exitCodes, WrongUsage } from "../failure.ts";
import { requireDatabase } from "../rollup/database.ts";
import { gather, type Gathered } from "../rollup/gather.ts";
import { groupCsv, groupTables, groupWorkbook } from "../rollup/group-workbook.ts";
import { withRows } from "../rollup/opened-rows.ts";
import { rowTableIds } from "../rollup/tables.ts";
import { zonesOf } from "../rollup/zones.ts";

function refuseOutputs({ output, csv, parquet }: Given["values"]): void {
  if (output === undefined && (csv !== undefined || parquet === undefined))
    throw new WrongUsage(
      "bathsheet rollup wants -o FILE.xlsx, the workbook to write, or --parquet FOLDER for the rows.",
    );
  if (output !== undefined && !/\.xlsx$/i.test(output))
    throw new CommandFailure(`The figures go into an Excel workbook, so ${output} must end with .xlsx.`);
}

const noun = (count: number, one: string): string => `${String(count)} ${one}${count === 1 ? "" : "s"}`;

const summaryOf = ({ read, refused, leftOut }: Gathered): string =>
  `${noun(read, "log")} added up, ${noun(refused, "file")} left out, ${noun(leftOut.length, "exception")}`;

async function run({ words: [folder = ""], values, switches }: Given, around: Surroundings): Promise<ExitCode> {
  const { output, csv, parquet, zone, zones } = values;
  refuseOutputs(values);
  if (output !== undefined) await requireDatabase();
  const list = zones === undefined ? undefined : new TextDecoder().decode(await around.readFile(zones));
  const isOutput = (file: string): boolean => output !== undefined && around.isSameFile(file, output);
  const gathered = await gather(folder, isOutput, zonesOf(zone, list), around);
  const { files } = gathered;
  await around.requireGoingOn();
  const how = { replace: switches.has("replace") };
  const tables =
    output === undefined
      ? []
      : await withRows(files, around, (database) => groupTables(gathered, database, around.queryText));
  const workbook = output === undefined ? undefined : { path: output, content: await groupWorkbook(tables) };
  // From here on everything is made, and a cancel waits until it is written.
  await around.requireGoingOn();
  if (parquet !== undefined) await around.writeFolder(parquet, files, { ...how, ours: rowTableIds });
  if (csv !== undefined)
    for (const { name, text } of groupCsv(tables))
      await around.writeFile(`${csv}/${name}`, new TextEncoder().encode(text), how);
  if (workbook !== undefined) await around.writeFile(workbook.path, workbook.content, how);
  around.out(
    workbook === undefined ? `${summaryOf(gathered)}.\n` : `${summaryOf(gathered)}; the sheet Exceptions names each.\n`,
  );
  if (workbook === undefined)
    for (const { file, sheet, row, reason } of gathered.leftOut)
      around.say(
        [file, sheet, row === undefined ? "" : `row ${String(row)}`].filter(Boolean).join(", ") + `: ${reason}`,
      );
  return gathered.refused === 0 ? exitCodes.done : exitCodes.refused;
}

export const rollup: Command = {
  name: "rollup",
  usage: "FOLDER [-o FILE.xlsx [--csv FOLDER]] [--parquet FOLDER] [--zone ZONE] [--zones FILE.json] [--replace]",
  summary: "Adds up all the logs of a folder by shop, month, claim, bath, concentrate, soil and outcome.",
  options: [
    { name: "output", short: "o", value: "FILE.xlsx", help: "the workbook to write" },
    { name: "csv", value: "FOLDER", help: "write the same tables as CSV files into this folder, which must be there" },
    {
      name: "parquet",
      value: "FOLDER",
      help: "write the rows behind the figures as Parquet files into this new folder",
    },
    { name: "zone", value: "ZONE", help: "the time zone of the shops' clocks, such as America/Denver" },
    { name: "zones", value: "FILE.json", help: 'the zone of each shop, as { "Shop": "America/Denver" }' },
    { name: "replace", help: "write over files and row folders that are there" },
  ],
  examples: [
    "bathsheet rollup logs -o group.xlsx",
    "bathsheet rollup logs -o group.xlsx --csv figures --replace",
    "bathsheet rollup logs --parquet rows --zone America/Denver",
  ],
  words: { least: 1, most: 1 },
  run,
};
