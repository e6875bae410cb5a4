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
});
