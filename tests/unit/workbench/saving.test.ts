import { describe, expect, it } from "vitest";

import { readState } from "../../../src/state/read-state.ts";
import type { WorkbookState } from "../../../src/state/workbook-state.ts";
import { enter, read, salesHost, testHost } from "./test-host.ts";

const throughJson = (saved: WorkbookState): WorkbookState => readState(JSON.parse(JSON.stringify(saved)));

describe("a saved workbook", () => {
  it("opens with the same values, formulas, tables and names", async () => {
    const host = await salesHost();
    await enter(host, "F1:F2", [["=SUM(Sales[Amount, $])"], ["=BATH.TWICE(F1)"]]);
    await host.Excel.run(async (context) => {
      context.workbook.names.add(
        "Unit.System",
        context.workbook.worksheets.getItem("Sheet1").getRange("H1"),
        "US or metric",
      );
      await context.sync();
    });
    const other = testHost();
    other.restore(throughJson(host.save()));
    expect(other.values("Sheet1")).toEqual(host.values("Sheet1"));
    expect(await read(other, "A1:F4", "formulas")).toEqual(await read(host, "A1:F4", "formulas"));
    await other.Excel.run(async (context) => {
      const table = context.workbook.tables.getItem("Sales").load("name,showBandedRows");
      const name = context.workbook.names.getItem("Unit.System").load("comment,value");
      await context.sync();
      expect([name.comment, name.value]).toEqual(["US or metric", "=Sheet1!$H$1"]);
      expect(table.name).toBe("Sales");
    });
  });

  it("goes on filling calculated columns", async () => {
    const host = testHost();
    host.restore(throughJson((await salesHost()).save()));
    await enter(host, "A5:C5", [["Rob", 900, 0.15]]);
    expect(await read(host, "D5", "values")).toEqual([[135]]);
  });

  it("keeps number formats, page set-up and the words of validation", async () => {
    const host = await salesHost();
    await host.Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      sheet.getRange("B2").numberFormat = [["[Red][<0]-0.0;0.0"]];
      sheet.pageLayout.orientation = "Landscape";
      sheet.pageLayout.headersFooters.defaultForAllPages.centerFooter = "Page &P";
      const { dataValidation } = sheet.getRange("C2:C4");
      dataValidation.rule = { list: { inCellDropDown: true, source: "0.1,0.15" } };
      dataValidation.errorAlert = { showAlert: true, style: "Stop", title: "Rate", message: "Choose one." };
      await context.sync();
    });
    const other = testHost();
    other.restore(throughJson(host.save()));
    await other.Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      const { pageLayout } = sheet;
      pageLayout.load("orientation");
      const footer = pageLayout.headersFooters.defaultForAllPages.load("centerFooter");
      const { dataValidation } = sheet.getRange("C3");
      dataValidation.load("errorAlert");
      const cell = sheet.getRange("B2").load("numberFormat");
      await context.sync();
      expect([pageLayout.orientation, footer.centerFooter]).toEqual(["Landscape", "Page &P"]);
      expect(dataValidation.errorAlert.message).toBe("Choose one.");
      expect(cell.numberFormat).toEqual([["[Red][<0]-0.0;0.0"]]);
    });
  });

  it("of another version or shape is refused, with what is wrong", async () => {
    const { book, sheets } = (await salesHost()).save();
    const [sheet] = sheets;
    if (sheet === undefined) throw new Error("The workbook has no sheet.");
    expect(() => readState({ book: { ...book, version: 1 }, sheets })).toThrow(
      "The saved workbook has version 1; this workbench reads version 2.",
    );
    expect(() => readState("<!doctype html>")).toThrow("The saved workbook is damaged.");
    expect(() => readState({ book, sheets: [] })).toThrow("its sheets are not those that it lists");
    const refused = (change: object): (() => unknown) => {
      return () => readState({ book, sheets: [{ ...sheet, ...change }] });
    };
    expect(refused({ merges: [1] })).toThrow("The saved workbook is damaged at sheet Sheet1, merges, 1.");
    expect(refused({ tables: [{ ...sheet.tables[0], name: undefined }] })).toThrow("sheet Sheet1, tables, 1, name.");
    expect(refused({ looks: [] })).toThrow("sheet Sheet1, row 1, column 1.");
    expect(refused({ formulas: [] })).toThrow("sheet Sheet1, row 2, column 4.");
    expect(refused({ rows: 2 })).toThrow("sheet Sheet1, row 3, column 1.");
  });
});
