import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";

import { quantileSeq } from "mathjs";
import { describe, expect, it } from "vitest";

import { projectFolder } from "../../../scripts/project.ts";
import { fileAccess } from "../../../src/command-line/files.ts";
import type { TypedRows } from "../../../src/command-line/rollup/tables.ts";
import { hasDuckDb } from "./duckdb.ts";
import { parquetFiles } from "./parquet-files.ts";
import { type Ran, runCommand } from "./run-command.ts";
import { together } from "./together.ts";

interface PastJob {
  readonly light?: number;
  readonly heavy?: number;
  readonly cents?: number | undefined;
  readonly isOpen?: boolean;
  readonly soil?: string;
  readonly shop?: string;
}

/** A log of one bath, one load of each soil, 10 L of concentrate and 90 L of water. */
function rowsOf(
  { light = 0, heavy = 0, cents, isOpen = false, soil = "light", shop = "Small Works" }: PastJob,
  at: number,
): TypedRows {
  const common = {
    shop,
    month: "2027-03",
    file: `job-${String(at).padStart(3, "0")}.xlsx`,
    sheet: "",
    row: undefined,
    currency: "USD",
    at_local: new Date(Date.UTC(2027, 2, 1 + at)),
    at_utc: undefined,
    zone: undefined,
  };
  const load = { ...common, bath: "B-1", claim: "D-1", minutes: 30 };
  const poured = { ...common, bath: "B-1", concentrate: "CN-1", purpose: "top-up", kind: "concentrate" };
  return {
    logs: [{ ...common, system: "US", weight_light: 1, weight_medium: 2, weight_heavy: 3 }],
    baths: [
      { ...common, bath: "B-1", concentrate: "CN-1", is_closed: !isOpen, fill_water_liters: 90, top_ups_grow: false },
    ],
    additions: [{ ...poured, liters: 10, cost_cents: cents }],
    costs: [],
    loads: [
      { ...load, soil, baskets: light },
      { ...load, soil: "heavy", baskets: heavy },
    ],
    items: [],
    claims: [],
  };
}

async function estimated(jobs: readonly PastJob[], ...args: readonly string[]): Promise<Ran> {
  const folder = await mkdtemp(path.join(tmpdir(), "bathsheet-rows-"));
  try {
    const files = parquetFiles(together(jobs.map(rowsOf)));
    await fileAccess.writeFolder(path.join(folder, "rows"), files, { replace: false, ours: [] });
    const listed = Object.fromEntries(files.map((file) => [`${folder}/rows/${file.path}`, file.content]));
    return await runCommand(["estimate", `${folder}/rows`, ...args], listed);
  } finally {
    await rm(folder, { recursive: true });
  }
}

interface Spread {
  readonly lowerQuartile: number;
  readonly median: number;
  readonly upperQuartile: number;
  readonly jobs: number;
}

async function spreads(jobs: readonly PastJob[], baskets = "light=1"): Promise<Readonly<Record<string, Spread>>> {
  const { out, said } = await estimated(jobs, "--baskets", baskets, "--json");
  expect(said.filter((line) => !/no estimate/.test(line))).toEqual([]);
  return (JSON.parse(out) as { readonly expected: Readonly<Record<string, Spread>> }).expected;
}

/** Jobs of one light basket each, whose cost is the value. */
const costing = (values: readonly number[]): readonly PastJob[] =>
  values.map((value) => ({ light: 1, cents: value * 100 }));

const ofCost = async (values: readonly number[]): Promise<readonly number[]> => {
  const { cost } = await spreads(costing(values));
  return [cost?.lowerQuartile ?? Number.NaN, cost?.median ?? Number.NaN, cost?.upperQuartile ?? Number.NaN];
};

describe.skipIf(!hasDuckDb)("quartiles by definition 7 of Hyndman and Fan [needs DuckDB]", () => {
  it("are those that R's list of 12 February 1998 shows for the numbers from 1 to 10", async () => {
    expect(await ofCost([10, 3, 7, 1, 9, 2, 8, 4, 6, 5])).toEqual([3.25, 5.5, 7.75]);
  });

  it("begin as in GrapeCity's example of QUARTILE.INC", async () => {
    expect((await ofCost([11, 21, 42, 27, 18, 29, 32, 52]))[0]).toBe(20.25);
  });

  it("are those of mathjs, whatever the number of jobs", async () => {
    for (const count of [5, 6, 7, 8, 13]) {
      const values = Array.from({ length: count }, (_, at) => ((at * 7919) % 101) + at / 4);
      const expected = [0.25, 0.5, 0.75].map((part) => quantileSeq(values, part));
      (await ofCost(values)).forEach((value, at) => {
        expect(value, `${String(count)} jobs`).toBeCloseTo(expected[at] ?? Number.NaN, 9);
      });
    }
  });
});

/** One weighted basket, then two and so on: 4 light and 2 heavy ones weigh 4 + 2 × 3 = 10. */
const five: readonly PastJob[] = [
  { light: 4, heavy: 2, cents: 10000 },
  { light: 10, cents: 20000 },
  { light: 1, heavy: 3, cents: 30000 },
  { light: 7, heavy: 1, cents: 40000 },
  { heavy: 5, light: 5, cents: 100000 },
];

describe.skipIf(!hasDuckDb)("an estimate [needs DuckDB]", () => {
  it("is what jobs took for each weighted basket, times those of the job to come", async () => {
    // Costs for each weighted basket: 10, 20, 30, 40 and 1000/20 = 50 dollars. 2 light and 6 heavy baskets weigh 20.
    const found = await spreads(five, "light=2,heavy=6");
    expect(found["cost"]).toEqual({ lowerQuartile: 400, median: 600, upperQuartile: 800, jobs: 5 });
    // Four jobs poured 10 L for 10, one for 20: quartiles of 0.5, 1, 1, 1, 1.
    expect(found["concentrate"]).toEqual({ lowerQuartile: 20, median: 20, upperQuartile: 20, jobs: 5 });
    expect(found["water"]?.median).toBe(180);
    expect(found["baths"]?.median).toBe(2);
    // Two loads of half an hour a job.
    expect(found["hours"]?.median).toBe(2);
  });

  it("says its range, the jobs behind it and those left out, and promises nothing", async () => {
    const jobs = [...five, { light: 3, cents: 1, isOpen: true }, { light: 3, cents: 1, soil: "sticky" }];
    const { out, said, code } = await estimated(jobs, "--baskets", "light=2,heavy=6");
    expect(code).toBe(0);
    expect(said).toEqual([]);
    expect(out).toContain(
      "Small Works: 5 jobs that are done (2 left out: 1 for a bath still open, 1 for a load without its soil).",
    );
    expect(out).toMatch(/^Cost, USD +400\.00 +600\.00 +800\.00 +5$/m);
    expect(out).toMatch(/no promise/);
    // The page about it shows just this.
    expect(await readFile(path.join(projectFolder, "docs", "command-line.md"), "utf8")).toContain(out);
  });

  it("refuses with too few jobs, and leaves out what too few of them say", async () => {
    const few = await estimated(five.slice(1), "--baskets", "light=2");
    expect(few.said).toEqual([
      "Small Works: 4 jobs that are done (none left out) make no estimate, which wants at least 5.",
    ]);
    expect([few.code, few.out]).toEqual([1, ""]);
    const unpriced = await estimated([...five.slice(1), { light: 1, cents: undefined }], "--baskets", "light=2");
    expect(unpriced.said).toEqual([
      "Cost: no estimate, as 4 jobs with all its figures is too few; at least 5 are wanted.",
    ]);
    expect(unpriced.out).not.toMatch(/^Cost/m);
    expect(unpriced.out).toMatch(/^Water, L/m);
  });

  it("wants to know which shop is meant, and knows it in other letters", async () => {
    const both = [...five, ...five.map((job) => ({ ...job, shop: "Other Works" }))];
    expect((await estimated(both, "--baskets", "light=2")).said).toEqual([
      "The logs are of several shops (Other Works, Small Works); say with --shop which one is meant.",
    ]);
    expect((await estimated(both, "--baskets", "light=2", "--shop", "Smal Works")).said).toEqual([
      'No log is of the shop "Smal Works"; "Small Works" is the nearest.',
    ]);
    expect((await estimated(both, "--baskets", "light=2", "--shop", "small works")).code).toBe(0);
  });
});

it.each([
  [[], /^bathsheet estimate wants --baskets/],
  [["--baskets", "light"], /^"light" is no number of baskets by soil/],
  [["--baskets", "light=-1"], /^"light=-1" is no number/],
  [["--baskets", "light=1,light=2"], /^Baskets of light soil are given twice/],
  [["--baskets", "light=0"], /^An estimate is made for more than 0/],
  [["--baskets", "light=1e3"], /is no number/],
])("%j is refused", async (args, sentence) => {
  const { said, code } = await runCommand(["estimate", "logs", ...args], {});
  expect(said).toHaveLength(1);
  expect(said[0]).toMatch(sentence);
  expect(code).toBe(2);
});
