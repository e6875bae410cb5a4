import { describe, expect, it } from "vitest";

import { parseStructured, structuredText } from "../../../src/workbench/host/formulas/structured-reference.ts";
import {
  FormulaNotUnderstood,
  type FormulaSurroundings,
  FormulaTemplate,
  type TableShape,
} from "../../../src/workbench/host/formulas/translate.ts";

/** The department sales of Microsoft's article "Using structured references with Excel tables", on A1:E7. */
const sales: TableShape = {
  name: "DeptSales",
  area: { sheet: "s1", row: 0, column: 0, rows: 7, columns: 5 },
  headers: ["Sales Person", "Region", "Sales Amount", "% Commission", "Commission Amount"],
};
const odd: TableShape = {
  name: "Odd.1",
  area: { sheet: "s2", row: 4, column: 2, rows: 3, columns: 4 },
  headers: ["a[b]", "it's", "#1", "to, from: x"],
};

const around: FormulaSurroundings = {
  tableNamed: (name) => [sales, odd].find((table) => table.name.toLowerCase() === name.toLowerCase()),
  tableAt: ({ sheet, row, column }) => (sheet === "s1" && row < 7 && column < 5 ? sales : undefined),
  sheetName: (sheet) => (sheet === "s1" ? "Sales" : "Odd things"),
};

const inGrid = (formula: string, row = 1, sheet = "s1"): string =>
  new FormulaTemplate(formula).inGrid({ sheet, row, column: 9 }, around);

describe("a structured reference", () => {
  it.each([
    ["=SUM(DeptSales[Sales Amount])", "=SUM($C$2:$C$7)"],
    ["=SUM(DeptSales[[#Data],[Sales Amount]])", "=SUM($C$2:$C$7)"],
    ["=DeptSales[[#This Row],[Sales Amount]]*2", "=$C2*2"],
    ["=DeptSales[@[Sales Amount]]*DeptSales[@[% Commission]]", "=$C2*$D2"],
    ["=DeptSales[@Region]", "=$B2"],
    ["=DeptSales[[#Headers],[Region]]", "=$B$1"],
    ["=COUNTA(DeptSales[#All])", "=COUNTA($A$1:$E$7)"],
    ["=COUNTA(DeptSales[[#All],[Region]])", "=COUNTA($B$1:$B$7)"],
    ["=SUM(DeptSales[[Sales Amount]:[Commission Amount]])", "=SUM($C$2:$E$7)"],
    ["=SUM(DeptSales[[#This Row],[Sales Amount]:[Commission Amount]])", "=SUM($C2:$E2)"],
    ["=ROWS(DeptSales)", "=ROWS($A$2:$E$7)"],
    ["=ROWS(DeptSales[])", "=ROWS($A$2:$E$7)"],
    ["=COUNTA(DeptSales[ [#Headers] , [Region] ])", "=COUNTA($B$1)"],
    ["=sum(deptsales[SALES AMOUNT])", "=sum($C$2:$C$7)"],
  ])("%s means %s", (formula, expected) => {
    expect(inGrid(formula)).toBe(expected);
  });

  it("names the sheet when it points to another one", () => {
    expect(inGrid("=SUM(DeptSales[Sales Amount])", 1, "s2")).toBe("=SUM(Sales!$C$2:$C$7)");
    expect(inGrid("=Odd.1[[#Headers],['#1]]")).toBe("='Odd things'!$E$5");
  });

  it("reads Excel's escapes for brackets, apostrophes and number signs", () => {
    expect(inGrid("=COUNTA(Odd.1[a'[b']])", 1, "s2")).toBe("=COUNTA($C$6:$C$7)");
    expect(inGrid("=COUNTA(Odd.1[it''s])", 1, "s2")).toBe("=COUNTA($D$6:$D$7)");
    expect(inGrid("=COUNTA(Odd.1[[#Data],[to, from: x]])", 1, "s2")).toBe("=COUNTA($F$6:$F$7)");
  });

  it("needs no table name inside the table itself", () => {
    expect(new FormulaTemplate("=[@[Sales Amount]]*2").inGrid({ sheet: "s1", row: 3, column: 4 }, around)).toBe(
      "=$C4*2",
    );
  });

  it("to this row gives an error value outside the table's rows", () => {
    expect(inGrid("=DeptSales[@Region]", 20)).toBe('=VALUE("this row is outside the table")');
  });

  it.each([
    "=Unknown[x]",
    "=DeptSales[No such column]",
    "=DeptSales[[#Data],[Region]",
    "=DeptSales[[#Totals],[Region]]",
  ])("is refused when it means nothing: %s", (formula) => {
    expect(() => inGrid(formula)).toThrow(FormulaNotUnderstood);
  });

  it("is left alone inside a text, a sheet's name or a name of its own", () => {
    expect(inGrid('="DeptSales[Region]"&DeptSales.Total')).toBe('="DeptSales[Region]"&DeptSales.Total');
    expect(inGrid("='DeptSales[1]'!A1+DeptSales!B2+A1E5+1E5")).toBe("='DeptSales[1]'!A1+DeptSales!B2+A1E5+1E5");
  });

  it("survives being written out again", () => {
    for (const inner of [
      "[#This Row],[Sales Amount]",
      "[#Data],[Region]",
      "#All",
      "Region",
      "[Region]:[Sales Amount]",
      "[#Headers],[#Data],[Region]",
      "",
    ]) {
      const reference = parseStructured(inner);
      if (reference === undefined) throw new Error(`${inner} was not read.`);
      const text = structuredText("DeptSales", reference);
      expect(parseStructured(text.slice("DeptSales[".length, -1))).toEqual(reference);
    }
  });
});

describe("a renaming", () => {
  const cell = { sheet: "s1", row: 1, column: 4 };

  it("of a column changes every formula that names it", () => {
    const template = new FormulaTemplate(
      "=DeptSales[@[Sales Amount]]+SUM(DeptSales[[#Data],[Sales Amount]])+DeptSales[@Region]",
    );
    const renamed = template.renamed(cell, around, {
      table: "DeptSales",
      headers: new Map([["sales amount", "Sales, $ [net]"]]),
    });
    expect(renamed).toBe(
      "=DeptSales[[#This Row],[Sales, $ '[net']]]+SUM(DeptSales[[#Data],[Sales, $ '[net']]])+DeptSales[[#This Row],[Region]]",
    );
  });

  it("of a table changes its name only", () => {
    const template = new FormulaTemplate('=ROWS(DeptSales)&"DeptSales"');
    expect(template.renamed(cell, around, { table: "DeptSales", newTable: "Sales2027", headers: new Map() })).toBe(
      '=ROWS(Sales2027)&"DeptSales"',
    );
  });
});

describe("a text in a formula", () => {
  it("with doubled quotes or a backslash is put together from pieces the grid can read", () => {
    expect(inGrid('="say ""yes"""')).toBe('=("say "&CHAR(34)&"yes"&CHAR(34))');
    expect(inGrid('="C:\\"&A1')).toBe('=("C:"&CHAR(92))&A1');
    expect(inGrid('=IF(A1="","",1)')).toBe('=IF(A1="","",1)');
  });
});
