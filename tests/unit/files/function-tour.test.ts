import { readFile } from "node:fs/promises";
import path from "node:path";

import { beforeAll, describe, expect, it } from "vitest";

import { samplesFolder } from "../../../scripts/build-samples.ts";
import { layOutTour } from "../../../scripts/tour/lay-out-tour.ts";
import { tourFile } from "../../../scripts/tour/tour-workbook.ts";
import { workOutPlan } from "../../../scripts/tour/work-out-plan.ts";
import { storedFormula } from "../../../src/files/stored-formula.ts";
import { cellAddress } from "../../../src/joblog/layout/addresses.ts";
import type { CellPlan } from "../../../src/joblog/model/plan.ts";
import { openWorkbook } from "../excel/log/open-workbook.ts";
import { hasLibreOffice } from "./libre-office.ts";
import { type ShownIn, storedResult, words, workedOutTwice } from "./native-formulas.ts";
import { hasOpenXmlValidator, validateFile } from "./open-xml-validator.ts";
import { at, cellsOf, type Element, listAt, parsed, partsOf } from "./read-parts.ts";

const file = path.join(samplesFolder, tourFile);
const plan = layOutTour();

let parts: ReadonlyMap<string, string>;
let shown: ShownIn;

beforeAll(async () => {
  parts = partsOf(await readFile(file));
  const answered = await workOutPlan(openWorkbook(), plan);
  shown = (sheet, row, column) => {
    const value = answered(sheet, row, column);
    if (typeof value === "object" || value === undefined) throw new RangeError(`No value on ${sheet}`);
    return value;
  };
});

function sharedStrings(): readonly string[] {
  return listAt(parsed(parts, "xl/sharedStrings.xml"), "sst", "si").map((item) => {
    const text = at(item, "t");
    const kept = typeof text === "string" ? text : at(text, "#text");
    return typeof kept === "string" ? kept : "";
  });
}

function eachCell(look: (cell: CellPlan, stored: Element | undefined, place: string, sheet: string) => void): void {
  plan.sheets.forEach((sheet, index) => {
    const cells = cellsOf(parts, index + 1);
    for (const cell of sheet.cells) {
      const address = cellAddress(cell.row, cell.column);
      look(cell, cells.get(address), `${sheet.name} ${address}`, sheet.name);
    }
  });
}

/** What the file stores beside the first formula of a sheet that begins so. */
function valueOf(sheetName: string, beginning: string): number {
  const index = plan.sheets.findIndex(({ name }) => name === sheetName);
  const cell = plan.sheets[index]?.cells.find((one) => one.kind === "formula" && one.formula.startsWith(beginning));
  if (cell === undefined) throw new RangeError(`No ${beginning} on ${sheetName}`);
  return Number(at(cellsOf(parts, index + 1).get(cellAddress(cell.row, cell.column)), "v"));
}

describe("the function tour in the repository", () => {
  it.skipIf(!hasOpenXmlValidator)("passes the Open XML validator [needs the Open XML validator]", async () => {
    const result = await validateFile(file);
    expect(result.errors).toEqual([]);
    expect(result.ok).toBe(true);
  });

  it("holds today's formulas with today's answers, none of them an error or blank (run npm run samples if not)", () => {
    let formulas = 0;
    eachCell((cell, stored, place, sheet) => {
      if (cell.kind !== "formula") return;
      formulas += 1;
      expect(at(stored, "f"), place).toBe(storedFormula(cell.formula));
      expect(words(storedResult(stored)), place).toBe(words(shown(sheet, cell.row, cell.column)));
    });
    expect(formulas).toBeGreaterThan(150);
    expect([...parts].filter(([name, xml]) => name.startsWith("xl/worksheets/") && xml.includes('t="e"'))).toEqual([]);
  });

  it("holds today's words and inputs (run npm run samples if not)", () => {
    const strings = sharedStrings();
    eachCell((cell, stored, place) => {
      if (cell.kind !== "value") return;
      const value = at(stored, "@t") === "s" ? strings[Number(at(stored, "v"))] : storedResult(stored);
      expect(value, place).toEqual(cell.value);
    });
  });

  it("answers what can be checked by hand", () => {
    const volume = (48 * 24 * 25) / 231 - 3.5;
    expect(valueOf("Tank", "=BATH.TANKVOLUME(")).toBeCloseTo(volume, 9);
    expect(valueOf("Charge", "=BATH.DOSE(")).toBeCloseTo(volume / 29, 9);
    expect(valueOf("Charge", "=BATH.JARDOSE(")).toBeCloseTo(((volume / 29) * 14) / 12, 9);
    expect(valueOf("Water", "=BATH.BLEND(")).toBeCloseTo((100 * 7 + 21.2 * 324) / 121.2, 9);
    expect(valueOf("Threshold and top-up", "=BATH.TRIGGER(")).toBeCloseTo(11.42 - 0.5, 9);
    expect(valueOf("Money and stock", "=BATH.REORDERPOINT(")).toBeCloseTo(2.1 * 5 + 6, 9);
  });

  it.skipIf(!hasLibreOffice)(
    "has LibreOffice work out its native formulas as the workbench does [needs LibreOffice]",
    { timeout: 120_000 },
    async () => {
      const { expected, found } = await workedOutTwice(plan, shown);
      expect(expected.length).toBeGreaterThan(20);
      expect(found).toEqual(expected);
    },
  );
});
