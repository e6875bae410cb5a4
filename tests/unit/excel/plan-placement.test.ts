import { describe, expect, test } from "vitest";

import { placeSheets, type WorkbookSurvey } from "../../../src/excel/build/plan-placement.ts";
import { styledAreas } from "../../../src/excel/build/styled-areas.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { absoluteArea, areaAddress, columnLetters } from "../../../src/joblog/layout/addresses.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import type { CellPlan } from "../../../src/joblog/model/plan.ts";

const plan = layOut(jobLog, { system: "US" }, { fields: {}, rows: {} });

const survey = (change: Partial<WorkbookSurvey>): WorkbookSurvey => ({
  sheets: [],
  tableSheets: new Map(),
  nameSheets: new Map(),
  ...change,
});

const placed = (change: Partial<WorkbookSurvey>, planned: string): ReturnType<typeof placeSheets>[number] | undefined =>
  placeSheets(plan, survey(change)).find((one) => one.plan.name === planned);

describe("where a planned sheet goes", () => {
  test("a blank workbook gets every sheet under its planned name", () => {
    expect(placeSheets(plan, survey({})).every((one) => !one.kept && one.actual === one.plan.name)).toBe(true);
  });

  test("a shop's sheet of the same name, in whatever case, makes the log take another", () => {
    expect(placed({ sheets: ["READINGS"] }, "Readings")).toMatchObject({ kept: false, actual: "Readings (log)" });
    expect(placed({ sheets: ["Readings", "Readings (log)"] }, "Readings")?.actual).toBe("Readings (log 2)");
  });

  test("a long name is cut so that its mark fits into Excel's 31 characters", () => {
    const [sheet] = plan.sheets;
    if (sheet === undefined) throw new RangeError("the plan has no sheet");
    const name = "A".repeat(31);
    const [found] = placeSheets({ ...plan, sheets: [{ ...sheet, name }] }, survey({ sheets: [name] }));
    expect(found?.actual).toBe(`${"A".repeat(25)} (log)`);
  });

  test("two planned sheets never take one name", () => {
    const [sheet] = plan.sheets;
    if (sheet === undefined) throw new RangeError("the plan has no sheet");
    const names = placeSheets({ ...plan, sheets: [sheet, sheet] }, survey({})).map(({ actual }) => actual);
    expect(names).toEqual([sheet.name, `${sheet.name} (log)`]);
  });

  test("a sheet with one of the log's tables is the log's, under whatever name", () => {
    const found = placed({ sheets: ["pH values"], tableSheets: new Map([["Readings", "pH values"]]) }, "Readings");
    expect(found).toMatchObject({ kept: true, actual: "pH values", missingTables: [] });
  });

  test("tables that a kept sheet lacks are named", () => {
    const found = placed({ sheets: ["Job"], tableSheets: new Map([["Tanks", "Job"]]) }, "Job");
    expect(found?.missingTables.map((table) => table.name)).toEqual(["Claims", "Waters", "Concentrates"]);
  });
});

describe("addresses", () => {
  test("columns count on after Z", () => {
    expect([0, 25, 26, 51, 52, 701, 702].map(columnLetters)).toEqual(["A", "Z", "AA", "AZ", "BA", "ZZ", "AAA"]);
  });

  test("an area counts from 0 and a sheet's apostrophe is doubled", () => {
    expect(areaAddress({ row: 4, column: 1, rows: 3, columns: 2 })).toBe("B5:C7");
    expect(absoluteArea("KT's log", { row: 0, column: 0, rows: 2, columns: 1 })).toBe("'KT''s log'!$A$1:$A$2");
  });
});

describe("cells of one look", () => {
  const cell = (row: number, column: number, style: CellPlan["style"]): CellPlan => ({
    row,
    column,
    style,
    kind: "blank",
  });

  test("a block becomes one rectangle", () => {
    const block = [0, 1, 2].flatMap((row) => [0, 1].map((column) => cell(row, column, "input")));
    expect(styledAreas(block)).toEqual([
      { row: 0, column: 0, rows: 3, columns: 2, style: "input", numberFormat: undefined },
    ]);
  });

  test("rectangles cover every cell exactly once, each with its own look", () => {
    const cells = plan.sheets
      .flatMap((sheet) => sheet.cells.map((one) => ({ ...one, row: one.row, sheet: sheet.name })))
      .filter((one) => one.sheet === "Job");
    const covered = styledAreas(cells).flatMap((area) =>
      Array.from({ length: area.rows * area.columns }, (_, index) => {
        const row = area.row + Math.floor(index / area.columns);
        const column = area.column + (index % area.columns);
        return `${String(row)} ${String(column)} ${area.style} ${area.numberFormat ?? ""}`;
      }),
    );
    const wanted = cells.map(
      (one) => `${String(one.row)} ${String(one.column)} ${one.style} ${one.numberFormat ?? ""}`,
    );
    expect(covered.sort()).toEqual(wanted.sort());
  });
});
