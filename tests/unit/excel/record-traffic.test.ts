/** @module-tag landing */
import { beforeEach, describe, expect, test } from "vitest";

import { buildLog, editLog, takeBack } from "../../../src/excel/log-workbook.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import type { Traffic } from "../../../src/workbench/host/excel/requests/session.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { openWorkbook } from "./log/open-workbook.ts";
import { daysWithReadings, stillLog } from "./log/still-log.ts";

const bath = "B-T1-0301";

let host: Host;

beforeEach(() => {
  host = openWorkbook();
});

/** What goes between the add-in and the workbook while `work` runs. */
async function trafficOf(work: () => Promise<unknown>): Promise<Omit<Traffic, "largestOut">> {
  const before = { ...host.session.traffic };
  await work();
  const { trips, cellsRead, cellsWritten } = host.session.traffic;
  return {
    trips: trips - before.trips,
    cellsRead: cellsRead - before.cellsRead,
    cellsWritten: cellsWritten - before.cellsWritten,
  };
}

describe("building the log", () => {
  test("takes at most twelve trips", async () => {
    const { trips } = await trafficOf(() => buildLog(stillLog(firstTwoDays)));
    expect(trips).toBeLessThanOrEqual(12);
    expect(trips).toBeGreaterThan(3);
  });
});

describe("recording on a log with 15 and with 150 readings", () => {
  const reading = { id: "R5001", bath, when: 46460, purpose: "rinse", ph: 7.2 };
  const addition = {
    id: "A005",
    bath,
    when: 46449.33,
    kind: "concentrate",
    purpose: "top-up",
    amount: 1.39,
    account: "claims",
  };

  async function costs(
    count: number,
  ): Promise<Readonly<Record<"plain" | "fill" | "takeBack", Omit<Traffic, "largestOut">>>> {
    host = openWorkbook();
    await buildLog(stillLog(daysWithReadings(count)));
    await editLog({ rows: [{ table: "additions", row: addition }] });
    const plain = await trafficOf(() => editLog({ rows: [{ table: "readings", row: reading }] }));
    let undo = (): Promise<void> => Promise.reject(new Error("nothing was written"));
    const fill = await trafficOf(async () => {
      const receipt = await editLog({
        rows: [{ table: "readings", row: { ...reading, id: "R5002" } }],
        fills: [{ table: "additions", key: "A005", cells: { phAfter: 11.13, minutesMixed: 20 } }],
      });
      undo = () => takeBack(receipt);
    });
    return { plain, fill, takeBack: await trafficOf(undo) };
  }

  test("takes one read trip and one write trip, and of ten times the readings their keys alone", async () => {
    const short = await costs(15);
    const long = await costs(150);
    for (const act of ["plain", "fill", "takeBack"] as const) {
      // What a table lets go is cleared once it is certain that it was the right row.
      expect(long[act].trips).toBe(act === "takeBack" ? 3 : 2);
      expect(long[act].cellsWritten).toBe(short[act].cellsWritten);
      // Looked at in each of the two trips.
      expect(long[act].cellsRead - short[act].cellsRead).toBe(2 * (150 - 15));
    }
    // In both trips a heading row, the row below the table and the unit cell are read; in the second, too, what the
    // row to be written and the row that the table takes in hold, as formulas and as values, and the number formats of
    // two rows. One row is written.
    const width = host.workbook.tables.named("Readings")?.headers.length ?? 0;
    expect(short.plain.cellsRead).toBeLessThanOrEqual(2 * (2 * width + 1 + 15) + 6 * width);
    expect(short.plain.cellsWritten).toBe(width);
  }, 120_000);
});
