import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";

import { afterAll, beforeAll, describe, expect, it } from "vitest";

import { writeState, type WrittenFile } from "../../../src/files/write/write-state.ts";
import { cellAddress } from "../../../src/joblog/layout/addresses.ts";
import type { SheetState, WorkbookState } from "../../../src/state/workbook-state.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { NotWorkedOut } from "../../../src/workbench/host/state/shown-values.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { openLog } from "../excel/log/prepared-log.ts";
import { enter, salesHost, testHost } from "../workbench/test-host.ts";
import { hasLibreOffice, savedAgain } from "./libre-office.ts";
import { hasOpenXmlValidator, validateFile } from "./open-xml-validator.ts";
import { at, cellsOf, type Element, listAt, parsed, partsOf } from "./read-parts.ts";

let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "bathsheet-"));
});

afterAll(async () => {
  await rm(folder, { recursive: true });
});

function written(host: Host): WrittenFile {
  const state = host.save();
  return writeState(state, host.shown(state));
}

async function faultsOf(name: string, file: Uint8Array): Promise<readonly unknown[]> {
  const path = join(folder, `${name}.xlsx`);
  await writeFile(path, file);
  const { ok, errors } = await validateFile(path);
  return ok ? errors : [errors, "not ok"];
}

/** A host that opened this one sheet of a file. */
function opened(sheet: Partial<SheetState>, book: Partial<WorkbookState["book"]> = {}): Host {
  const host = testHost();
  const state = host.save();
  host.restore({ book: { ...state.book, ...book }, sheets: state.sheets.map((one) => ({ ...one, ...sheet })) });
  return host;
}

function textOf(parts: ReadonlyMap<string, string>, cell: Element | undefined): string {
  const item = listAt(parsed(parts, "xl/sharedStrings.xml"), "sst", "si")[Number(at(cell, "v"))];
  const text = at(item, "t");
  return typeof text === "string" ? text : String(at(text, "#text"));
}

/** A text whose blanks are kept is an element with an attribute. */
function valueOf(cell: Element | undefined): string {
  const value = at(cell, "v");
  if (typeof value === "string") return value;
  const text = at(value, "#text");
  return typeof text === "string" ? text : "";
}

describe("a saved copy of a log", () => {
  let host: Host;
  let state: WorkbookState;
  let copy: WrittenFile;
  let parts: ReadonlyMap<string, string>;

  beforeAll(async () => {
    host = await openLog(firstTwoDays);
    state = host.save();
    copy = writeState(state, host.shown(state));
    parts = partsOf(copy.file);
  }, 240_000);

  it.skipIf(!hasOpenXmlValidator)("passes the Open XML validator [needs the Open XML validator]", async () => {
    expect(await faultsOf("log", copy.file)).toEqual([]);
  });

  it("loses nothing, and leaves the blank first sheet out", () => {
    expect(copy.lost).toEqual([]);
    const names = listAt(parsed(parts, "xl/workbook.xml"), "workbook", "sheets", "sheet").map(
      (sheet) => sheet["@name"],
    );
    expect(state.sheets[0]?.name).toBe("Sheet1");
    expect(names).toEqual(state.sheets.slice(1).map(({ name }) => name));
  });

  it("holds every formula with the value that it showed, functions of the add-in by the prefix", () => {
    const [, ...sheets] = state.sheets;
    let formulas = 0;
    sheets.forEach((sheet, index) => {
      const cells = cellsOf(parts, index + 1);
      const shown = host.values(sheet.name);
      for (const [row, column] of sheet.worked) {
        const cell = cells.get(host.workbook.localAddressOf({ sheet: sheet.id, row, column, rows: 1, columns: 1 }));
        const value = shown[row]?.[column];
        expect(at(cell, "f")).toBeTruthy();
        if (typeof value === "number") expect(Number(at(cell, "v"))).toBe(value);
        else if (typeof value === "boolean") expect([at(cell, "@t"), at(cell, "v")]).toEqual(["b", value ? "1" : "0"]);
        else expect(at(cell, "@t")).toMatch(/^(?:str|e)$/);
        formulas += 1;
      }
    });
    expect(formulas).toBeGreaterThan(1000);
    const all = [...parts.values()].join("");
    expect(all).toContain("_xldudf_BATH_");
    expect(all).not.toMatch(/\bBATH\.[A-Z]/);
  });

  it.skipIf(!hasLibreOffice)(
    "opens in LibreOffice with every value that a formula showed [needs LibreOffice]",
    { tags: "landing", timeout: 120_000 },
    async () => {
      const again = partsOf(await savedAgain(copy.file));
      const strings = listAt(parsed(again, "xl/sharedStrings.xml"), "sst", "si").map((item) => {
        const text = at(item, "t");
        return typeof text === "string" ? text : String(at(text, "#text"));
      });
      let compared = 0;
      const [, ...sheets] = state.sheets;
      sheets.forEach((sheet, index) => {
        const [before, after] = [cellsOf(parts, index + 1), cellsOf(again, index + 1)];
        for (const [row, column] of sheet.worked) {
          const place = cellAddress(row, column);
          const [wanted, found] = [before.get(place), after.get(place)];
          const text = valueOf(found);
          const shown = at(found, "@t") === "s" ? (strings[Number(text)] ?? "") : text;
          if (at(wanted, "@t") === undefined) expect(Number(shown), place).toBeCloseTo(Number(at(wanted, "v")), 9);
          else expect(shown, `${sheet.name}!${place}`).toBe(valueOf(wanted));
          compared += 1;
        }
      });
      expect(compared).toBeGreaterThan(1000);
    },
  );

  it("holds every table with its calculated columns, every name, every rule and every chart by its name", () => {
    const tables = [...parts.keys()].filter((name) => name.startsWith("xl/tables/")).map((name) => parsed(parts, name));
    const wanted = state.sheets.flatMap((sheet) => sheet.tables);
    expect(tables.map((table) => [at(table, "table", "@name"), at(table, "table", "@ref")])).toEqual(
      wanted.map(({ name, area }) => [name, area]),
    );
    const calculated = tables
      .flatMap((table) => listAt(table, "table", "tableColumns", "tableColumn"))
      .filter((column) => at(column, "calculatedColumnFormula") !== undefined);
    expect(calculated.length).toBe(wanted.flatMap((table) => table.calculated).length);
    const names = listAt(parsed(parts, "xl/workbook.xml"), "workbook", "definedNames", "definedName").map(
      (name) => name["@name"],
    );
    expect(names.filter((name) => !String(name).startsWith("_xlnm."))).toEqual(
      state.book.names.map(({ name }) => name),
    );
    const charts = [...parts]
      .filter(([name]) => /drawings\/drawing\d+\.xml$/.test(name))
      .flatMap(([, xml]) => [...xml.matchAll(/cNvPr id="\d+" name="([^"]*)"/g)].map(([, name]) => name));
    expect(charts).toEqual(state.sheets.flatMap(({ figures }) => figures.map(({ chart }) => chart?.name)));
    expect(charts).toContain("Bathsheet.pH");
    const rules = [...parts]
      .filter(([name]) => name.startsWith("xl/worksheets/sheet"))
      .flatMap(([name]) => listAt(parsed(parts, name), "worksheet", "dataValidations", "dataValidation"));
    expect(rules.length).toBe(state.sheets.flatMap(({ validations }) => validations).length);
  });
});

describe("a saved copy of what a person made", () => {
  it.skipIf(!hasOpenXmlValidator)("is valid with every look the grid has [needs the Open XML validator]", async () => {
    const host = await salesHost();
    const [sheetId = ""] = host.workbook.sheets.ids();
    const { grid } = host.workbook;
    grid.do("SET_FORMATTING", {
      sheetId,
      target: [{ top: 0, left: 0, bottom: 0, right: 0 }],
      style: {
        strikethrough: true,
        bold: true,
        italic: true,
        underline: true,
        fontSize: 14,
        textColor: "#FF0000",
        fillColor: "#00FF00",
        align: "center",
        verticalAlign: "middle",
        wrapping: "wrap",
        rotation: 0.5,
      },
    });
    grid.do("SET_ZONE_BORDERS", {
      sheetId,
      target: [{ top: 5, left: 0, bottom: 6, right: 1 }],
      border: { position: "all", color: "#0000FF", style: "dashed" },
    });
    grid.do("ADD_MERGE", { sheetId, target: [{ top: 8, left: 0, bottom: 9, right: 1 }] });
    grid.do("HIDE_COLUMNS_ROWS", { sheetId, dimension: "ROW", elements: [11] });
    grid.do("HIDE_COLUMNS_ROWS", { sheetId, dimension: "COL", elements: [7] });
    grid.do("FREEZE_ROWS", { sheetId, quantity: 1 });
    grid.do("LOCK_SHEET", { sheetId });
    const { file, lost } = written(host);
    expect(lost).toEqual([]);
    expect(await faultsOf("looks", file)).toEqual([]);
    const font = /<font><b\/><i\/><strike\/><u\/><sz val="14"\/><color rgb="FFFF0000"\/>/;
    expect(partsOf(file).get("xl/styles.xml")).toMatch(font);
  });

  it("keeps text the text it is, marks what looks typed, and gives a formula that the grid lacks its kept value", async () => {
    const texts = [
      "50%",
      "007",
      "2026-01-02",
      "=text",
      "'quoted",
      "  two",
      "a\nb",
      '<&">',
      "tab\u0001",
      "_x000D_",
      "plain",
    ];
    const host = opened({
      rows: 100,
      columns: 26,
      looks: [{}],
      formulas: ['=REPT("ab",2)', "=SIGN(-2)"],
      typed: texts.map((text, row) => [row, 0, 0, text] as const),
      worked: [
        [0, 1, 0, 0],
        [1, 1, 0, 1],
      ],
      kept: [[0, 1, "abab"]],
      dressed: [],
    });
    const { file } = written(host);
    const parts = partsOf(file);
    const cells = cellsOf(parts, 1);
    const shown = texts.map((_, row) => textOf(parts, cells.get(`A${String(row + 1)}`)));
    expect(shown.slice(0, 8)).toEqual(texts.slice(0, 8));
    expect(shown.slice(8)).toEqual(["tab_x0001_", "_x005F_x000D_", "plain"]);
    const styles = listAt(parsed(parts, "xl/styles.xml"), "styleSheet", "cellXfs", "xf");
    const quoted = texts.filter(
      (_, row) => styles[Number(at(cells.get(`A${String(row + 1)}`), "@s") ?? 0)]?.["@quotePrefix"] === "1",
    );
    expect(quoted).toEqual(["50%", "007", "2026-01-02", "=text", "'quoted"]);
    expect([at(cells.get("B1"), "f"), at(cells.get("B1"), "v")]).toEqual(['REPT("ab",2)', "abab"]);
    // The grid knows no SIGN: without a value of a file Excel is asked to work it out.
    expect(at(cells.get("B2"), "v")).toBeUndefined();
    expect(at(cells.get("B2"), "f", "@ca")).toBe("1");
    if (hasOpenXmlValidator) expect(await faultsOf("texts", file)).toEqual([]);
  });

  it("keeps every digit of a date", () => {
    const when = 46447.123456789012;
    const { file } = written(opened({ looks: [{ format: "yyyy-mm-dd hh:mm" }], typed: [[0, 0, 0, when]] }));
    expect(Number(at(cellsOf(partsOf(file), 1).get("A1"), "v"))).toBe(when);
  });

  it("says where a formula's results stand", async () => {
    const host = testHost();
    await enter(host, "A1", [["=BATH.SPREAD(5)"]]);
    const { file } = written(host);
    const cells = cellsOf(partsOf(file), 1);
    expect(at(cells.get("A1"), "f")).toMatchObject({
      "@t": "array",
      "@ref": "A1:C2",
      "#text": "_xldudf_BATH_SPREAD(5)",
    });
    expect(["A1", "B1", "C1", "A2", "B2", "C2"].map((place) => Number(at(cells.get(place), "v")))).toEqual([
      5, 6, 7, 8, 9, 10,
    ]);
    expect(at(cells.get("B1"), "f")).toBeUndefined();
  });

  it("names a sheet with an apostrophe, and prefixes what came after the format's first edition", () => {
    const host = opened(
      {
        name: "Joe's",
        looks: [{}],
        formulas: ['=IFNA(MAXIFS(A1:A2,A1:A2,">0"),XLOOKUP(1,A1:A2,A1:A2))'],
        typed: [[0, 0, 0, 1]],
        worked: [[2, 0, 0, 0]],
        print: { printArea: "A1:B9", printTitleRows: "$1:$2", printTitleColumns: "$A:$A" },
      },
      { names: [{ name: "Rate", refersTo: "0.07" }] },
    );
    const parts = partsOf(written(host).file);
    const names = listAt(parsed(parts, "xl/workbook.xml"), "workbook", "definedNames", "definedName");
    expect(names.map((name) => [name["@name"], name["#text"]])).toEqual([
      ["Rate", "0.07"],
      ["_xlnm.Print_Area", "'Joe''s'!$A$1:$B$9"],
      ["_xlnm.Print_Titles", "'Joe''s'!$A:$A,'Joe''s'!$1:$2"],
    ]);
    expect(at(cellsOf(parts, 1).get("A3"), "f")).toBe(
      '_xlfn.IFNA(_xlfn.MAXIFS(A1:A2,A1:A2,">0"),_xlfn.XLOOKUP(1,A1:A2,A1:A2))',
    );
  });

  it("makes headings of a table texts, equal in cell and table", () => {
    const host = opened({
      looks: [{}],
      typed: [
        [0, 0, 0, 2026],
        [0, 1, 0, "two\nlines"],
        [1, 0, 0, 1],
      ],
      tables: [
        {
          name: "Years",
          area: "A1:B2",
          style: "TableStyleMedium2",
          headerRow: true,
          totalsRow: false,
          filterButtons: true,
          bandedRows: true,
          bandedColumns: false,
          firstColumn: false,
          lastColumn: false,
          calculated: [],
        },
      ],
    });
    const parts = partsOf(written(host).file);
    expect([textOf(parts, cellsOf(parts, 1).get("A1")), textOf(parts, cellsOf(parts, 1).get("B1"))]).toEqual([
      "2026",
      "two\nlines",
    ]);
    const columns = listAt(parsed(parts, "xl/tables/table1.xml"), "table", "tableColumns", "tableColumn");
    expect(columns.map((column) => column["@name"])).toEqual(["2026", "two_x000A_lines"]);
  });

  it("is told what an .xlsx file cannot hold", () => {
    const host = opened({
      looks: [{}],
      typed: [[0, 0, 0, 1]],
      validations: [
        { ranges: ["A1"], criterion: { type: "isEmail", values: [] }, blocks: true },
        {
          ranges: ["A2"],
          criterion: { type: "dateIsOnOrAfter", values: ["=46447"], dateValue: "exactDate" },
          blocks: true,
        },
        {
          ranges: ["A3"],
          criterion: { type: "isBetween", values: ["1", "9"] },
          blocks: true,
          words: { rule: { wholeNumber: {} } },
        },
      ],
    });
    const { file, lost } = written(host);
    expect(lost).toEqual(["Sheet1: the rule for entries in A1"]);
    const rules = listAt(
      parsed(partsOf(file), "xl/worksheets/sheet1.xml"),
      "worksheet",
      "dataValidations",
      "dataValidation",
    );
    expect(rules.map((rule) => [rule["@type"], rule["@operator"], at(rule, "formula1"), at(rule, "formula2")])).toEqual(
      [
        ["date", "greaterThanOrEqual", "46447", undefined],
        ["whole", undefined, "1", "9"],
      ],
    );
  });

  it("is not made while a function has not answered", async () => {
    const host = await salesHost();
    host.answerLate({ until: "#BUSY!", seed: 1 });
    await enter(host, "F1", [["=BATH.TWICE(B2)"]]);
    expect(() => written(host)).toThrow(NotWorkedOut);
    host.workbook.answers.answerAll();
    const { file } = written(host);
    expect(Number(at(cellsOf(partsOf(file), 1).get("F1"), "v"))).toBe(520);
  });

  it("is not made with a function of the add-in that is not loaded", async () => {
    const host = testHost();
    await enter(host, "A1", [["=BATH.NOSUCH(1)"]]);
    expect(() => written(host)).toThrow("Sheet1!A1 is not worked out yet.");
  });
});
