import { describe, expect, it } from "vitest";

import { enter, read, salesHost } from "./test-host.ts";

const commission = "=Sales[[#This Row],[Amount, $]]*Sales[[#This Row],[Rate]]";

/** Types as a person does. */
function type(host: Awaited<ReturnType<typeof salesHost>>, row: number, col: number, content: string): void {
  host.model.dispatch("UPDATE_CELL", { sheetId: host.model.getters.getActiveSheetId(), row, col, content });
}

async function tableAddress(host: Awaited<ReturnType<typeof salesHost>>): Promise<string> {
  return host.Excel.run(async (context) => {
    const range = context.workbook.tables.getItem("Sales").getRange().load("address");
    await context.sync();
    return range.address;
  });
}

describe("a table", () => {
  it("reads its formulas back as they were written and computes them", async () => {
    const host = await salesHost();
    expect(await read(host, "D2:D4", "formulas")).toEqual([[commission], [commission], [commission]]);
    expect(await read(host, "D2:D4", "values")).toEqual([[26], [99], [141]]);
  });

  it("grows when rows are written beneath it, and fills its calculated columns", async () => {
    const host = await salesHost();
    await enter(host, "F1", [["=SUM(Sales[Amount, $])"]]);
    await host.Excel.run(async (context) => {
      const rows = context.workbook.tables.getItem("Sales").getDataBodyRange().getRowsBelow(2);
      rows.values = [
        ["Erich", 410, 0.1, ""],
        ["Dafna", 800, 0.15, ""],
      ];
      await context.sync();
    });
    expect(await tableAddress(host)).toBe("Sheet1!A1:D6");
    expect(await read(host, "D5:D6", "values")).toEqual([[41], [120]]);
    expect(await read(host, "D6", "formulas")).toEqual([[commission]]);
    expect(await read(host, "F1", "values")).toEqual([[3070]]);
    expect(await read(host, "F1", "formulas")).toEqual([["=SUM(Sales[Amount, $])"]]);
  });

  it("grows by resize too, with blank cells in the new row", async () => {
    const host = await salesHost();
    await host.Excel.run(async (context) => {
      const table = context.workbook.tables.getItem("Sales");
      table.resize("A1:D5");
      table.rows.load("count");
      await context.sync();
      expect(table.rows.count).toBe(4);
    });
    expect(await read(host, "A5:D5", "values")).toEqual([["", "", "", 0]]);
  });

  it("grows when a person types beneath its last row", async () => {
    const host = await salesHost();
    type(host, 4, 0, "Rob");
    expect(await tableAddress(host)).toBe("Sheet1!A1:D5");
    type(host, 4, 1, "900");
    type(host, 4, 2, "15%");
    expect(await read(host, "D5", "values")).toEqual([[135]]);
  });

  it("goes on filling a calculated column in which one cell was overwritten", async () => {
    const host = await salesHost();
    type(host, 3, 3, "7");
    type(host, 4, 0, "Rob");
    expect(await read(host, "D4:D5", "formulas")).toEqual([[7], [commission]]);
  });

  it("fills relative references as a copy down would", async () => {
    const host = await salesHost();
    await enter(host, "D2:D4", [["=B2*2"], ["=B3*2"], ["=B4*2"]]);
    type(host, 4, 0, "Rob");
    expect(await read(host, "D5", "formulas")).toEqual([["=B5*2"]]);
  });

  it("does not fill a column of plain values", async () => {
    const host = await salesHost();
    type(host, 4, 0, "Rob");
    expect(await read(host, "B5:C5", "values")).toEqual([["", ""]]);
  });

  it("gives a new row the formats and validation of the rows above", async () => {
    const host = await salesHost();
    await host.Excel.run(async (context) => {
      const rates = context.workbook.worksheets.getItem("Sheet1").getRange("C2:C4");
      rates.numberFormat = [["0.0%"], ["0.0%"], ["0.0%"]];
      rates.dataValidation.rule = { decimal: { formula1: 0, formula2: 1, operator: "Between" } };
      rates.dataValidation.errorAlert = { showAlert: true, style: "Stop", title: "Rate", message: "0 to 1." };
      await context.sync();
    });
    type(host, 4, 0, "Rob");
    expect(await read(host, "C5", "numberFormat")).toEqual([["0.0%"]]);
    const cell = { sheet: host.model.getters.getActiveSheetId(), row: 4, column: 2 };
    expect(host.workbook.validations.refusalAt(cell)).toEqual(
      expect.objectContaining({ title: "Rate", message: "0 to 1." }),
    );
  });

  it("offers a new row in every list of choices that covers its column", async () => {
    const host = await salesHost();
    await host.Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.add("Choice");
      for (const [cell, source] of [
        ["A1", "='Sheet1'!$A$2:$A$4"],
        ["A2", "='Sheet1'!$A$2:$A$3"],
      ] as const) {
        sheet.getRange(cell).dataValidation.rule = { list: { inCellDropDown: true, source } };
      }
      await context.sync();
    });
    type(host, 4, 0, "Rob");
    const sources = await host.Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Choice");
      const found = ["A1", "A2"].map((cell) => sheet.getRange(cell).dataValidation.load("rule"));
      await context.sync();
      return found.map(({ rule }) => rule.list?.source);
    });
    expect(sources).toEqual(["=Sheet1!$A$2:$A$5", "='Sheet1'!$A$2:$A$3"]);
  });

  it("keeps its formulas when rows are inserted above or within it", async () => {
    const host = await salesHost();
    const sheetId = host.model.getters.getActiveSheetId();
    host.model.dispatch("ADD_COLUMNS_ROWS", {
      sheetId,
      sheetName: "Sheet1",
      dimension: "ROW",
      base: 0,
      quantity: 2,
      position: "before",
    });
    host.model.dispatch("ADD_COLUMNS_ROWS", {
      sheetId,
      sheetName: "Sheet1",
      dimension: "ROW",
      base: 3,
      quantity: 1,
      position: "after",
    });
    expect(await tableAddress(host)).toBe("Sheet1!A3:D7");
    expect(await read(host, "D7", "formulas")).toEqual([[commission]]);
    expect(await read(host, "D7", "values")).toEqual([[141]]);
  });

  it("keeps every formula that names a column when its header is typed over", async () => {
    const host = await salesHost();
    await enter(host, "F1", [["=MAX(Sales[Rate])"]]);
    type(host, 0, 2, "Share");
    expect(await read(host, "D2", "formulas")).toEqual([
      ["=Sales[[#This Row],[Amount, $]]*Sales[[#This Row],[Share]]"],
    ]);
    expect(await read(host, "F1", "formulas")).toEqual([["=MAX(Sales[Share])"]]);
    type(host, 4, 0, "Rob");
    expect(await read(host, "D5", "formulas")).toEqual([
      ["=Sales[[#This Row],[Amount, $]]*Sales[[#This Row],[Share]]"],
    ]);
  });

  it("keeps every formula when it gets another name", async () => {
    const host = await salesHost();
    await host.Excel.run(async (context) => {
      context.workbook.tables.getItem("Sales").name = "Deals";
      await context.sync();
    });
    expect(await read(host, "D2", "formulas")).toEqual([["=Deals[[#This Row],[Amount, $]]*Deals[[#This Row],[Rate]]"]]);
    type(host, 4, 0, "Rob");
    expect(await read(host, "D5", "formulas")).toEqual([["=Deals[[#This Row],[Amount, $]]*Deals[[#This Row],[Rate]]"]]);
  });

  it("names a column that a person adds at its right edge", async () => {
    const host = await salesHost();
    type(host, 1, 4, "extra");
    expect(await read(host, "E1", "values")).toEqual([["Column1"]]);
  });

  it("takes a structured reference that a person types anywhere", async () => {
    const host = await salesHost();
    type(host, 8, 0, "=COUNTA(Sales[Person])");
    expect(await read(host, "A9", "values")).toEqual([[3]]);
    expect(await read(host, "A9", "formulas")).toEqual([["=COUNTA(Sales[Person])"]]);
  });

  it("forgets a structured formula that a person overwrites", async () => {
    const host = await salesHost();
    type(host, 1, 3, "=B2*0.5");
    expect(await read(host, "D2", "formulas")).toEqual([["=B2*0.5"]]);
  });

  it("comes back whole when the growth is undone", async () => {
    const host = await salesHost();
    await host.Excel.run(async (context) => {
      context.workbook.tables.getItem("Sales").getDataBodyRange().getRowsBelow(1).values = [["Rob", 900, 0.15, ""]];
      await context.sync();
    });
    host.model.dispatch("REQUEST_UNDO");
    expect(await tableAddress(host)).toBe("Sheet1!A1:D4");
    expect(host.values("Sheet1")).toHaveLength(4);
    expect(await read(host, "D4", "formulas")).toEqual([[commission]]);
  });
});

describe("a named cell", () => {
  it("may have dots in its name and stands in formulas", async () => {
    const host = await salesHost();
    await host.Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      context.workbook.names.add("Unit.System", sheet.getRange("H1"));
      sheet.getRange("H1").values = [["US"]];
      sheet.getRange("H2").formulas = [['=Unit.System&" units"']];
      const named = context.workbook.names.getItem("unit.system").load("name,value");
      const range = context.workbook.names.getItem("Unit.System").getRange().load("address,values");
      await context.sync();
      expect([named.name, named.value, range.address, range.values]).toEqual([
        "Unit.System",
        "=Sheet1!$H$1",
        "Sheet1!H1",
        [["US"]],
      ]);
    });
    expect(await read(host, "H2", "values")).toEqual([["US units"]]);
  });
});
