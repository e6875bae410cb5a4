import { describe, expect, it } from "vitest";

import { collectWorkbook } from "../../../src/workbench/page/collect-state.ts";
import { enter, salesHost, testHost } from "./test-host.ts";

const never = (): Promise<void> => Promise.resolve();

describe("a workbook that is taken sheet by sheet", () => {
  it("is what is saved in one go, with all that its cells show", async () => {
    const host = await salesHost();
    const state = host.save();
    const { book, sheets } = await collectWorkbook(host, never);
    expect({ book, sheets: sheets.map((sheet) => sheet.state) }).toEqual(state);
    expect(new Map(sheets.map((sheet) => [sheet.state.id, sheet.shown]))).toEqual(host.shown(state));
  });

  it("is of one moment where it changes meanwhile", async () => {
    const host = await salesHost();
    let pauses = 0;
    const { sheets } = await collectWorkbook(host, async () => {
      pauses += 1;
      if (pauses === 1) await enter(host, "B2:B3", [[1000], [2000]]);
    });
    // 1000 × 0.1, 2000 × 0.15 and 940 × 0.15.
    expect(sheets.map(({ shown }) => shown.values)).toEqual([[100, 300, 141]]);
    expect(sheets.flatMap(({ state }) => state.typed.flat())).toContain(2000);
  });

  it("is taken all the same where it never stops changing", async () => {
    const host = testHost();
    let written = 0;
    const { sheets } = await collectWorkbook(host, async () => {
      written += 1;
      await enter(host, "A1:B1", [[written, "=A1*2"]]);
    });
    expect(sheets[0]?.shown.values).toEqual([written * 2]);
  });
});
