import { describe, expect, it } from "vitest";

import { jobLog } from "../../src/joblog/job-log.ts";
import type { Cells, LogContent } from "../../src/joblog/model/definition.ts";
import { firstTwoDays } from "../demo/days/demo-week.ts";
import { contentIn } from "../demo/metric/week-in.ts";
import { logOf } from "../unit/excel/log/prepared-log.ts";
import { compareWithGrid } from "../unit/joblog/evaluate/compare-with-grid.ts";
import { fullWeek, weekWhere } from "../unit/joblog/sheets/hostile-log.ts";

const changed = (change: (rows: readonly Cells[]) => readonly Cells[]): LogContent => ({
  fields: fullWeek.fields,
  rows: Object.fromEntries(Object.entries(fullWeek.rows).map(([id, rows]) => [id, change(rows)])),
});

/** The fewest computed cells that a week has: where fewer were compared, something was left out. */
const computedCells = 1000;

/** What a person can do to a log; each shows in other cells. */
const hostile: Readonly<Record<string, LogContent>> = {
  "with blank rows in the middle of every table": changed((rows) =>
    rows.flatMap((row, index) => (index === 1 ? [{}, {}, {}, row] : [row])),
  ),
  "sorted the other way round": changed((rows) => [...rows].reverse()),
  "with a bath renamed on Baths alone": weekWhere({
    baths: (row, index) => (index === 0 ? { ...row, bath: "B-NEW" } : row),
  }),
  "with tanks that are not on the Job sheet": weekWhere({ baths: (row) => ({ ...row, tank: "T9" }) }),
  "with words for numbers and dates": weekWhere({
    readings: (row, index) => ({
      ...row,
      ...(index % 3 === 0 ? { ph: "eleven" } : index % 3 === 1 ? { temperature: "warm" } : { when: "Monday" }),
    }),
    additions: (row, index) => ({ ...row, ...(index % 2 === 0 ? { amount: "a jug" } : { when: "noon" }) }),
    loads: (row, index) => ({ ...row, ...(index % 2 === 0 ? { baskets: "two" } : { soil: "sooty" }) }),
    waters: (row) => ({ ...row, hardness: "hard", price: "cheap" }),
  }),
  "with marks that patterns know": weekWhere({
    readings: (row) => ({ ...row, bath: "B*" }),
    loads: (row) => ({ ...row, claim: "D-04??" }),
    items: (row) => ({ ...row, claim: "~*" }),
  }),
  "with every key in other capitals": weekWhere({
    readings: (row) => ({ ...row, bath: String(row["bath"]).toLowerCase() }),
    additions: (row) => ({ ...row, bath: ` ${String(row["bath"])}` }),
  }),
};

describe("a log worked out without a spreadsheet shows what the grid shows", () => {
  it("in the week", { tags: "landing" }, async () => {
    const { agreed, unlike } = compareWithGrid(await logOf(fullWeek, "US"));
    expect(unlike).toEqual([]);
    expect(agreed).toBeGreaterThan(computedCells);
  });

  it.each(["metric", "imperial"] as const)("in the same week in %s units", { tags: "landing" }, async (system) => {
    const { agreed, unlike } = compareWithGrid(await logOf(contentIn(fullWeek, system), system));
    expect(unlike).toEqual([]);
    expect(agreed).toBeGreaterThan(computedCells);
  });

  it("in an empty log", async () => {
    const { agreed, unlike } = compareWithGrid(await logOf({ fields: {}, rows: {} }));
    expect(unlike).toEqual([]);
    expect(agreed).toBeGreaterThan(
      jobLog.sheets.flatMap(({ fields }) => fields).filter(({ formula }) => formula !== undefined).length - 1,
    );
  });

  it("in the demo days without fields", async () => {
    const { unlike } = compareWithGrid(await logOf({ fields: {}, rows: firstTwoDays.rows }));
    expect(unlike).toEqual([]);
  });

  it.each(Object.entries(hostile))("%s", { tags: "landing" }, async (_what, content) => {
    const { agreed, unlike } = compareWithGrid(await logOf(content, "US", [fullWeek]));
    expect(unlike).toEqual([]);
    expect(agreed).toBeGreaterThan(computedCells);
  });
});
