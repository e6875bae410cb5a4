import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";

import { afterAll, beforeAll, describe, expect, it } from "vitest";

import type { KnownValue } from "../../../src/files/cell-value.ts";
import { writeWorkbook } from "../../../src/files/xlsx-writer.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { cellAddress } from "../../../src/joblog/layout/addresses.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { hasOpenXmlValidator, validateFile } from "./open-xml-validator.ts";
import { at, cellsOf, listAt, parsed, partsOf } from "./read-parts.ts";

const plan = layOut(jobLog, { system: "US" }, firstTwoDays);

/** Made-up values, one of every kind in turn, so that a mix-up of cells or kinds shows. */
function madeUp(row: number, column: number): KnownValue {
  return (
    [row * 100 + column + 0.25, `words ${String(row)} & <${String(column)}>`, { error: "#N/A" }, "", row % 2 === 0][
      (row + column) % 5
    ] ?? 0
  );
}

let file: Uint8Array;
let parts: ReadonlyMap<string, string>;
let folder: string;

beforeAll(async () => {
  file = await writeWorkbook(plan, (_sheet, row, column) => madeUp(row, column));
  parts = partsOf(file);
  folder = await mkdtemp(join(tmpdir(), "bathsheet-"));
});

afterAll(async () => {
  await rm(folder, { recursive: true });
});

function shown(cell: unknown): KnownValue | undefined {
  const value = at(cell, "v");
  const text = typeof value === "string" ? value : "";
  switch (at(cell, "@t")) {
    case "str":
      return text;
    case "e":
      return { error: text };
    case "b":
      return text === "1";
    case undefined:
      return Number(text);
    default:
      return undefined;
  }
}

function sharedStrings(): readonly string[] {
  return listAt(parsed(parts, "xl/sharedStrings.xml"), "sst", "si").map((item) => {
    const text = at(item, "t");
    return typeof text === "string" ? text : String(at(text, "#text"));
  });
}

describe("the written file", () => {
  it.skipIf(!hasOpenXmlValidator)("passes the Open XML validator [needs the Open XML validator]", async () => {
    const path = join(folder, "log.xlsx");
    await writeFile(path, file);
    const result = await validateFile(path);
    expect(result.errors).toEqual([]);
    expect(result.ok).toBe(true);
  });

  it("stores every formula's value beside it, errors, truth values and empty texts too", () => {
    let formulas = 0;
    plan.sheets.forEach((sheet, index) => {
      const cells = cellsOf(parts, index + 1);
      for (const cell of sheet.cells) {
        if (cell.kind !== "formula") continue;
        const stored = cells.get(cellAddress(cell.row, cell.column));
        expect(at(stored, "f"), `${sheet.name} ${cellAddress(cell.row, cell.column)}`).toBeDefined();
        expect(shown(stored), `${sheet.name} ${cellAddress(cell.row, cell.column)}`).toEqual(
          madeUp(cell.row, cell.column),
        );
        formulas += 1;
      }
    });
    expect(formulas).toBeGreaterThan(200);
  });

  it("stores every typed value as it was given", () => {
    const strings = sharedStrings();
    plan.sheets.forEach((sheet, index) => {
      const cells = cellsOf(parts, index + 1);
      for (const cell of sheet.cells) {
        if (cell.kind !== "value") continue;
        const stored = cells.get(cellAddress(cell.row, cell.column));
        const value = at(stored, "@t") === "s" ? strings[Number(at(stored, "v"))] : shown(stored);
        expect(value, `${sheet.name} ${cellAddress(cell.row, cell.column)}`).toEqual(cell.value);
      }
    });
  });

  it("spells add-in functions the way Excel looks for them, in cells and in calculated columns", () => {
    const everything = [...parts]
      .filter(([name]) => name.startsWith("xl/"))
      .map(([, xml]) => xml)
      .join("\n");
    expect(everything).not.toMatch(/BATH\./);
    for (const name of ["TANKVOLUME", "DOSE", "VERDICT", "TOPUPRANGE", "TRIGGER"])
      expect(everything).toContain(`_xldudf_BATH_${name}(`);
    const calculated = [...parts]
      .filter(([name]) => name.startsWith("xl/tables/"))
      .map(([, xml]) => xml)
      .join("\n");
    expect(calculated).toContain("_xldudf_BATH_VERDICT(");
    expect(calculated).toContain("_xlfn.MAXIFS(");
  });

  it("does not make Excel work everything out at opening", () => {
    const calculation = at(parsed(parts, "xl/workbook.xml"), "workbook", "calcPr");
    expect(at(calculation, "@fullCalcOnLoad")).toBeUndefined();
    expect(Number(at(calculation, "@calcId"))).toBeGreaterThanOrEqual(191029);
    expect([...parts.values()].join("")).not.toContain("fullCalcOnLoad");
  });

  it("makes each planned table with its headers and calculated columns, without filter buttons", () => {
    const written = [...parts]
      .filter(([name]) => name.startsWith("xl/tables/"))
      .map(([name]) => at(parsed(parts, name), "table"));
    const planned = plan.sheets.flatMap((sheet) => sheet.tables);
    expect(written).toHaveLength(planned.length);
    for (const table of planned) {
      const one = written.find((candidate) => at(candidate, "@name") === table.name);
      const columns = listAt(one, "tableColumns", "tableColumn");
      expect(columns.map((column) => column["@name"])).toEqual(table.columns.map((column) => column.header));
      expect(columns.map((column) => column["calculatedColumnFormula"] !== undefined)).toEqual(
        table.columns.map((column) => column.formula !== undefined),
      );
      expect(at(one, "autoFilter")).toBeUndefined();
    }
  });

  it("defines every name on its cell", () => {
    const names = listAt(parsed(parts, "xl/workbook.xml"), "workbook", "definedNames", "definedName");
    for (const { name, sheet, row, column } of plan.names) {
      const target = names.find((one) => one["@name"] === name)?.["#text"];
      const address = cellAddress(row, column).replace(/([A-Z]+)(\d+)/, "$$$1$$$2");
      expect(String(target).replaceAll("'", ""), name).toBe(`${sheet}!${address}`);
    }
  });

  it("carries every check and color rule", () => {
    plan.sheets.forEach((sheet, index) => {
      const worksheet = at(parsed(parts, `xl/worksheets/sheet${String(index + 1)}.xml`), "worksheet");
      expect(listAt(worksheet, "dataValidations", "dataValidation").length, sheet.name).toBe(sheet.validations.length);
      expect(
        listAt(worksheet, "conditionalFormatting").flatMap((one) => listAt(one, "cfRule")).length,
        sheet.name,
      ).toBe(sheet.conditionalFormats.length);
    });
  });

  it("draws the native scatter chart from the readings, with a copy of their values", () => {
    const [chart = ""] = [...parts].flatMap(([name, text]) =>
      name.startsWith("xl/charts/chart") && text.includes("<c:scatterChart>") ? [name] : [],
    );
    const series = listAt(parsed(parts, chart), "c:chartSpace", "c:chart", "c:plotArea", "c:scatterChart", "c:ser");
    expect(series).toHaveLength(3);
    const readings = plan.sheets.flatMap(({ tables }) => tables).find(({ id }) => id === "readings")?.area;
    // Ten readings below their headings; the plan counts rows from 0.
    const [first, last] = [(readings?.row ?? 0) + 2, (readings?.row ?? 0) + 11].map(String);
    for (const one of series) {
      expect(String(at(one, "c:yVal", "c:numRef", "c:f"))).toMatch(
        new RegExp(`^'?Readings'?!\\$[A-Z]+\\$${first ?? ""}:\\$[A-Z]+\\$${last ?? ""}$`),
      );
      expect(Number(at(one, "c:xVal", "c:numRef", "c:numCache", "c:ptCount", "@val"))).toBe(10);
    }
  });

  it("freezes headers, repeats them in print and puts the caution in the footer", () => {
    plan.sheets.forEach((sheet, index) => {
      const worksheet = at(parsed(parts, `xl/worksheets/sheet${String(index + 1)}.xml`), "worksheet");
      expect(at(worksheet, "headerFooter", "oddFooter"), sheet.name).toContain(
        "Arithmetic aid. The label, SDS and permit win.",
      );
      expect(at(worksheet, "sheetViews", "sheetView", "pane", "@ySplit"), sheet.name).toBe(
        sheet.frozenRows > 0 ? String(sheet.frozenRows) : undefined,
      );
    });
    const titles = listAt(parsed(parts, "xl/workbook.xml"), "workbook", "definedNames", "definedName").filter(
      (name) => name["@name"] === "_xlnm.Print_Titles",
    );
    expect(titles).toHaveLength(
      plan.sheets.filter((sheet) => sheet.titleRows !== undefined || sheet.pagesWide > 1).length,
    );
  });

  it("folds helper columns away as a group that one button opens", () => {
    plan.sheets.forEach((sheet, index) => {
      const worksheet = at(parsed(parts, `xl/worksheets/sheet${String(index + 1)}.xml`), "worksheet");
      const grouped = listAt(worksheet, "cols", "col").flatMap((one) => {
        const [first, last] = [Number(one["@min"]) - 1, Number(one["@max"]) - 1];
        if (one["@outlineLevel"] === undefined) return [];
        expect(one["@hidden"], `${sheet.name} ${String(first)}`).toBe("1");
        return Array.from({ length: last - first + 1 }, (_, at) => first + at);
      });
      const folded = (sheet.folded ?? []).flatMap(({ first, last }) =>
        Array.from({ length: last - first + 1 }, (_, at) => first + at),
      );
      expect(grouped, sheet.name).toEqual(folded);
      expect(at(worksheet, "sheetFormatPr", "@outlineLevelCol"), sheet.name).toBe(folded.length > 0 ? "1" : undefined);
    });
  });

  it("is the same file every time", async () => {
    const again = await writeWorkbook(plan, (_sheet, row, column) => madeUp(row, column));
    expect(Buffer.from(again).equals(Buffer.from(file))).toBe(true);
  });

  it("refuses to be written with a formula whose value is not known", async () => {
    await expect(writeWorkbook(plan, () => undefined)).rejects.toThrow("has no value to store beside it");
  });
});
