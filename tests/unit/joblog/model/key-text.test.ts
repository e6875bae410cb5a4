import { describe, expect, it } from "vitest";

import { isKeyText, keyTextFormula } from "../../../../src/joblog/model/key-text.ts";
import { openWorkbook } from "../../excel/log/open-workbook.ts";

const allowed = ["B-T1-0301", "1-2", "007", "a=b", "x<y", 'O\'Neil "2"', "@x", "🙂", "x".repeat(40)];
const refused = ["B*1", "B?1", "~x", "<5", ">5", "=1+1", "x".repeat(41)];

describe("the name of a row that others look up", () => {
  it("is refused where a look-up would read a pattern or a comparison", () => {
    expect(allowed.filter(isKeyText)).toEqual(allowed);
    expect(refused.filter(isKeyText)).toEqual([]);
  });

  it("passes the check on the cell exactly where it passes in the pane", async () => {
    openWorkbook();
    const names = [...allowed, ...refused];
    const answers = await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      sheet.getRangeByIndexes(0, 0, names.length, 2).formulas = names.map((name, row) => [
        `'${name}`,
        keyTextFormula(`$A${String(row + 1)}`),
      ]);
      const shown = sheet.getRangeByIndexes(0, 1, names.length, 1).load("values");
      await context.sync();
      return shown.values.map(([value]: readonly unknown[]) => value);
    });
    expect(answers).toEqual(names.map(isKeyText));
  });
});
