import { describe, expect, it } from "vitest";

import { enter, read, testHost } from "./test-host.ts";

describe("what is written", () => {
  it("as number, text or truth value is read back as such", async () => {
    expect(await enter(testHost(), "A1:C1", [[11.42, "check", true]])).toEqual([[11.42, "check", true]]);
  });

  it("as a number keeps all its digits", async () => {
    const numbers = [0.1 + 0.2, 1e-7, 123456789.12345678, -3.6, 46447.40625, 1e21];
    expect(await enter(testHost(), "A1:F1", [numbers])).toEqual([numbers]);
  });

  it("with a leading apostrophe is text without it", async () => {
    const host = testHost();
    expect(await enter(host, "A1:E1", [["'007", "'=1+1", "'1-2", "''tis", "'TRUE"]])).toEqual([
      ["007", "=1+1", "1-2", "'tis", "TRUE"],
    ]);
    expect(await read(host, "A1:E1", "formulas")).toEqual([["007", "=1+1", "1-2", "'tis", "TRUE"]]);
  });

  it("as text that looks like a number is parsed as if typed", async () => {
    expect(await enter(testHost(), "A1:D1", [["007", "3E5", "12%", "true"]])).toEqual([[7, 300000, 0.12, true]]);
  });

  it("as text that looks like a date becomes Excel's serial number", async () => {
    // 46447 is 1 March 2027: Excel counts days from 1900 with the leap day that year never had.
    expect(await enter(testHost(), "A1", [["2027-03-01"]])).toEqual([[46447]]);
  });

  it("as an empty text clears the cell, as null leaves it alone", async () => {
    const host = testHost();
    await enter(host, "A1:B1", [["one", "two"]]);
    await host.Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("A1:B1").values = [["", null]];
      await context.sync();
    });
    expect(await read(host, "A1:B1", "values")).toEqual([["", "two"]]);
  });

  it("with a sign in front and no number behind is a formula", async () => {
    const host = testHost();
    await enter(host, "A1:B1", [[5, "-A1"]]);
    expect(await read(host, "A1:B1", "values")).toEqual([[5, -5]]);
    expect(await read(host, "B1", "formulas")).toEqual([["=-A1"]]);
  });

  it("stays text in cells of the text format, whichever came first", async () => {
    const host = testHost();
    await host.Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      const before = sheet.getRange("A1:A2");
      before.numberFormat = [["@"], ["@"]];
      before.values = [["'1+28"], ["007"]];
      const after = sheet.getRange("B1:B2");
      after.values = [["'1+28"], ["'=x"]];
      after.numberFormat = [["@"], ["@"]];
      await context.sync();
    });
    expect(await read(host, "A1:B2", "values")).toEqual([
      ["1+28", "1+28"],
      ["007", "=x"],
    ]);
  });

  it("in a formula that fails reads as Excel's error word", async () => {
    const values = await enter(testHost(), "A1:E1", [
      ["=1/0", '="a"+1', "=NA()", "=NOSUCHFUNCTION(1)", "=No.Such.Name"],
    ]);
    expect(values).toEqual([["#DIV/0!", "#VALUE!", "#N/A", "#NAME?", "#NAME?"]]);
  });

  it("in one value for a whole range fills it", async () => {
    const host = testHost();
    await host.Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1:B2");
      Object.assign(range, { values: 0 });
      await context.sync();
    });
    expect(await read(host, "A1:B2", "values")).toEqual([
      [0, 0],
      [0, 0],
    ]);
  });

  it("beyond the grid's present size makes room", async () => {
    const host = testHost();
    await enter(host, "AZ500", [["far"]]);
    expect(await read(host, "AZ500:BA501", "values")).toEqual([
      ["far", ""],
      ["", ""],
    ]);
  });
});

describe("number formats", () => {
  it("are read back as they were written, though the grid draws a simpler one", async () => {
    const host = testHost();
    const written = [["yyyy-mm-dd hh:mm", "0.00", "[Red][<0]-0.0;0.0", "General", "0.0%"]];
    await host.Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("A1:E1").numberFormat = written;
      await context.sync();
    });
    expect(await read(host, "A1:E1", "numberFormat")).toEqual(written);
  });

  it("dress what the grid shows", async () => {
    const host = testHost();
    await enter(host, "A1:B1", [[46447.40625, 0.3333]]);
    await host.Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1:B1");
      range.numberFormat = [["yyyy-mm-dd hh:mm", "0.0%"]];
      await context.sync();
      range.load("text");
      await context.sync();
      expect(range.text).toEqual([["2027-03-01 09:45", "33.3%"]]);
    });
  });
});
