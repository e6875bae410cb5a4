import { describe, expect, it } from "vitest";

import { rowHeights } from "../../../src/files/row-heights.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import type { SheetPlan } from "../../../src/joblog/model/plan.ts";

function additionsWith(note: string): SheetPlan {
  const plan = layOut(jobLog, { system: "US" }, { fields: {}, rows: { additions: [{ id: "A1", note }] } });
  const sheet = plan.sheets.find((one) => one.id === "additions");
  if (sheet === undefined) throw new RangeError("no Additions");
  return sheet;
}

const firstRow = (sheet: SheetPlan): number => (sheet.tables[0]?.area.row ?? 0) + 1;

describe("row heights in a file", () => {
  it("leave a row of single lines as it is", () => {
    const sheet = additionsWith("short");
    expect(rowHeights(sheet, () => "").get(firstRow(sheet))).toBeUndefined();
  });

  it("grow with a long note and more with a longer one", () => {
    const words = (count: number): SheetPlan => additionsWith("word ".repeat(count).trim());
    const two = rowHeights(words(8), () => "").get(firstRow(words(8))) ?? 0;
    const more = rowHeights(words(40), () => "").get(firstRow(words(40))) ?? 0;
    expect(two).toBeGreaterThan(15);
    expect(more).toBeGreaterThan(two);
  });

  it("grow with long words that a formula answers", () => {
    const sheet = additionsWith("short");
    expect(rowHeights(sheet, () => "recovered, after quite a few words more").get(firstRow(sheet))).toBeGreaterThan(15);
  });

  it("are those of the row's longest cell, whatever stands after it", () => {
    const sheet = additionsWith("word ".repeat(40).trim());
    const row = firstRow(sheet);
    const long = sheet.cells.filter((cell) => cell.row === row);
    const turned = { ...sheet, cells: [...long].reverse() };
    const few = sheet.cells.find((cell) => cell.row === row && cell.kind === "value" && cell.value !== "A1");
    if (few === undefined) throw new RangeError("no note");
    const twice = { ...sheet, cells: [few, { ...few, kind: "value" as const, value: "word ".repeat(8).trim() }] };
    const height = rowHeights(sheet, () => "").get(row);
    expect(rowHeights(turned, () => "").get(row)).toBe(height);
    expect(rowHeights(twice, () => "").get(row)).toBe(height);
  });
});
