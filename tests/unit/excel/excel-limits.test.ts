/** What Excel refuses and a grid of its own would take. */
import { beforeEach, describe, expect, test } from "vitest";

import type { Host } from "../../../src/workbench/host/create-host.ts";
import { openWorkbook } from "./log/open-workbook.ts";

async function inCell(act: (cell: Excel.Range) => void): Promise<string> {
  try {
    await Excel.run(async (context) => {
      act(context.workbook.worksheets.getActiveWorksheet().getRange("A1"));
      await context.sync();
    });
    return "taken";
  } catch (error) {
    return (error as { readonly code: string }).code;
  }
}

const write =
  (text: string) =>
  (cell: Excel.Range): void => {
    cell.formulas = [[text]];
  };

const nested = (levels: number): string => `=${"ABS(".repeat(levels)}1${")".repeat(levels)}`;

const list =
  (source: string) =>
  (cell: Excel.Range): void => {
    cell.dataValidation.rule = { list: { inCellDropDown: true, source } };
  };

const alert =
  (title: string, message: string) =>
  (cell: Excel.Range): void => {
    list("yes,no")(cell);
    cell.dataValidation.errorAlert = { showAlert: true, style: "Stop", title, message };
  };

const prompt =
  (title: string, message: string) =>
  (cell: Excel.Range): void => {
    list("yes,no")(cell);
    cell.dataValidation.prompt = { showPrompt: true, title, message };
  };

const custom =
  (formula: string) =>
  (cell: Excel.Range): void => {
    cell.dataValidation.rule = { custom: { formula } };
  };

describe.each(["stand-in", "web"] as const)("limits of Excel, judge: %s", (judge) => {
  let host: Host;
  beforeEach(() => {
    host = openWorkbook(judge);
  });

  test.each([
    ["a formula of 8,192 characters", write(`="${"x".repeat(8189)}"`), write(`="${"x".repeat(8190)}"`)],
    ["64 levels of nesting", write(nested(64)), write(nested(65))],
    ["a text of 32,767 characters", write("x".repeat(32_767)), write("x".repeat(32_768))],
    [
      "255 characters of choices",
      list(`${"a".repeat(127)},${"b".repeat(127)}`),
      list(`${"a".repeat(128)},${"b".repeat(127)}`),
    ],
    ["255 characters of a rule's formula", custom(`=1=1${" ".repeat(251)}`), custom(`=1=1${" ".repeat(252)}`)],
    ["32 characters of an alert's title", alert("t".repeat(32), "m"), alert("t".repeat(33), "m")],
    ["225 characters of an alert", alert("t", "m".repeat(225)), alert("t", "m".repeat(226))],
    ["255 characters of a prompt", prompt("t", "m".repeat(255)), prompt("t", "m".repeat(256))],
    ["choices without a blank at their edge", list("yes,no"), list("yes, no")],
    ["rules without structured references", custom("=A1>0"), custom("=Readings[pH]>0")],
  ])("%s are taken, and no more", async (_what, most, tooMuch) => {
    expect([await inCell(most), await inCell(tooMuch)]).toEqual(["taken", "InvalidArgument"]);
  });

  test("a request of more than 5 MB is refused before any of it is done", async () => {
    const rows = (count: number): string[][] => Array.from({ length: count }, () => ["x".repeat(30_000)]);
    const fill =
      (count: number) =>
      (cell: Excel.Range): void => {
        cell.getResizedRange(count - 1, 0).values = rows(count);
      };
    expect(await inCell(fill(170))).toBe("RequestPayloadSizeLimitExceeded");
    expect(host.values("Sheet1")).toEqual([]);
    expect(await inCell(fill(160))).toBe("taken");
  });

  test("an answer of more than 5 MB is refused", async () => {
    const fill =
      (first: number) =>
      (cell: Excel.Range): void => {
        cell.getOffsetRange(first, 0).getResizedRange(99, 0).values = Array.from({ length: 100 }, () => [
          "x".repeat(30_000),
        ]);
      };
    const read =
      (count: number) =>
      (cell: Excel.Range): void => {
        cell.getResizedRange(count - 1, 0).load("values");
      };
    expect([await inCell(fill(0)), await inCell(fill(100))]).toEqual(["taken", "taken"]);
    expect([await inCell(read(160)), await inCell(read(170))]).toEqual(["taken", "ResponsePayloadSizeLimitExceeded"]);
  });
});
