import { nearestWord } from "../../core/text/nearest-word.ts";
import type { Command, Given, Surroundings } from "../command.ts";
import { type Baskets, type Estimate, estimateOf, type Expected, fewestJobs } from "../estimate/estimate.ts";
import { historiesIn, type History, type Measure, type Soil } from "../estimate/history.ts";
import { CommandFailure, type ExitCode, exitCodes, WrongUsage } from "../failure.ts";
import { requireDatabase } from "../rollup/database.ts";
import { gather } from "../rollup/gather.ts";
import { withRows, withRowsIn } from "../rollup/opened-rows.ts";

const soilWords: readonly Soil[] = ["light", "medium", "heavy"];

/** More than any shop washes of one job. */
const mostBaskets = 100_000;

function readBaskets(text: string): Baskets {
  const baskets: Partial<Record<Soil, number>> = {};
  for (const part of text.split(",")) {
    const [, word = "", amount = ""] = /^\s*(\w+)\s*=\s*(\d+(?:\.\d+)?)\s*$/.exec(part) ?? [];
    const soil = soilWords.find((one) => one === word.toLowerCase());
    if (soil === undefined)
      throw new WrongUsage(`"${part.trim()}" is no number of baskets by soil, such as light=12,medium=30,heavy=4.`);
    if (baskets[soil] !== undefined) throw new WrongUsage(`Baskets of ${soil} soil are given twice.`);
    baskets[soil] = Number(amount);
  }
  const all = soilWords.reduce((sum, soil) => sum + (baskets[soil] ?? 0), 0);
  if (!(all > 0) || all > mostBaskets)
    throw new WrongUsage(
      `An estimate is made for more than 0 and at most ${mostBaskets.toLocaleString("en-US")} baskets.`,
    );
  return baskets;
}

async function historiesOf(folder: string, around: Surroundings): Promise<readonly History[]> {
  const read = (database: Parameters<typeof historiesIn>[0]) => historiesIn(database, around.queryText);
  const listed = await around.listFiles(folder);
  if (listed.some((file) => /\/logs\/shop=[^/]*\/month=[^/]*\/[^/]*\.parquet$/.test(file)))
    return withRowsIn(folder.replace(/[\\/]+$/, ""), around, read);
  const gathered = await gather(
    folder,
    () => false,
    () => undefined,
    around,
  );
  for (const { file, sheet, reason } of gathered.leftOut) if (sheet === "") around.say(`${file}: ${reason}`);
  return withRows(gathered.files, around, read);
}

/** The one history that is meant. Throws CommandFailure where the folder holds several, or none of that shop. */
function chosen(histories: readonly History[], shop: string | undefined): History {
  const names = [...new Set(histories.map((one) => one.shop))];
  const own = histories.filter((one) => shop === undefined || one.shop.toLowerCase() === shop.toLowerCase());
  const [only] = own;
  if (only === undefined) {
    const nearest = nearestWord(shop ?? "", names);
    throw new CommandFailure(
      `No log is of the shop "${shop ?? ""}"; ${nearest === undefined ? `there are ${names.join(", ")}` : `"${nearest}" is the nearest`}.`,
    );
  }
  if (new Set(own.map((one) => one.shop)).size > 1)
    throw new CommandFailure(
      `The logs are of several shops (${names.join(", ")}); say with --shop which one is meant.`,
    );
  if (own.length > 1)
    throw new CommandFailure(
      `The logs of ${only.shop} are in several currencies (${own.map(({ currency }) => currency).join(", ")}), so their costs make no estimate.`,
    );
  return only;
}

const labels: Readonly<Record<Measure, string>> = {
  baths: "Baths",
  concentrate: "Concentrate, L",
  water: "Water, L",
  hours: "Hours in the bath",
  cost: "Cost",
};

const shownFigure = (measure: Measure, value: number): string =>
  measure === "cost" ? (Math.round(value) / 100).toFixed(2) : value.toFixed(measure === "water" ? 0 : 1);

const counted = (count: number, one: string): string => `${String(count)} ${one}${count === 1 ? "" : "s"}`;

function leftOutOf({ leftOut }: History): string {
  const all = [...leftOut.values()].reduce((sum, one) => sum + one, 0);
  if (all === 0) return "none left out";
  const reasons = [...leftOut].map(([why, count]) => `${String(count)} for ${why}`);
  return `${String(all)} left out: ${reasons.join(", ")}`;
}

function table({ expected }: Estimate, { currency }: History): readonly string[] {
  const lines = [
    ["", "lower quartile", "median", "upper quartile", "jobs"],
    ...expected.map(({ measure, jobs, lower, median, upper }: Expected) => [
      measure === "cost" ? `${labels.cost}, ${currency}` : labels[measure],
      ...[lower, median, upper].map((value) => shownFigure(measure, value)),
      String(jobs),
    ]),
  ];
  const widths = lines[0]?.map((_, at) => Math.max(...lines.map((line) => line[at]?.length ?? 0))) ?? [];
  return lines.map((line) =>
    line
      .map((cell, at) => (at === 0 ? cell.padEnd(widths[at] ?? 0) : cell.padStart(widths[at] ?? 0)))
      .join("  ")
      .trimEnd(),
  );
}

function inWords(estimate: Estimate, history: History): string {
  return `${[
    `${history.shop}: ${counted(history.jobs, "job")} that are done (${leftOutOf(history)}).`,
    `For ${String(estimate.weightedBaskets)} baskets, counted by the weight of their soil, such jobs took:`,
    "",
    ...table(estimate, history),
    "",
    "Half of these jobs lie between the quartiles and half do not; what was is no promise of what will be.",
  ].join("\n")}\n`;
}

function inJson(baskets: Baskets, estimate: Estimate, history: History): string {
  const figures = Object.fromEntries(
    estimate.expected.map(({ measure, jobs, lower, median, upper }) => {
      const scale = measure === "cost" ? 100 : 1;
      return [measure, { lowerQuartile: lower / scale, median: median / scale, upperQuartile: upper / scale, jobs }];
    }),
  );
  return `${JSON.stringify({
    shop: history.shop,
    currency: history.currency,
    baskets,
    weightedBaskets: estimate.weightedBaskets,
    jobs: history.jobs,
    leftOut: Object.fromEntries(history.leftOut),
    expected: figures,
  })}\n`;
}

async function run({ words: [folder = ""], values, switches }: Given, around: Surroundings): Promise<ExitCode> {
  const { baskets: text, shop } = values;
  if (text === undefined)
    throw new WrongUsage(
      "bathsheet estimate wants --baskets, such as light=12,medium=30,heavy=4: what the job brings.",
    );
  const baskets = readBaskets(text);
  await requireDatabase();
  const history = chosen(await historiesOf(folder, around), shop);
  const estimate = estimateOf(baskets, history);
  if (estimate.expected.length === 0)
    throw new CommandFailure(
      `${history.shop}: ${counted(history.jobs, "job")} that are done (${leftOutOf(history)}) make no estimate, which wants at least ${String(fewestJobs)}.`,
    );
  around.out(switches.has("json") ? inJson(baskets, estimate, history) : inWords(estimate, history));
  for (const { measure, jobs } of estimate.unsaid)
    around.say(
      `${labels[measure]}: no estimate, as ${counted(jobs, "job")} with all its figures is too few; at least ${String(fewestJobs)} are wanted.`,
    );
  return exitCodes.done;
}

export const estimate: Command = {
  name: "estimate",
  usage: "FOLDER --baskets light=N,medium=N,heavy=N [--shop NAME] [--json]",
  summary: "Says what jobs of so many baskets took by the shop's own logs, with the range between their quartiles.",
  options: [
    { name: "baskets", value: "SOIL=N,…", help: "what the job brings, by soil: light, medium, heavy" },
    { name: "shop", value: "NAME", help: "which shop, where the folder holds logs of several" },
    { name: "json", help: "the figures as JSON" },
  ],
  examples: [
    "bathsheet estimate logs --baskets light=12,medium=30,heavy=4",
    "bathsheet estimate rows --baskets heavy=20 --json",
  ],
  words: { least: 1, most: 1 },
  run,
};
