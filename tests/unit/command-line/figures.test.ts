import { readFile } from "node:fs/promises";
import path from "node:path";

import { beforeAll, describe, expect, it } from "vitest";

import { projectFolder } from "../../../scripts/project.ts";
import { fileAccess } from "../../../src/command-line/files.ts";
import type { Job } from "../../../src/command-line/job/job-schema.ts";
import type { Database, DatabaseRow } from "../../../src/command-line/rollup/database.ts";
import { figures } from "../../../src/command-line/rollup/figures.ts";
import { LogRows } from "../../../src/command-line/rollup/log-rows.ts";
import { withRows } from "../../../src/command-line/rollup/opened-rows.ts";
import { rowTableIds, type TypedRows } from "../../../src/command-line/rollup/tables.ts";
import { hasDuckDb } from "./duckdb.ts";
import { daysJob, weekJob } from "./jobs.ts";
import { parquetFiles } from "./parquet-files.ts";
import { smallJob } from "./small-job.ts";
import { together } from "./together.ts";

const queryText = (name: string): Promise<string> =>
  readFile(path.join(projectFolder, "src", "command-line", "rollup", "figures", `${name}.sql`), "utf8");

const withDatabase = <Answer>(
  portions: readonly TypedRows[],
  work: (database: Database) => Promise<Answer>,
): Promise<Answer> =>
  withRows(parquetFiles(...portions), { queryText, temporaryFolder: fileAccess.temporaryFolder }, work);

const rowsOf = (file: string, job: Job): TypedRows => new LogRows(file, job, new Map(), () => "America/Denver").rows;

type Figure = Readonly<Record<string, string | number | undefined>>;

/** As plain numbers; what adds up fractions may differ in the last digits. */
const plain = (rows: readonly DatabaseRow[]): readonly Figure[] =>
  rows.map((row) =>
    Object.fromEntries(
      Object.entries(row).map(([name, value]) => {
        if (value === null) return [name, undefined];
        return [name, typeof value === "string" ? value : Number(Number(value).toPrecision(12))];
      }),
    ),
  );

const close = (figure: Figure): Figure =>
  Object.fromEntries(
    Object.entries(figure).map(([name, value]) => [
      name,
      typeof value === "number" ? Number(value.toPrecision(12)) : value,
    ]),
  );

const sum = <Row>(rows: readonly Row[], of: (row: Row) => number | undefined): number =>
  rows.reduce((all, row) => all + (of(row) ?? 0), 0);

const count = <Row>(rows: readonly Row[], is: (row: Row) => boolean): number => rows.filter(is).length;

const ratio = (part: number, of: number): number | undefined => (of > 0 ? part / of : undefined);

/** A plain reckoning of the rows that a key picks; `parts` are those that the query gives. */
function reckoned(rows: TypedRows, key: Figure, parts: readonly string[]): Figure {
  const baskets = sum(rows.loads, (row) => row.baskets);
  const cents = sum(rows.additions, (row) => row.cost_cents) + sum(rows.costs, (row) => row.cost_cents);
  const concentrate = rows.additions.filter(({ kind }) => kind === "concentrate");
  const liters = sum(concentrate, (row) => row.liters);
  const unpriced = count([...rows.additions, ...rows.costs], (row) => row.cost_cents === undefined);
  const uncounted = count(rows.loads, (row) => row.baskets === undefined);
  const unmeasured = count(rows.additions, (row) => row.liters === undefined && row.kind !== "water");
  const judged = rows.baths.filter((row) => row.top_ups_grow !== undefined);
  const growing = count(judged, (row) => row.top_ups_grow === true);
  const topUps = count(concentrate, (row) => row.purpose === "top-up");
  const all: Figure = {
    cost_cents: cents,
    claim_cents: sum(rows.claims, (row) => row.cost_cents),
    loads: rows.loads.length,
    baskets,
    concentrate_liters: liters,
    top_ups: topUps,
    baths: rows.baths.length,
    top_ups_per_bath: ratio(topUps, rows.baths.length),
    baths_judged: judged.length,
    baths_growing: growing,
    growing_share: ratio(growing, judged.length),
    cents_per_basket: unpriced + uncounted === 0 ? ratio(cents, baskets) : undefined,
    liters_per_basket: unmeasured + uncounted === 0 ? ratio(liters, baskets) : undefined,
    unpriced,
    uncounted,
    unmeasured,
    provisional: count(rows.claims, (row) => row.is_provisional === true),
  };
  return close({ ...key, ...Object.fromEntries(parts.map((part) => [part, all[part]])) });
}

type Part = (row: Figure & { readonly table: string }) => string | undefined;

const nothing: TypedRows = { logs: [], baths: [], additions: [], costs: [], loads: [], items: [], claims: [] };

/** Rows by what a figure adds them up by; a row of which a part says nothing is in none. */
function grouped(rows: TypedRows, parts: Readonly<Record<string, Part>>): readonly (readonly [Figure, TypedRows])[] {
  const groups = new Map<string, [Figure, Record<string, unknown[]>]>();
  for (const table of rowTableIds.filter((one) => one !== "logs" && one !== "items"))
    for (const row of rows[table]) {
      const key = Object.fromEntries(
        Object.entries(parts).map(([name, part]) => [name, part({ ...(row as unknown as Figure), table })]),
      );
      if (Object.values(key).includes(undefined)) continue;
      const id = JSON.stringify(key);
      const group = groups.get(id) ?? [key, {}];
      groups.set(id, group);
      (group[1][table] ??= []).push(row);
    }
  return [...groups.entries()]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([, [key, found]]) => [key, { ...nothing, ...found }]);
}

const column =
  (name: string, otherwise?: string): Part =>
  (row) =>
    row[name] === undefined ? otherwise : String(row[name]);

const shop = column("shop");
const currency = column("currency");

const keys: Readonly<Record<string, Readonly<Record<string, Part>>>> = {
  ByShop: { shop, currency },
  ByMonth: { shop, month: (row) => (row.table === "claims" ? undefined : String(row["month"])), currency },
  ByClaim: {
    shop,
    claim: (row) => (["claims", "loads"].includes(row.table) ? String(row["claim"] ?? "no claim") : undefined),
    currency,
  },
  ByBath: {
    shop,
    file: column("file"),
    bath: (row) => (row.table === "claims" ? undefined : String(row["bath"] ?? "no bath")),
    currency,
  },
  ByConcentrate: {
    shop,
    concentrate: (row) =>
      row.table === "additions" && row["kind"] === "concentrate"
        ? String(row["concentrate"] ?? "no concentrate")
        : undefined,
    currency,
  },
};

describe.skipIf(!hasDuckDb)(
  "the figures over the demo jobs come to what plain reckoning comes to [needs DuckDB]",
  () => {
    const found = new Map<string, readonly Figure[]>();
    let rows: TypedRows;

    beforeAll(async () => {
      const { rows: typed = {}, ...washed } = weekJob("US");
      // In other letters than the log's, and of an amount that nobody wrote down.
      const bath = String(typed["loads"]?.[0]?.["bath"]).toLowerCase();
      const incomplete = [
        { id: "A998", bath, when: 46448.5, kind: "concentrate", purpose: "top-up" },
        { id: "A999", when: 46449.5, kind: "water", purpose: "make-up", amount: 2 },
      ];
      const metric = weekJob("metric");
      const logs = [
        rowsOf("days.xlsx", daysJob("US")),
        rowsOf("week.xlsx", {
          ...washed,
          rows: { ...typed, additions: [...(typed["additions"] ?? []), ...incomplete] },
        }),
        rowsOf("metric.xlsx", { ...metric, fields: { ...metric.fields, shop: "Métier/50 % Works", currency: "EUR" } }),
      ];
      rows = together(logs);
      // As the rows of thousands of logs are packed, in portions.
      await withDatabase(logs, async (database) => {
        for (const { id, query } of figures) found.set(id, plain(await database.read(await queryText(query))));
      });
    });

    it.each(Object.keys(keys))("%s", (id) => {
      const parts = keys[id] ?? {};
      const figure = figures.find((one) => one.id === id);
      const measures = (figure?.columns ?? []).map(({ name }) => name).filter((name) => !(name in parts));
      const expected = grouped(rows, parts).map(([key, own]) => reckoned(own, key, measures));
      expect(expected.length).toBeGreaterThan(1);
      expect(found.get(id)).toEqual(expected);
    });

    it("BySoil", () => {
      const baths = grouped(rows, { ...keys["ByBath"] });
      const expected = new Map<string, Record<string, number>>();
      const leftOut: string[] = [];
      for (const [key, own] of baths) {
        const all = reckoned(own, key, [
          "cost_cents",
          "concentrate_liters",
          "baskets",
          "unpriced",
          "uncounted",
          "unmeasured",
        ]);
        const gaps = Number(all["unpriced"]) + Number(all["uncounted"]) + Number(all["unmeasured"]);
        for (const load of own.loads) {
          const id = JSON.stringify([load.shop, load.soil ?? "not said", load.currency]);
          const soil = expected.get(id) ?? { loads: 0, baskets: 0, whole: 0, wholeBaskets: 0, cents: 0, liters: 0 };
          const baskets = load.baskets ?? 0;
          const isWhole = gaps === 0 && load.bath !== undefined && Number(all["baskets"]) > 0;
          if (!isWhole) leftOut.push(id);
          const part = isWhole ? baskets / Number(all["baskets"]) : 0;
          expected.set(id, {
            loads: (soil["loads"] ?? 0) + 1,
            baskets: (soil["baskets"] ?? 0) + baskets,
            whole: (soil["whole"] ?? 0) + (isWhole ? 1 : 0),
            wholeBaskets: (soil["wholeBaskets"] ?? 0) + (isWhole ? baskets : 0),
            cents: (soil["cents"] ?? 0) + part * Number(all["cost_cents"]),
            liters: (soil["liters"] ?? 0) + part * Number(all["concentrate_liters"]),
          });
        }
      }
      const bySoil = found.get("BySoil") ?? [];
      expect(bySoil).toHaveLength(expected.size);
      expect(leftOut.length).toBeGreaterThan(0);
      for (const row of bySoil) {
        const id = JSON.stringify([row["shop"], row["soil"], row["currency"]]);
        const { loads = 0, baskets = 0, whole = 0, wholeBaskets = 0, cents = 0, liters = 0 } = expected.get(id) ?? {};
        expect([row["loads"], row["baskets"], row["loads_left_out"]], id).toEqual([loads, baskets, loads - whole]);
        for (const [name, value] of [
          ["cents_per_basket", ratio(cents, wholeBaskets)],
          ["liters_per_basket", ratio(liters, wholeBaskets)],
          ["liters_per_load", whole > 0 ? liters / whole : undefined],
        ] as const)
          if (value === undefined) expect(row[name], id).toBeUndefined();
          else expect(row[name], `${id} ${name}`).toBeCloseTo(value, 6);
      }
    });

    it("ByOutcome", () => {
      const expected = new Map<string, number>();
      for (const { shop: of, outcome = "not said", pieces = 0 } of rows.items)
        expected.set(JSON.stringify([of, outcome]), (expected.get(JSON.stringify([of, outcome])) ?? 0) + pieces);
      const byOutcome = found.get("ByOutcome") ?? [];
      expect(byOutcome.length).toBeGreaterThan(2);
      expect(byOutcome).toHaveLength(expected.size);
      for (const row of byOutcome)
        expect(row["pieces"]).toBe(expected.get(JSON.stringify([row["shop"], row["outcome"]])));
    });

    it("each query gives just the columns that the workbook shows", () => {
      for (const { id, columns } of figures)
        expect(Object.keys(found.get(id)?.[0] ?? {}), id).toEqual(columns.map(({ name }) => name));
    });
  },
);

it.skipIf(!hasDuckDb)("the figures of a small job are those worked out by hand [needs DuckDB]", async () => {
  const rows = rowsOf("small.xlsx", smallJob);
  const read = await withDatabase([rows], async (database) => {
    const found = new Map<string, readonly Figure[]>();
    for (const { id, query } of figures) found.set(id, plain(await database.read(await queryText(query))));
    return found;
  });
  // 5 gal of 3.785 411 784 L (NIST Handbook 44, Appendix C) are 18.92705892 L, and an eighth of them 2.365882365 L.
  expect(read.get("ByShop")?.[0]).toMatchObject({
    cost_cents: 20000,
    claim_cents: 20000,
    loads: 2,
    baskets: 8,
    concentrate_liters: 18.92705892,
    top_ups: 1,
    baths: 1,
    top_ups_per_bath: 1,
    cents_per_basket: 2500,
    liters_per_basket: 2.365882365,
  });
  expect(read.get("ByMonth")).toMatchObject([
    { month: "2027-03", cost_cents: 12500, baskets: 8 },
    { month: "2027-04", cost_cents: 7500, baskets: 0, cents_per_basket: undefined },
  ]);
  expect(read.get("BySoil")).toMatchObject([
    { soil: "heavy", baskets: 5, cents_per_basket: 2500, liters_per_load: 11.829411825 },
    { soil: "light", baskets: 3, cents_per_basket: 2500, liters_per_load: 7.097647095 },
  ]);
  expect(read.get("ByBath")).toHaveLength(1);
  expect(read.get("ByOutcome")).toMatchObject([{ outcome: "restored", pieces: 7, unquantified: 0 }]);
});

it("a typed row keeps its file, sheet and row, and its moment by both clocks", () => {
  const { rows } = new LogRows("a/small.xlsx", smallJob, new Map([["loads", [6, 7]]]), () => "America/Denver");
  // Mountain Standard Time is UTC−7 on 1 March (15 U.S.C. 260a and 261).
  expect(rows.loads[1]).toMatchObject({
    shop: "Small Works",
    month: "2027-03",
    file: "a/small.xlsx",
    sheet: "Loads",
    row: 7,
    currency: "USD",
    at_local: new Date("2027-03-01T10:00:00Z"),
    at_utc: new Date("2027-03-01T17:00:00Z"),
    zone: "America/Denver",
  });
  expect(new LogRows("a", smallJob, new Map(), () => undefined).rows.loads[1]).toMatchObject({
    at_utc: undefined,
    zone: undefined,
  });
});
