import { describe, expect, it } from "vitest";

import { salesHost, testHost } from "./test-host.ts";

describe("a batch of writes", () => {
  it("is one command to the grid, and one undo takes it back", async () => {
    const host = testHost();
    let commands = 0;
    host.model.on("command-dispatched", {}, (command: object) => {
      if ((command as { type: string }).type === "BATHSHEET_BATCH") commands += 1;
    });
    await host.Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      for (let row = 0; row < 50; row += 1) sheet.getRangeByIndexes(row, 0, 1, 3).values = [[row, row * 2, "text"]];
      await context.sync();
    });
    expect(commands).toBe(1);
    host.model.dispatch("REQUEST_UNDO");
    expect(host.values("Sheet1")).toEqual([]);
  });

  it("of 2,000 cells takes far less than the 10 s that one command a cell would", async () => {
    const host = testHost();
    const started = performance.now();
    await host.Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1:T100");
      range.formulas = Array.from({ length: 100 }, (_, row) =>
        Array.from({ length: 20 }, (_unused, column) => (column < 10 ? row * column : `=SUM($A$1:$J$100)+A${row + 1}`)),
      );
      await context.sync();
    });
    expect(performance.now() - started).toBeLessThan(5000);
    expect(host.values("Sheet1")[99]?.[19]).toBe(((99 * 100) / 2) * 45);
  });
});

describe("charts", () => {
  it("get the planned series, follow their table and leave zero out of a narrow axis", async () => {
    const host = await salesHost();
    await host.Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      sheet.getRange("B2:B4").values = [[11.4], [11.3], [11.2]];
      const chart = sheet.charts.add("XYScatterLines", sheet.getRange("B2:B4"), "Columns");
      chart.name = "trend";
      chart.title.text = "pH";
      chart.series.load("items/name");
      await context.sync();
      const [first] = chart.series.items;
      if (first === undefined) throw new Error("Excel invents a series from the source.");
      first.name = "read";
      first.setXAxisValues(sheet.getRange("C2:C4"));
      const second = chart.series.add("again");
      second.setValues(sheet.getRange("D2:D4"));
      second.delete();
      await context.sync();
      expect(chart.series.items).toHaveLength(1);
      context.workbook.tables.getItem("Sales").getDataBodyRange().getRowsBelow(1).values = [["Rob", 11.1, 0.15, ""]];
      await context.sync();
    });
    const [chartId] = host.model.getters.getChartIds(host.model.getters.getActiveSheetId());
    if (chartId === undefined) throw new Error("There is no chart.");
    const definition = host.workbook.charts.definition(chartId);
    expect(definition.dataSource).toMatchObject({ dataSets: [{ dataRange: "B2:B5" }], labelRange: "Sheet1!C2:C5" });
    // 11.1 less half the span of 0.3, on a step of 0.1.
    expect(definition.axesDesign?.y?.min).toBe(10.9);
  });
});

describe("looks", () => {
  it("are read back, null where the cells differ", async () => {
    const host = testHost();
    await host.Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      const range = sheet.getRange("A1:B2");
      range.format.fill.color = "#fffbea";
      range.format.font.bold = true;
      range.format.wrapText = true;
      range.format.horizontalAlignment = "Center";
      range.format.columnWidth = 90;
      sheet.getRange("A1").format.font.bold = false;
      await context.sync();
      range.load("format/fill/color,format/font/bold,format/wrapText,format/horizontalAlignment,format/columnWidth");
      await context.sync();
      const { format } = range;
      expect([
        format.fill.color,
        format.font.bold,
        format.wrapText,
        format.horizontalAlignment,
        format.columnWidth,
      ]).toEqual(["#FFFBEA", null, true, "Center", 90]);
    });
  });

  it("on a condition show where the formula holds", async () => {
    const host = await salesHost();
    await host.Excel.run(async (context) => {
      const format = context.workbook.worksheets.getItem("Sheet1").getRange("B2:B4").conditionalFormats.add("Custom");
      format.custom.rule.formula = "=B2>500";
      format.custom.format.font.color = "#A33B20";
      await context.sync();
    });
    const sheetId = host.model.getters.getActiveSheetId();
    const colors = [1, 2, 3].map((row) => host.model.getters.getCellComputedStyle({ sheetId, row, col: 1 }).textColor);
    expect(colors).toEqual([undefined, "#A33B20", "#A33B20"]);
  });
});
