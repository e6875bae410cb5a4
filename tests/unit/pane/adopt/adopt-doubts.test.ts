import { beforeAll, describe, expect, test } from "vitest";

import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import type { AdoptAnswers } from "../../../../src/pane/adopt/adopt-answers.ts";
import { kindOf } from "../../../../src/pane/adopt/adopt-kinds.ts";
import { type Adoption, adoptRows } from "../../../../src/pane/adopt/adopt-rows.ts";
import type { DoubtAnswers } from "../../../../src/pane/adopt/doubt-kinds.ts";
import { proposeColumns } from "../../../../src/pane/adopt/propose-columns.ts";
import { demoLog, moment } from "../../excel/log/demo-log.ts";
import { blankAnswers, sheetOf } from "./sheet-of.ts";

let log: LogSnapshot;
const now = moment("2027-03-08T12:00");
const march2 = moment("2027-03-02T00:00");

beforeAll(async () => {
  log = await demoLog("2027-03-02T23:00");
});

function adopt(
  headings: readonly string[],
  rows: readonly (readonly unknown[])[],
  change: Partial<AdoptAnswers> & Pick<AdoptAnswers, "table">,
  doubts: DoubtAnswers = {},
): Adoption {
  const answers: AdoptAnswers = {
    ...blankAnswers,
    columns: proposeColumns(headings, kindOf(change.table)),
    names: { bath: { t1: { use: "B-T1-0301" } } },
    ...change,
  };
  return adoptRows(sheetOf(headings, ...rows), answers, log, "US", now, doubts);
}

/** Of every row by its number, that it is taken, or why not. */
function fates({ taken, listed }: Adoption): readonly string[] {
  return [
    ...taken.map(({ number }) => [number, "taken"] as const),
    ...listed.map(({ number, why }) => [number, why.join("; ")] as const),
  ]
    .sort(([a], [b]) => a - b)
    .map(([, fate]) => fate);
}

const bench = ["Date", "Time", "Bath", "Surface", "Ratio", "Result"];
const tried = (...strengths: readonly unknown[]): readonly (readonly unknown[])[] =>
  strengths.map((strength, index) => [march2, 0.9 + index / 1440, "T1", "metal", strength, "pass"]);

describe("strengths of a shop's sheet", () => {
  test("that a spreadsheet made a time are refused with both readings, as the functions refuse them", () => {
    // 1:40 typed into a cell is 1 h 40 min, 100 minutes of the 1440 of a day.
    expect(fates(adopt(bench, tried(100 / 1440, 68 / 1440), { table: "benchTests" }))).toEqual([
      expect.stringMatching(/time of day that Excel makes of 1:40; write “1\+40”, or “6\.94444%” if it is a share/),
      expect.stringMatching(/time of day that Excel makes of 1:8; write “1\+8”/),
    ]);
  });

  test.each([40, "40", "40:1", "1/40", "2.5 oz wt per gal", "#VALUE!"])("such as %s are refused", (strength) => {
    expect(fates(adopt(bench, tried(strength), { table: "benchTests" }))).toEqual([expect.stringMatching(/^Strength/)]);
  });

  test("written as labels write them are taken as they stand", () => {
    const { taken } = adopt(bench, tried("1:40", "1+40", "2.5%", "1 in 40", "3 fl oz/gal"), { table: "benchTests" });
    expect(taken.map(({ cells }) => cells["strength"])).toEqual(["1:40", "1+40", "2.5%", "1 in 40", "3 fl oz/gal"]);
  });

  test("as a bare share are asked about, since 1 divided by 40 is not 1 part and 40 of water", () => {
    const sheet = [bench, tried(0.025), { table: "benchTests" }] as const;
    expect(fates(adopt(...sheet))).toEqual([
      "asked: 0.025 is taken as 2.5% of the finished bath, 1 in 40. If 1:40 was meant, one part and 40 of water, it is 2.44%. Is it the share?",
    ]);
    expect(adopt(...sheet, { strength: "take" }).taken[0]?.cells["strength"]).toBe("2.5%");
  });
});

const additions = ["Date", "Time", "Tank", "Amount gal"];
const poured = (...amounts: readonly unknown[]): readonly (readonly unknown[])[] =>
  amounts.map((amount, index) => [march2, 0.9 + index / 1440, "T1", amount]);
const topUps = { table: "additions", same: { kind: "concentrate", purpose: "top-up" } } as const;

describe("amounts of a shop's sheet", () => {
  test("beyond what the tank holds are refused, and more than the opening dose is asked about", () => {
    const sheet = [additions, poured(178, 64, 3), topUps] as const;
    expect(fates(adopt(...sheet))).toEqual([
      "Amount: 178 gal is more than the tank holds, 121.2 gal at its fill line.",
      expect.stringMatching(/^asked: 64 gal at once is more than the whole opening dose of 4\.18 gal/),
      "taken",
    ]);
    expect(adopt(...sheet).asked.map(({ kind, rows }) => [kind, rows.map(({ number }) => number)])).toEqual([
      ["amount", [3]],
      ["room", [3]],
    ]);
    expect(fates(adopt(...sheet, { amount: "take" }))[1]).toMatch(/^asked: By the log the tank then holds/);
    expect(fates(adopt(...sheet, { amount: "take", room: "take" }))[1]).toBe("taken");
    expect(fates(adopt(...sheet, { amount: "leave out", room: "take" }))[1]).toMatch(/^left out: 64 gal at once/);
  });

  test("are held to the tank of a bath that is yet to be opened", () => {
    expect(
      fates(adopt(additions, [[march2, 0.9, "Old one", 178]], { ...topUps, names: { bath: { "old one": "new" } } })),
    ).toEqual([expect.stringMatching(/more than the tank holds/)]);
  });

  test("of 0, and a pH that falls by concentrate, are not taken silently", () => {
    expect(fates(adopt(additions, poured(0), topUps))).toEqual([
      "Amount: 0 is nothing to record. Allowed: more than 0.",
    ]);
    const headings = [...additions, "pH before", "pH after"];
    expect(fates(adopt(headings, [[march2, 0.9, "T1", 0.5, 11.2, 10.9]], topUps))).toEqual([
      expect.stringMatching(/concentrate raises it/),
    ]);
  });
});

const readings = ["Date", "Time", "Tank", "pH", "Temp F"];
const checks = { table: "readings", same: { purpose: "check" } } as const;

describe("readings of a shop's sheet", () => {
  test("with degrees Celsius under a heading of Fahrenheit are asked about, once", () => {
    const rows = [53, 40, 77].map((temperature, index) => [march2, 0.9 + index / 100, "T1", 11.1, temperature]);
    const { asked } = adopt(readings, rows, checks);
    expect(fates(adopt(readings, rows, checks))).toEqual([
      expect.stringMatching(/53 °F is cold for a sample.*127\.4 °F/),
      expect.stringMatching(/40 °F is cold for a sample/),
      "taken",
    ]);
    expect(asked.map(({ kind, rows: about }) => [kind, about.length])).toEqual([["temperature", 2]]);
  });

  test("with their own unit in the cell are not", () => {
    expect(fates(adopt(readings, [[march2, 0.9, "T1", 11.1, "53 F"]], checks))).toEqual(["taken"]);
  });

  test("far in pH from the sheet's own reading before, or hot against the baseline, are asked about", () => {
    const rows = [
      [march2, 0.93, "T1", 1.11, 77],
      [march2, 0.95, "T1", 11.1, 150],
    ];
    expect(
      adopt(readings, rows, checks).asked.map(({ kind, rows: about }) => [kind, about.map((one) => one.number)]),
    ).toEqual([
      ["jump", [2]],
      ["gap", [3]],
    ]);
  });

  test("that were asked about and taken say on the sheet that they were read so, and no other does", () => {
    const rows = [
      [march2, 0.93, "T1", 1.11, 77],
      [march2, 0.95, "T1", 11.1, 53],
      [march2, 0.96, "T1", 11.1, "53 F"],
      [march2, 0.97, "T1", 11.1, 77],
    ];
    const { taken } = adopt(readings, rows, checks, { jump: "take", temperature: "take" });
    expect(taken.map(({ cells }) => cells["confirmed"])).toEqual(["yes", "yes", "yes", undefined]);
  });

  test("that are alike are asked about: one event written twice, or two", () => {
    const row = [march2, 0.95, "T1", 11.1, 77];
    const sheet = [readings, [row, row], checks] as const;
    expect(fates(adopt(...sheet))).toEqual(["taken", "asked: the same as row 2"]);
    expect(fates(adopt(...sheet, { twice: "leave out" }))).toEqual(["taken", "left out: the same as row 2"]);
    expect(adopt(...sheet, { twice: "take" }).taken.map(({ cells }) => cells["id"])).toEqual(["R011", "R012"]);
  });
});

test("a line of totals is no row unless the person says so", () => {
  const rows = [...poured(3), [march2, 0.99, "T1", "3", "Total"]];
  const sheet = [[...additions, "Note"], rows, topUps] as const;
  expect(fates(adopt(...sheet))).toEqual(["taken", 'asked: "Total": is it a row of its own?']);
  expect(fates(adopt(...sheet, { total: "take" }))).toEqual(["taken", "taken"]);
});

test("loads of nothing, and loads of a claim that comes in after a dirtier one, are not taken silently", () => {
  const loads = ["Date", "Time", "Tank", "Claim", "Baskets", "Soil", "Minutes"];
  const claims = { table: "loads", names: { bath: { t1: { use: "B-T1-0301" } }, claim: { "n-9": "new" } } } as const;
  const rows = [
    [march2, 0.8, "T1", "D-0427", 0, "heavy", 8],
    [march2, 0.9, "T1", "D-0427", 2, "heavy", 8],
    [march2, 0.91, "T1", "N-9", 2, "light", 8],
  ];
  expect(fates(adopt(loads, rows, claims))).toEqual([
    "Baskets: 0 is no load. Allowed: more than 0.",
    "taken",
    expect.stringMatching(/^asked: Claim N-9 comes into this bath after heavier soil/),
  ]);
});

test("a piece that its words speak against is asked about before it goes into a bath", () => {
  const items = ["Tag", "Claim", "Description", "Qty", "Route"];
  const { asked, taken } = adopt(
    items,
    [
      ["X-1", "D-0427", "aluminum pan", 1, "bath"],
      ["X-2", "D-0427", "plate", 1, "bath"],
    ],
    { table: "items" },
  );
  expect([asked.map(({ kind }) => kind), taken.map(({ cells }) => cells["id"])]).toEqual([["hazard"], ["X-2"]]);
});

test("money is read with its sign, and refused in another currency than the shop's", () => {
  const items = ["Tag", "Claim", "Description", "Qty", "Replacement value"];
  const values = ["$4.50", "12.50 USD", "1,234.50", "€ 12,50", "4,50 €", "£3", "(12.50)"];
  const result = adopt(
    items,
    values.map((value, index) => [`X-${String(index)}`, "D-0427", "plate", 1, value]),
    { table: "items" },
  );
  expect(result.taken.map(({ cells }) => cells["replacementValue"])).toEqual([4.5, 12.5, 1234.5]);
  expect(result.listed.map(({ why }) => why.join("; "))).toEqual([
    expect.stringMatching(/"€ 12,50" is in €, and the log is kept in USD/),
    expect.stringMatching(/"4,50 €" is in €/),
    expect.stringMatching(/"£3" is in £/),
    expect.stringMatching(/"\(12\.50\)" is out of range/),
  ]);
});
