import { beforeEach, describe, expect, it } from "vitest";

import { editLog, readLog } from "../../../src/excel/log-workbook.ts";
import type { LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { openLog } from "./log/prepared-log.ts";

beforeEach(async () => {
  await openLog(firstTwoDays);
});

async function log(): Promise<LogSnapshot> {
  const snapshot = await readLog();
  if (snapshot === undefined) throw new Error("no log");
  return snapshot;
}

async function protect(sheet: string): Promise<void> {
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem(sheet).protection.protect();
    await context.sync();
  });
}

describe("changing cells of the log", () => {
  it("writes named cells and typed cells of a row together", async () => {
    const tank = (await log()).rows.tanks.find(({ cells }) => cells.tank === "T2");
    await editLog({
      fields: { sewerLow: { before: undefined, after: 6 }, sewerHigh: { before: undefined, after: 10 } },
      changes: [
        {
          table: "tanks",
          position: tank?.position ?? -1,
          cells: { displacement: { before: 0.6, after: 0.5 }, note: { before: tank?.cells.note, after: "=lid" } },
        },
      ],
    });
    const { fields, rows } = await log();
    expect([fields.sewerLow, fields.sewerHigh]).toEqual([6, 10]);
    const [first, second] = rows.tanks;
    expect(second?.cells).toMatchObject({ tank: "T2", displacement: 0.5, note: "=lid" });
    // 24 × 16 × 11.5 / 231 − 0.5 gal.
    expect(second?.cells.workingVolume).toBeCloseTo(18.617, 3);
    expect(first?.cells.displacement).toBe(3.5);
  });

  it("empties a cell, and never leaves a blank as a zero", async () => {
    const position = (await log()).rows.tanks[0]?.position ?? -1;
    await editLog({
      changes: [{ table: "tanks", position, cells: { displacement: { before: 3.5, after: undefined } } }],
    });
    expect((await log()).rows.tanks[0]?.cells.displacement).toBeUndefined();
  });

  it("writes nothing at all where one cell was changed since it was seen", async () => {
    const position = (await log()).rows.tanks[0]?.position ?? -1;
    const change = editLog({
      fields: { permit: { before: undefined, after: "P-1" } },
      changes: [{ table: "tanks", position, cells: { displacement: { before: 3.4, after: 3.3 } } }],
    });
    await expect(change).rejects.toMatchObject({
      what: expect.stringMatching(/Displacement \(Job\) was changed since it was read: it holds "3\.5"/) as string,
    });
    expect((await log()).fields.permit).toBeUndefined();
  });

  it("refuses a protected sheet in words, and leaves the others alone", async () => {
    await protect("Shop");
    const change = editLog({
      fields: { permit: { before: undefined, after: "P-1" }, chartBath: { before: "B-T1-0301", after: undefined } },
    });
    await expect(change).rejects.toMatchObject({ what: expect.stringMatching(/sheet Shop is protected/) as string });
    expect((await log()).fields.chartBath).toBe("B-T1-0301");
  });
});
