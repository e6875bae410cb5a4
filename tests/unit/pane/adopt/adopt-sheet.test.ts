/** @module-tag landing */
import { beforeEach, describe, expect, test } from "vitest";

import { Cancelled } from "../../../../src/excel/log-problems.ts";
import { readLog, takeBack } from "../../../../src/excel/log-workbook.ts";
import { mostColumns, mostRows, readActiveSheet } from "../../../../src/excel/read/read-active-sheet.ts";
import { joinReceipts, type Receipt } from "../../../../src/excel/record/receipt.ts";
import type { Adoption } from "../../../../src/pane/adopt/adopt-rows.ts";
import { adoptSheet } from "../../../../src/pane/adopt/adopt-sheet.ts";
import { firstTwoDays } from "../../../demo/days/demo-week.ts";
import { openWorkbook } from "../../excel/log/open-workbook.ts";
import { openLog } from "../../excel/log/prepared-log.ts";

/** That many readings, a minute apart. */
function readings(count: number): Adoption {
  const taken = Array.from({ length: count }, (_, index) => ({
    number: index + 2,
    cells: { id: `N${String(index)}`, bath: "B-T1-0301", when: 46450 + index / 1440, purpose: "check", ph: 11.2 },
  }));
  return { taken, listed: [], asked: [], before: [{ table: "claims", row: { claim: "NEW-1" } }], shares: [] };
}

async function held(): Promise<{ readonly readings: number; readonly claims: readonly unknown[] }> {
  const log = await readLog();
  return {
    readings: log?.rows.readings.filter(({ cells }) => String(cells.id).startsWith("N")).length ?? 0,
    claims: log?.rows.claims.map(({ cells }) => cells.claim).filter((claim) => claim === "NEW-1") ?? [],
  };
}

const batchRows = 20;

describe("writing adopted rows", { timeout: 90_000 }, () => {
  beforeEach(async () => {
    await openLog(firstTwoDays);
  });

  test("goes batch by batch, new names once, and tells how far it is", async () => {
    const told: string[] = [];
    await adoptSheet.run(
      {
        table: "readings",
        adoption: readings(25),
        batchRows,
        onWritten: (rows) => {
          told.push(String(rows));
        },
      },
      {
        onProgress: ({ words }) => {
          told.push(words);
        },
      },
    );
    expect(told).toEqual(["0 rows of 25 written", "20", "20 rows of 25 written", "25"]);
    expect(await held()).toEqual({ readings: 25, claims: ["NEW-1"] });
  });

  test("is taken back whole, with the claim that it added, and not at all once a row was changed", async () => {
    const before = await readLog();
    const receipts: Receipt[] = [];
    await adoptSheet.run({
      table: "readings",
      adoption: readings(25),
      batchRows,
      onWritten: (_, receipt) => {
        receipts.push(receipt);
      },
    });
    await takeBack(joinReceipts(receipts));
    const after = await readLog();
    expect(after?.rows.readings.map(({ cells }) => cells.id)).toEqual(
      before?.rows.readings.map(({ cells }) => cells.id),
    );
    expect((await held()).claims).toEqual([]);

    const again: Receipt[] = [];
    await adoptSheet.run({
      table: "readings",
      adoption: readings(3),
      onWritten: (_, receipt) => {
        again.push(receipt);
      },
    });
    await Excel.run(async (context) => {
      const readingIds = context.workbook.tables.getItem("Readings").getDataBodyRange().getColumn(0).load("values");
      await context.sync();
      const row = readingIds.values.findIndex(([id]) => id === "N1");
      readingIds.getCell(row, 0).values = [["N1 corrected"]];
      await context.sync();
    });
    await expect(takeBack(joinReceipts(again))).rejects.toThrow(/was changed since/);
    expect((await held()).readings).toBe(3);
  });

  test("stops between batches when cancelled, with whole rows in the log and words on how many", async () => {
    const stop = new AbortController();
    const work = adoptSheet.run(
      {
        table: "readings",
        adoption: readings(25),
        batchRows,
        onWritten: () => {
          stop.abort();
        },
      },
      { signal: stop.signal },
    );
    await expect(work).rejects.toThrow("Cancelled: 20 rows of 25 are in the log, each of them whole.");
    await expect(work).rejects.toBeInstanceOf(Cancelled);
    expect((await held()).readings).toBe(20);
  });
});

describe("reading the sheet that is open", () => {
  async function put(row: number, column: number, value: string | number): Promise<void> {
    await Excel.run(async (context) => {
      context.workbook.worksheets.getActiveWorksheet().getRangeByIndexes(row, column, 1, 1).values = [[value]];
      await context.sync();
    });
  }

  beforeEach(() => {
    openWorkbook();
  });

  test("says that a blank one is blank", async () => {
    await expect(readActiveSheet()).rejects.toThrow(/is blank.*Click the tab/);
  });

  test("starts where its cells start", async () => {
    await put(3, 2, "pH");
    await put(4, 2, 11.2);
    expect(await readActiveSheet()).toMatchObject({
      firstRow: 4,
      firstColumn: 2,
      values: [["pH"], [11.2]],
      rowsLeftOut: 0,
      columnsLeftOut: 0,
    });
  });

  test("reads no more than a person can look through, and says how much is left out", async () => {
    await put(0, 0, "pH");
    await put(0, mostColumns + 1, "beyond");
    await put(mostRows + 6, 0, 11);
    const { values, rowsLeftOut, columnsLeftOut } = await readActiveSheet();
    expect([values.length, values[0]?.length, rowsLeftOut, columnsLeftOut]).toEqual([mostRows, mostColumns, 7, 2]);
  });
});
