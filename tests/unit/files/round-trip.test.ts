import { beforeAll, describe, expect, it } from "vitest";

import { readWorkbook } from "../../../src/files/read/read-workbook.ts";
import { writeState } from "../../../src/files/write/write-state.ts";
import { cellAddress } from "../../../src/joblog/layout/addresses.ts";
import type { FigureState, SheetState, WorkbookState } from "../../../src/state/workbook-state.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { openWorkbook } from "../excel/log/open-workbook.ts";
import { openLog } from "../excel/log/prepared-log.ts";
import { gridFunctions } from "./read/written-logs.ts";

/** Pixels of the grid's columns that nobody sized. */
const usualColumn = 96;

function cellsByPlace(sheet: SheetState): Readonly<Record<string, unknown>> {
  const found: Record<string, unknown> = {};
  const put = (row: number, column: number, look: number, holds: unknown): void => {
    found[cellAddress(row, column)] = [holds, sheet.looks[look]];
  };
  for (const [row, column, look] of sheet.dressed) put(row, column, look, null);
  for (const [row, column, look, value] of sheet.typed) put(row, column, look, value);
  for (const [row, column, look, formula] of sheet.worked) put(row, column, look, sheet.formulas[formula]);
  return found;
}

/** Ranges of a chart's own sheet may bear its name; a place says the same however the sizes around it were set. */
function figureWithNames({ chart, ...place }: FigureState, sheet: string): unknown {
  const prefix = /^[A-Za-z]+$/.test(sheet) ? `${sheet}!` : `'${sheet}'!`;
  const named = (range: string | undefined): string | undefined =>
    range === undefined || range.includes("!") ? range : prefix + range;
  if (chart === undefined) return place;
  const { automaticMinimum, y, labels, kind, ...rest } = chart;
  const { min, ...restOfY } = y ?? {};
  return {
    ...place,
    chart: {
      ...rest,
      kind: kind === "scatter" ? "line" : kind,
      labels: named(labels),
      x: rest.x ?? {},
      // A beginning that the host chose is left to Excel, and chosen anew.
      y: { ...restOfY, ...(automaticMinimum === true || min === undefined ? {} : { min }) },
      series: chart.series.map(({ values, x, ...one }) => ({
        ...one,
        values: named(values),
        x: named(x),
        ...(kind === "bar" ? {} : { dashed: one.dashed ?? false, markers: one.markers ?? false }),
      })),
    },
  };
}

/** A list's source as Office.js was given it says what the criterion says, in one spelling or another. */
function withoutSource(validation: SheetState["validations"][number]): unknown {
  const { rule, ...words } = validation.words ?? {};
  const isList = typeof rule === "object" && rule !== null && "list" in rule;
  return { ...validation, words: { ...words, rule: isList ? "list" : rule } };
}

/** All that a state says of a sheet, apart from the numbers by which it says it. */
function saidOf(sheet: SheetState): Readonly<Record<string, unknown>> {
  const { tables, validations, conditionalFormats, merges, frozen, gridlines, visible, locked, tabColor, print } =
    sheet;
  const { columnGroups = [] } = sheet;
  const widths = Object.fromEntries(
    Array.from({ length: 26 }, (_, column) => [column, { size: usualColumn, ...sheet.columnSizes[column] }]),
  );
  return {
    cells: cellsByPlace(sheet),
    kept: sheet.kept,
    tables,
    validations: validations.map(withoutSource),
    conditionalFormats,
    merges,
    frozen,
    columnGroups,
    gridlines,
    visible,
    locked,
    tabColor,
    print,
    widths,
    heights: sheet.rowSizes,
    figures: sheet.figures.map((figure) => figureWithNames(figure, sheet.name)),
  };
}

function reread(host: Host): { readonly before: WorkbookState; readonly after: WorkbookState; readonly lost: unknown } {
  const state = host.save();
  const { file, lost } = writeState(state, host.shown(state));
  expect(lost).toEqual([]);
  const read = readWorkbook(file, gridFunctions);
  const sheets = state.sheets.filter(({ name }) => name !== "Sheet1");
  return { before: { ...state, sheets }, after: read.state, lost: read.losses };
}

/** Adds a sheet of the person's own, and changes the log as a person does. */
async function edited(): Promise<Host> {
  const host = await openLog(firstTwoDays);
  const { workbook } = host;
  const sheet = workbook.sheets.add("My prices");
  const cells: readonly (readonly [place: string, content: string])[] = [
    ["A1", "Item"],
    ["B1", "Price"],
    ["C1", "Twice"],
    ["A2", "Rags <&\"'> é"],
    ["B2", "12.5"],
    ["A3", "'007"],
    ["B3", "'=text"],
    ["A6", "=SUM(Readings[pH as read])"],
    ["A7", '=BATH.DOSE(121.175,"1+28")'],
    ["A8", "=1/0"],
    ["A9", '=MAXIFS(B2:B2,B2:B2,">1")'],
    ["A10", "'  two  spaces"],
    ["A11", "=TRUE"],
    ["A12", "46447.123456789"],
  ];
  for (const [place, content] of cells) {
    const cell = workbook.cellAt(workbook.area(place, sheet));
    workbook.grid.do("UPDATE_CELL", { sheetId: sheet, row: cell.row, col: cell.column, content });
  }
  await host.Excel.run(async (context) => {
    const own = context.workbook.worksheets.getItem("My prices");
    own.tables.add("A1:C2", true).name = "Prices";
    own.getRange("C2").formulas = [["=Prices[[#This Row],[Price]]*2"]];
    own.getRange("B2").numberFormat = [["$#,##0.00_);[Red]($#,##0.00)"]];
    own.getRange("A12").numberFormat = [["yyyy-mm-dd hh:mm"]];
    own.getRange("A2").format.fill.color = "#FFEE00";
    own.getRange("A2").format.wrapText = true;
    own.getRange("A:A").format.columnWidth = 150;
    context.workbook.names.add("My.Price", own.getRange("B2"), "of rags");
    await context.sync();
  });
  const { grid } = workbook;
  grid.do("ADD_MERGE", { sheetId: sheet, target: [{ top: 14, left: 0, bottom: 15, right: 1 }] });
  grid.do("HIDE_COLUMNS_ROWS", { sheetId: sheet, dimension: "ROW", elements: [17] });
  grid.do("RESIZE_COLUMNS_ROWS", {
    sheetId: sheet,
    dimension: "ROW",
    elements: [18],
    size: 40,
  });
  grid.do("HIDE_SHEET", { sheetId: workbook.sheets.named("Notes") ?? "" });
  const readings = workbook.sheets.named("Readings") ?? "";
  const table = workbook.tables.named("Readings");
  if (table === undefined) throw new Error("The log has no table of readings.");
  const typedOver = { ...table.area, row: table.area.row + 2, column: table.area.column + table.headers.length - 1 };
  grid.do("UPDATE_CELL", { sheetId: readings, row: typedOver.row, col: typedOver.column, content: "typed over" });
  return host;
}

describe("a log with a person's own work, saved and opened again", () => {
  let host: Host;
  let trip: ReturnType<typeof reread>;

  beforeAll(async () => {
    host = await edited();
    trip = reread(host);
  }, 240_000);

  it("has the same sheets, names and nothing that is left out", () => {
    const { before, after, lost } = trip;
    expect(lost).toEqual([]);
    expect(after.sheets.map(({ name }) => name)).toEqual(before.sheets.map(({ name }) => name));
    const plainNames = ({ book }: WorkbookState): unknown =>
      book.names
        .map(({ refersTo, ...name }) => ({ ...name, refersTo: refersTo.replaceAll("$", "") }))
        .sort((a, b) => a.name.localeCompare(b.name));
    expect(plainNames(after)).toEqual(plainNames(before));
  });

  it("has every cell, look, table, rule, format, chart and print set-up of every sheet", () => {
    const { before, after } = trip;
    before.sheets.forEach((sheet, index) => {
      const found = after.sheets[index];
      if (found === undefined) throw new Error(`Sheet ${sheet.name} is missing.`);
      const [wanted, had] = [saidOf(sheet), saidOf(found)];
      for (const [kind, said] of Object.entries(wanted))
        expect.soft(had[kind], `${kind} of ${sheet.name}`).toEqual(said);
    });
  });

  it("shows the same values, and can be saved once more without a change", () => {
    const other = openWorkbook();
    other.restore(trip.after);
    for (const { name } of trip.before.sheets) expect(other.values(name), name).toEqual(host.values(name));
    const once = other.save();
    const again = readWorkbook(writeState(once, other.shown(once)).file, gridFunctions).state;
    expect(again.sheets.map(saidOf)).toEqual(once.sheets.map(saidOf));
  });
});
