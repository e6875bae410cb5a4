import { describe, expect, it } from "vitest";

import { readState } from "../../../src/state/read-state.ts";
import type { SheetState, WorkbookState } from "../../../src/state/workbook-state.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { openWorkbook } from "../excel/log/open-workbook.ts";
import { openLog } from "../excel/log/prepared-log.ts";
import { enter, read, salesHost, testHost } from "./test-host.ts";

function asKept(state: WorkbookState): WorkbookState {
  return readState(JSON.parse(JSON.stringify(state)));
}

function reopened(host: Host): Host {
  const other = testHost();
  other.restore(asKept(host.save()));
  return other;
}

function onlySheet({ sheets }: WorkbookState): SheetState {
  const [sheet, ...more] = sheets;
  if (sheet === undefined || more.length > 0) throw new Error("There is not one sheet.");
  return sheet;
}

function setCell(host: Host, row: number, column: number, content: string): void {
  host.workbook.grid.do("UPDATE_CELL", { sheetId: host.workbook.sheets.ids()[0] ?? "", row, col: column, content });
}

describe("the state of a workbook", () => {
  it("of a log is the same after it was restored, and so is every value", async () => {
    const host = await openLog(firstTwoDays);
    const state = host.save();
    const other = openWorkbook();
    other.restore(asKept(state));
    expect(other.save()).toEqual(state);
    for (const { name } of state.sheets) expect(other.values(name)).toEqual(host.values(name));
    expect(state.sheets.flatMap(({ tables }) => tables).length).toBeGreaterThan(20);
    expect(
      state.sheets
        .flatMap(({ figures }) => figures)
        .every(({ chart, other: more }) => chart !== undefined && more === undefined),
    ).toBe(true);
  });

  it("holds of a chart what Excel draws and the grid does not, and that goes where the table grows", async () => {
    const host = await openLog(firstTwoDays);
    const seriesNow = () =>
      host.save().sheets.flatMap(({ figures }) => figures.flatMap(({ chart }) => chart?.series ?? []));
    const before = seriesNow();
    expect(before.map(({ markers, dashed }) => [markers, dashed])).toContainEqual([true, false]);
    expect(before.map(({ markers, dashed }) => [markers, dashed])).toContainEqual([false, true]);
    const own = before.flatMap(({ x }) => (x === undefined ? [] : [x]));
    expect(own.length).toBeGreaterThan(0);
    const { workbook } = host;
    const [area] = own.map((x) => workbook.area(x, workbook.sheets.ids()[0] ?? ""));
    if (area === undefined) throw new Error("No series has an x of its own.");
    workbook.grid.do("ADD_COLUMNS_ROWS", {
      sheetId: area.sheet,
      sheetName: workbook.sheets.nameOf(area.sheet),
      dimension: "ROW",
      base: 0,
      quantity: 2,
      position: "before",
    });
    expect(seriesNow().flatMap(({ x }) => (x === undefined ? [] : [x]))[0]).toBe(
      workbook.addressOf({ ...area, row: area.row + 2 }),
    );
  });

  it("holds each formula text once", async () => {
    const { formulas, worked } = onlySheet((await salesHost()).save());
    expect(formulas).toEqual(["=Sales[[#This Row],[Amount, $]]*Sales[[#This Row],[Rate]]"]);
    expect(worked.map(([row, column, , formula]) => [row, column, formula])).toEqual([
      [1, 3, 0],
      [2, 3, 0],
      [3, 3, 0],
    ]);
  });

  it("tells text from what it looks like", () => {
    const texts = ["50%", "007", "1E5", "2026-01-02", "TRUE", "=text", "'quoted", "#N/A", "-", "  two", "a\nb", ""];
    const host = testHost();
    texts.forEach((text, row) => {
      setCell(host, row, 0, `'${text}`);
    });
    setCell(host, 0, 1, "50%");
    setCell(host, 1, 1, "#N/A");
    setCell(host, 2, 1, "TRUE");
    const { typed } = onlySheet(host.save());
    expect(typed.filter(([, column]) => column === 0).map(([, , , value]) => value)).toEqual(texts);
    expect(typed.filter(([, column]) => column === 1).map(([, , , value]) => value)).toEqual([
      0.5,
      { error: "#N/A" },
      true,
    ]);
    const other = reopened(host);
    expect(other.values("Sheet1")).toEqual(host.values("Sheet1"));
    expect(other.save()).toEqual(host.save());
  });

  it("reads a formula anew after it was typed over or a sheet was renamed", async () => {
    const host = await salesHost();
    await enter(host, "F1", [["=SUM(Sheet1!B2:B4)"]]);
    host.save();
    setCell(host, 1, 3, "=B2*2");
    const [sheet = ""] = host.workbook.sheets.ids();
    host.workbook.sheets.rename(sheet, "July");
    const { formulas, worked } = onlySheet(host.save());
    const texts = worked.map(([, , , formula]) => formulas[formula]);
    expect(texts).toContain("=B2*2");
    expect(texts.some((text) => text?.includes("Sheet1"))).toBe(false);
    expect(texts.filter((text) => text?.includes("[#This Row]")).length).toBe(2);
  });

  it("reads formulas by addresses once their table was taken away", async () => {
    const host = await salesHost();
    await enter(host, "F1", [["=SUM(Sales[Rate])"]]);
    const texts = (): unknown => {
      const { formulas, worked } = onlySheet(host.save());
      return worked.filter(([, column]) => column === 5).map(([, , , formula]) => formulas[formula]);
    };
    expect(texts()).toEqual(["=SUM(Sales[Rate])"]);
    const [sheetId = ""] = host.workbook.sheets.ids();
    host.workbook.grid.do("REMOVE_TABLE", { sheetId, target: [{ top: 0, left: 0, bottom: 3, right: 3 }] });
    expect(texts()).toEqual(["=SUM($C$2:$C$4)"]);
  });

  it("keeps the value of a formula that the grid cannot work out until the cell is written", async () => {
    const state = (await salesHost()).save();
    const sheet = onlySheet(state);
    const withFile: WorkbookState = {
      ...state,
      sheets: [
        {
          ...sheet,
          formulas: [...sheet.formulas, '=REPT("ab",2)'],
          worked: [...sheet.worked, [5, 0, 0, sheet.formulas.length]],
          kept: [[5, 0, "abab"]],
        },
      ],
    };
    const host = testHost();
    host.restore(withFile);
    expect(await read(host, "A6", "values")).toEqual([["abab"]]);
    expect(await read(host, "A6", "formulas")).toEqual([['=REPT("ab",2)']]);
    await enter(host, "B6", [["=A6&1"]]);
    expect(await read(host, "B6", "values")).toEqual([["abab1"]]);
    expect(onlySheet(host.save()).kept).toEqual([[5, 0, "abab"]]);
    setCell(host, 5, 0, "mine");
    expect(onlySheet(host.save()).kept).toEqual([]);
    expect(await read(host, "A6", "formulas")).toEqual([["mine"]]);
  });

  it("keeps two number formats apart that the grid draws alike, and one that it cannot draw", async () => {
    const formats = ["0.0", "[Red]0.0", "0.0_)", "# ?/?", "0.00E+00", "General", "@"];
    const host = testHost();
    await host.Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("A1:G1").numberFormat = [formats];
      await context.sync();
    });
    expect(await read(host, "A1:G1", "numberFormat")).toEqual([formats]);
    expect(await read(reopened(host), "A1:G1", "numberFormat")).toEqual([formats]);
  });

  it("hands on names that stand for no cells", async () => {
    const state = (await salesHost()).save();
    const names = [
      { name: "Rate", refersTo: "0.07" },
      { name: "Local", refersTo: "Sheet1!$A$1", sheet: "s1" },
    ];
    const host = testHost();
    host.restore({ ...state, book: { ...state.book, names } });
    expect(host.save().book.names).toEqual(names);
  });

  it("keeps what a person draws and dresses with the grid's own menus", () => {
    const host = testHost();
    const [sheetId = ""] = host.workbook.sheets.ids();
    const { grid } = host.workbook;
    for (const [row, content] of ["1", "2", "3"].entries()) setCell(host, row, 0, content);
    grid.do("SET_ZONE_BORDERS", {
      sheetId,
      target: [{ top: 5, left: 5, bottom: 5, right: 5 }],
      border: { position: "all", color: "#FF0000", style: "dashed" },
    });
    grid.do("SET_FORMATTING", {
      sheetId,
      target: [{ top: 0, left: 0, bottom: 0, right: 0 }],
      style: { strikethrough: true, rotation: 1 },
    });
    grid.do("ADD_MERGE", { sheetId, target: [{ top: 7, left: 0, bottom: 8, right: 1 }] });
    grid.do("HIDE_COLUMNS_ROWS", { sheetId, dimension: "ROW", elements: [9] });
    grid.do("GROUP_HEADERS", { sheetId, dimension: "COL", start: 3, end: 4 });
    const source = { sheet: sheetId, row: 0, column: 0, rows: 3, columns: 1 };
    host.workbook.charts.update(host.workbook.charts.add(sheetId, "line", source), (definition) =>
      Object.assign({}, definition, { fillArea: true, cumulative: true }),
    );
    const state = host.save();
    const [figure] = onlySheet(state).figures;
    expect(figure?.other?.data).toMatchObject({ fillArea: true, cumulative: true });
    expect(figure?.chart?.series.map(({ values }) => values)).toEqual(["A1:A3"]);
    expect(onlySheet(state)).toMatchObject({ merges: ["A8:B9"], rowSizes: { 9: { hidden: true } } });
    expect(onlySheet(state).looks).toContainEqual({ text: { strikethrough: true, rotation: 1 } });
    const again = reopened(host).save();
    expect(again.sheets[0]?.dressed).toEqual(state.sheets[0]?.dressed);
    expect(again.sheets[0]?.others).toEqual(state.sheets[0]?.others);
    expect(again.sheets[0]?.figures[0]?.other?.data).toMatchObject({ fillArea: true, cumulative: true });
  });
});
