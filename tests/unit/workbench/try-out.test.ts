import { describe, expect, it } from "vitest";

import { filledFromPlan } from "../../../src/files/read/fill-from-plan.ts";
import { readWorkbook } from "../../../src/files/read/read-workbook.ts";
import { packed } from "../files/read/packed.ts";
import { gridFunctions, writtenLog } from "../files/read/written-logs.ts";
import { enter, testHost } from "./test-host.ts";

/** A sheet of formulas, one below the other, each with the value that its file gives. */
function fileOf(formulas: readonly (readonly [formula: string, value: string])[]): Uint8Array {
  const rows = formulas.map(([formula, value]) => `<row><c><f>${formula}</f>${value}</c></row>`);
  return packed({ sheets: [{ name: "Own", rows: rows.join("") }] });
}

function triedOut(formulas: Parameters<typeof fileOf>[0]) {
  const { state, values } = filledFromPlan(
    readWorkbook(fileOf(formulas), [...gridFunctions, "BATH.TWICE", "BATH.REFUSE"]),
  );
  return testHost().tryOut(state, values);
}

describe("a workbook that is worked out before it is opened", () => {
  it("keeps the file's value where the grid gives an error and the file does not", () => {
    const { state, differences } = triedOut([
      ["SUM(1,2)", "<v>3</v>"],
      ["SUM(A1:A3 A1:A2)", "<v>4</v>"],
      ["BATH.REFUSE(1)", "<v>5</v>"],
      ["1/0", "<v>7</v>"],
    ]);
    expect(state.sheets[0]?.kept).toEqual([
      [1, 0, 4],
      [2, 0, 5],
      [3, 0, 7],
    ]);
    expect(differences).toEqual([
      {
        sheet: "Own",
        what: "3 formulas cannot be worked out here, so the file's values stay in their place (the first in A2)",
      },
    ]);
  });

  it("names what comes out otherwise, but for last digits, what is new every time, errors of the file and no value at all", () => {
    const { state, differences } = triedOut([
      ["0.1+0.2", "<v>0.3</v>"],
      ["RAND()", "<v>2</v>"],
      ["1/0", "<v>#DIV/0!</v>"],
      ["2*3", ""],
      ["BATH.TWICE(2)", "<v>5</v>"],
      ['"a"&amp;"b"', "<v>9</v>"],
    ]);
    expect(state.sheets[0]?.kept).toEqual([]);
    expect(differences).toEqual([
      { sheet: "Own", what: "2 formulas give something else here than in the file (the first in A5)" },
    ]);
  });

  it("leaves the workbook on screen as it is", async () => {
    const host = testHost();
    await enter(host, "A1", [["=1+1"]]);
    const before = host.save();
    const { state, values } = readWorkbook(fileOf([["1/0", "<v>7</v>"]]), gridFunctions);
    host.tryOut(state, values);
    expect(host.save()).toEqual(before);
  });

  it("has nothing to try in a job log alone", async () => {
    const { file } = await writtenLog("US");
    expect(filledFromPlan(readWorkbook(file, gridFunctions)).values).toEqual({});
  });
});
