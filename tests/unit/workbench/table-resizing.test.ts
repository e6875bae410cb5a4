import { describe, expect, it } from "vitest";

import type { Host } from "../../../src/workbench/host/create-host.ts";
import { enter, read, salesHost } from "./test-host.ts";

async function resize(host: Host, address: string): Promise<void> {
  await host.Excel.run(async (context) => {
    context.workbook.tables.getItem("Sales").resize(address);
    await context.sync();
  });
}

/** A host whose TWICE counts how often it is called. */
async function countingHost(): Promise<{ readonly host: Host; readonly calls: () => number }> {
  const host = await salesHost();
  let calls = 0;
  host.CustomFunctions.associate("TWICE", (number: number) => {
    calls += 1;
    return number * 2;
  });
  return { host, calls: () => calls };
}

describe("resizing a table", () => {
  it("works out what depends on the table, and leaves every other formula alone", async () => {
    const { host, calls } = await countingHost();
    await enter(host, "F1:H2", [
      ["=SUM(Sales[Amount, $])", "=BATH.TWICE(H1)", 4],
      ["=BATH.TWICE(SUM(Sales[Rate]))", "", ""],
    ]);
    await enter(host, "A6:C6", [["Ann", 40, 0.1]]);
    const before = calls();
    await resize(host, "A1:D6");
    expect(calls() - before).toBe(1);
    expect(await read(host, "F1:G1", "values")).toEqual([[1900, 8]]);
    expect((await read(host, "F2", "values"))[0]?.[0]).toBeCloseTo(1, 12);
  });

  it("takes apart what was merged beneath it", async () => {
    const host = await salesHost();
    const sheetId = host.model.getters.getActiveSheetId();
    host.model.dispatch("ADD_MERGE", { sheetId, target: [{ top: 4, bottom: 4, left: 0, right: 1 }] });
    expect(host.model.getters.getMerges(sheetId)).toHaveLength(1);
    await resize(host, "A1:D5");
    expect(host.model.getters.getMerges(sheetId)).toEqual([]);
  });
});
