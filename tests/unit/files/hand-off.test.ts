import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";

import { strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";

import type { KnownValue } from "../../../src/files/cell-value.ts";
import { valuesOnly } from "../../../src/files/hand-off.ts";
import { FileRefused } from "../../../src/files/unpack.ts";
import { writeWorkbook } from "../../../src/files/xlsx-writer.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { hasOpenXmlValidator, validateFile } from "./open-xml-validator.ts";
import { at, cellsOf, listAt, parsed, partsOf } from "./read-parts.ts";

const plan = layOut(jobLog, { system: "US" }, firstTwoDays);

function madeUp(row: number, column: number): KnownValue {
  return (
    [row * 100 + column + 0.25, `words ${String(row)} & <${String(column)}>`, { error: "#N/A" }, "", row % 2 === 0][
      (row + column) % 5
    ] ?? 0
  );
}

/** The written log as Excel saves it: with an order of calculation, a pane to open, and metadata on a formula. */
function asExcelSaves(file: Uint8Array): Uint8Array {
  const parts = unzipSync(file);
  const text = (name: string): string => new TextDecoder().decode(parts[name]);
  const override = (part: string, type: string): string =>
    `<Override PartName="/${part}" ContentType="application/vnd.${type}+xml"/>`;
  parts["[Content_Types].xml"] = strToU8(
    text("[Content_Types].xml").replace(
      "</Types>",
      `${override("xl/calcChain.xml", "openxmlformats-officedocument.spreadsheetml.calcChain")}${override("xl/webextensions/taskpanes.xml", "ms-office.webextensiontaskpanes")}</Types>`,
    ),
  );
  parts["xl/_rels/workbook.xml.rels"] = strToU8(
    text("xl/_rels/workbook.xml.rels").replace(
      "</Relationships>",
      '<Relationship Id="rIdCalc" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/calcChain" Target="calcChain.xml"/></Relationships>',
    ),
  );
  parts["_rels/.rels"] = strToU8(
    text("_rels/.rels").replace(
      "</Relationships>",
      '<Relationship Id="rIdPane" Type="http://schemas.microsoft.com/office/2011/relationships/webextensiontaskpanes" Target="xl/webextensions/taskpanes.xml"/></Relationships>',
    ),
  );
  parts["xl/calcChain.xml"] = strToU8(
    '<calcChain xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><c r="A1" i="1"/></calcChain>',
  );
  parts["xl/webextensions/taskpanes.xml"] = strToU8(
    '<wetp:taskpanes xmlns:wetp="http://schemas.microsoft.com/office/webextensions/taskpanes/2010/11"/>',
  );
  return zipSync(parts);
}

let before: ReadonlyMap<string, string>;
let copy: Uint8Array;
let after: ReadonlyMap<string, string>;

beforeAll(async () => {
  const file = asExcelSaves(await writeWorkbook(plan, (_sheet, row, column) => madeUp(row, column)));
  before = partsOf(file);
  copy = valuesOnly(file);
  after = partsOf(copy);
}, 60_000);

describe("a hand-off copy", () => {
  it("holds no formula, in no cell and no table column, and no name of an add-in function", () => {
    for (const [name, xml] of after) {
      if (name.startsWith("xl/worksheets/"))
        expect(/<sheetData>[\s\S]*<\/sheetData>/.exec(xml)?.[0] ?? "", name).not.toMatch(/<f[ >]/);
      if (name.startsWith("xl/tables/")) expect(xml, name).not.toContain("calculatedColumnFormula");
      expect(xml, name).not.toContain("_xldudf_");
    }
  });

  it("shows in every cell what the workbook shows, in the same look", () => {
    let values = 0;
    plan.sheets.forEach((sheet, index) => {
      const copied = cellsOf(after, index + 1);
      for (const [address, cell] of cellsOf(before, index + 1)) {
        const one = copied.get(address);
        for (const part of ["v", "@t", "@s"]) expect(at(one, part), `${sheet.name} ${address}`).toEqual(at(cell, part));
        values += at(cell, "v") === undefined ? 0 : 1;
      }
    });
    expect(values).toBeGreaterThan(1000);
    expect(after.get("xl/sharedStrings.xml")).toBe(before.get("xl/sharedStrings.xml"));
  });

  it("keeps tables, names, checks, colors and charts", () => {
    for (const part of [...before.keys()].filter((name) => /^xl\/(charts|drawings|styles)/.test(name)))
      expect(after.get(part), part).toBe(before.get(part));
    plan.sheets.forEach((sheet, index) => {
      const worksheet = at(parsed(after, `xl/worksheets/sheet${String(index + 1)}.xml`), "worksheet");
      expect(listAt(worksheet, "dataValidations", "dataValidation").length, sheet.name).toBe(sheet.validations.length);
    });
    expect(after.get("xl/workbook.xml")).toBe(before.get("xl/workbook.xml"));
  });

  it("has lost the order of calculation and the pane, with all that points to them", () => {
    expect([...before.keys()].filter((name) => !after.has(name))).toEqual([
      "xl/calcChain.xml",
      "xl/webextensions/taskpanes.xml",
    ]);
    for (const name of ["[Content_Types].xml", "xl/_rels/workbook.xml.rels", "_rels/.rels"])
      expect(after.get(name), name).not.toMatch(/calcChain|webextension/);
  });

  it.skipIf(!hasOpenXmlValidator)("passes the Open XML validator [needs the Open XML validator]", async () => {
    const folder = await mkdtemp(join(tmpdir(), "hand-off-"));
    await writeFile(join(folder, "copy.xlsx"), copy);
    const result = await validateFile(join(folder, "copy.xlsx"));
    await rm(folder, { recursive: true });
    expect(result.errors).toEqual([]);
    expect(result.ok).toBe(true);
  });
});

describe("no copy is made", () => {
  const sheet = (cells: string): Uint8Array =>
    zipSync({
      "xl/worksheets/sheet1.xml": strToU8(`<worksheet><sheetData><row r="1">${cells}</row></sheetData></worksheet>`),
    });

  it("while a formula is not worked out: its cell is named", () => {
    expect(() => valuesOnly(sheet('<c r="B1" t="e"><f>_xldudf_BATH_DOSE(1)</f><v>#NAME?</v></c>'))).toThrow(
      /Cell B1 of sheet1 is not worked out yet/,
    );
    expect(() =>
      valuesOnly(sheet('<c r="A1"><f>1+1</f><v>2</v></c><c r="C1" t="e"><f>BATH.DOSE(1)</f><v>#BUSY!</v></c>')),
    ).toThrow(/Cell C1/);
  });

  it("of a file that is no archive, or cut short", () => {
    expect(() => valuesOnly(strToU8("not a workbook"))).toThrow(FileRefused);
    expect(() => valuesOnly(zipSync({ "xl/worksheets/sheet1.xml": strToU8("<worksheet><sheetData>") }))).toThrow(
      /cut short/,
    );
  });

  it("of an archive that unpacks to a thousand times its size", () => {
    const bomb = zipSync({ "xl/worksheets/sheet1.xml": new Uint8Array(32 << 20) }, { level: 9 });
    expect(bomb.length).toBeLessThan(1 << 20);
    expect(() => valuesOnly(bomb)).toThrow(/unpacks to far more than a workbook holds/);
  });

  it("of an archive of very many parts", () => {
    const many = zipSync(
      Object.fromEntries(
        Array.from({ length: 4001 }, (_, index) => [`xl/media/${String(index)}.bin`, new Uint8Array(1)]),
      ),
    );
    expect(() => valuesOnly(many)).toThrow(FileRefused);
  });
});
