import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";

import { strToU8 } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";

import type { Job } from "../../../src/command-line/job/job-schema.ts";
import type { LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import { hasOpenXmlValidator, validateFile } from "../files/open-xml-validator.ts";
import { workedOut } from "../joblog/evaluate/worked-out.ts";
import { hasDuckDb } from "./duckdb.ts";
import { daysJob, weekJob } from "./jobs.ts";
import { type Ran, runCommand } from "./run-command.ts";

async function fileOf(job: Job): Promise<Uint8Array> {
  const { written } = await runCommand(["log", "j", "-o", "j.xlsx"], { j: JSON.stringify(job) });
  const file = written.get("j.xlsx");
  if (file === undefined) throw new Error("No log was written.");
  return file;
}

/** The table of a CSV file without quoted fields that hold commas, by its headings. */
function csvRows(ran: Ran, name: string): readonly Readonly<Record<string, string>>[] {
  const text = new TextDecoder().decode(ran.written.get(`out/${name}.csv`));
  const [headings = [], ...rows] = text
    .trimEnd()
    .split("\r\n")
    .map((line) =>
      [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(([, quoted, plain]) => quoted ?? plain ?? ""),
    );
  return rows.map((row) => Object.fromEntries(headings.map((heading, index) => [heading, row[index] ?? ""])));
}

const asCents = (amount: unknown): number => Math.round(Number(amount) * 100);

const week = weekJob("US");
const metric = { ...weekJob("metric"), fields: { ...weekJob("metric").fields, shop: "Metric Works", currency: "EUR" } };
/** With water of which nobody wrote down how much. */
const days: Job = (() => {
  const { rows = {}, ...job } = daysJob("US");
  const unpriced = { id: "A999", bath: "B-T1-0301", when: 46448.5, kind: "water", purpose: "make-up", water: "CITY" };
  return { ...job, rows: { ...rows, additions: [...(rows["additions"] ?? []), unpriced] } };
})();

describe.skipIf(!hasDuckDb)("the roll-up of a folder [needs DuckDB]", () => {
  let files: Readonly<Record<string, Uint8Array>>;
  let ran: Ran;
  let worked: LogSnapshot;
  let workedDays: LogSnapshot;

  const command = ["rollup", "logs", "-o", "group.xlsx", "--csv", "out"];

  beforeAll(async () => {
    const weekFile = await fileOf(week);
    files = {
      "logs/b/week.xlsx": weekFile,
      "logs/b/copy.xlsx": weekFile,
      "logs/days.xlsx": await fileOf(days),
      "logs/metric.xlsx": await fileOf(metric),
      "logs/broken.xlsx": weekFile.slice(0, weekFile.length / 2),
      "logs/note.xlsx": strToU8("a note"),
      "logs/~$week.xlsx": strToU8("Excel's mark"),
      "logs/readme.txt": strToU8("no workbook"),
    };
    ran = await runCommand(command, files);
    workedDays = await workedOut({ fields: days.fields ?? {}, rows: days.rows ?? {} }, "US");
    worked = await workedOut({ fields: week.fields ?? {}, rows: week.rows ?? {} }, "US");
  });

  describe("what is added up", () => {
    it("is every log once, and the rest is named with the reason", () => {
      expect(ran.said).toEqual([]);
      expect(ran.code).toBe(1);
      expect(ran.out).toMatch(/^3 logs added up, 3 files left out, \d+ exceptions; /);
      const whole = csvRows(ran, "Exceptions").filter(({ Sheet }) => Sheet === "");
      expect(whole.map(({ File, Reason = "" }) => [File, Reason.split(",")[0]])).toEqual([
        ["b/week.xlsx", "It holds the same as b/copy.xlsx"],
        ["broken.xlsx", expect.any(String)],
        ["note.xlsx", "This is no Excel workbook (.xlsx)"],
      ]);
      for (const { Reason } of whole) expect(Reason).not.toMatch(/\. [A-Z]/);
    });

    it("comes to what each log says of itself, to the cent", () => {
      const baths = csvRows(ran, "ByBath").filter(({ File }) => File === "b/copy.xlsx");
      const sum = baths.reduce((all, bath) => all + asCents(bath["Cost of baths"]), 0);
      expect(sum).toBe(asCents(worked.fields.costTotal));
      expect(sum).toBeGreaterThan(0);
      for (const { cells } of worked.rows.baths) {
        const bath = baths.find(({ Bath }) => Bath === cells.bath);
        expect(asCents(bath?.["Cost of baths"]), String(cells.bath)).toBe(asCents(cells.costInAll));
      }
    });

    it("gives each claim what its log has it pay, and its baskets", () => {
      const claims = csvRows(ran, "ByClaim");
      const shop = String(week.fields?.["shop"]);
      // The demo days are of the same invented shop and claims: what both logs have a claim pay is one line.
      const both = new Map<string, number>();
      for (const log of [worked, workedDays])
        for (const { cells } of log.rows.claims)
          both.set(String(cells.claim), asCents(cells.cost ?? 0) + (both.get(String(cells.claim)) ?? 0));
      expect(both.size).toBeGreaterThan(2);
      for (const [claim, cents] of both) {
        const row = claims.find((one) => one["Shop"] === shop && one["Claim"] === claim);
        expect(asCents(row?.["Paid by claims"]), claim).toBe(cents);
      }
      const baskets = (job: Job): number =>
        (job.rows?.["loads"] ?? []).reduce((all, { baskets: one }) => all + Number(one ?? 0), 0);
      const counted = claims.reduce((all, row) => all + Number(row["Baskets"]), 0);
      expect(counted).toBeCloseTo(baskets(week) + baskets(days) + baskets(metric), 9);
    });

    it("keeps currencies apart and says the concentrate of all in liters", () => {
      const shops = csvRows(ran, "ByShop");
      expect(shops.map(({ Shop, Currency }) => [Shop, Currency])).toEqual([
        ["Metric Works", "EUR"],
        [String(week.fields?.["shop"]), "USD"],
      ]);
      const poured = (job: Job): number =>
        (job.rows?.["additions"] ?? []).reduce(
          (all, { kind, amount }) => all + (kind === "concentrate" ? Number(amount ?? 0) : 0),
          0,
        );
      // NIST Handbook 44, Appendix C: a US gallon is 3.785 411 784 L.
      expect(Number(shops[1]?.["Concentrate, L"])).toBeCloseTo((poured(week) + poured(days)) * 3.785411784, 6);
      expect(Number(shops[0]?.["Concentrate, L"])).toBeCloseTo(poured(metric), 6);
    });

    it("adds up to the same by shop, month and bath", () => {
      const total = (name: string, column: string): number =>
        csvRows(ran, name).reduce((all, row) => all + asCents(row[column]), 0);
      for (const column of ["Cost of baths", "Loads", "Baskets", "Top-ups"]) {
        expect(total("ByMonth", column), column).toBe(total("ByShop", column));
        expect(total("ByBath", column), column).toBe(total("ByShop", column));
      }
      for (const column of ["Concentrate, L", "Top-ups"])
        expect(total("ByConcentrate", column), column).toBe(total("ByShop", column));
    });
  });

  describe("what is left out", () => {
    it("stands beside each total, and each row under Exceptions with its place", () => {
      const rows = csvRows(ran, "Exceptions").filter(
        ({ Reason }) => Reason === "It has no cost, so no total holds one for it.",
      );
      const counted = csvRows(ran, "ByShop").reduce(
        (all, row) => all + Number(row["Left out: rows without a cost"]),
        0,
      );
      expect(rows.length).toBe(counted);
      expect(counted).toBeGreaterThan(0);
      for (const { File, Sheet, Row } of rows) {
        expect(File).toMatch(/\.xlsx$/);
        expect(["Additions", "Costs"]).toContain(Sheet);
        expect(Number(Row)).toBeGreaterThan(1);
      }
    });

    it("no quotient is made of a total that lacks a part", () => {
      for (const row of [...csvRows(ran, "ByShop"), ...csvRows(ran, "ByBath")]) {
        const whole =
          row["Left out: rows without a cost"] === "0" &&
          row["Left out: loads without baskets"] === "0" &&
          Number(row["Baskets"]) > 0;
        expect(row["Cost per basket"] !== "", JSON.stringify(row)).toBe(whole);
      }
    });
  });

  it.skipIf(!hasOpenXmlValidator)(
    "its workbook passes the Open XML validator [needs the Open XML validator]",
    async () => {
      const folder = await mkdtemp(join(tmpdir(), "bathsheet-"));
      try {
        const path = join(folder, "group.xlsx");
        await writeFile(path, ran.written.get("group.xlsx") ?? new Uint8Array());
        const result = await validateFile(path);
        expect(result.errors).toEqual([]);
        expect(result.ok).toBe(true);
      } finally {
        await rm(folder, { recursive: true });
      }
    },
  );

  it("the same logs twice give the same bytes, in whatever order and folder they stand", async () => {
    const moved = Object.fromEntries(
      Object.entries(files)
        .reverse()
        .map(([name, file]) => [name.replace("logs/", "elsewhere/logs/"), file]),
    );
    const again = await runCommand(["rollup", "elsewhere/logs", "-o", "group.xlsx", "--csv", "out"], moved);
    expect([...again.written.keys()]).toEqual([...ran.written.keys()]);
    for (const [name, file] of ran.written) expect(again.written.get(name), name).toEqual(file);
  });
});

it.each([
  [
    ["rollup", "logs"],
    {},
    "bathsheet rollup wants -o FILE.xlsx, the workbook to write, or --parquet FOLDER for the rows.",
  ],
  [["rollup", "logs", "-o", "a.csv"], {}, "The figures go into an Excel workbook, so a.csv must end with .xlsx."],
  [["rollup", "logs", "--parquet", "rows"], { "logs/a.txt": "" }, "logs: it holds no .xlsx file."],
  [
    ["rollup", "logs", "--parquet", "rows", "--zone", "Denver"],
    {},
    `"Denver" is no time zone of the IANA's list, such as America/Denver.`,
  ],
  [
    ["rollup", "logs", "--parquet", "rows", "--zones", "z.json"],
    { "z.json": "[]" },
    'The list of zones is no JSON such as { "Shop": "America/Denver" }.',
  ],
  [
    ["rollup", "logs", "--parquet", "rows"],
    { "logs/a.xlsx": "x" },
    /^logs: none of its 1 files is a log that can be read; the first: This is no Excel workbook/,
  ],
])("%j is refused", async (args, given, sentence) => {
  const { said, written, code } = await runCommand(args, given);
  expect(said).toHaveLength(1);
  if (typeof sentence === "string") expect(said[0]).toBe(sentence);
  else expect(said[0]).toMatch(sentence);
  expect(written.size).toBe(0);
  expect(code).toBeGreaterThan(0);
});
