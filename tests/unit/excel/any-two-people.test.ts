/**
 * Whatever another person does to the rows between the pane's look and its write, nothing lands in a wrong row.
 *
 * @module-tag landing
 */
import fc from "fast-check";
import { expect, test } from "vitest";

import { editLog, readLog, takeBack } from "../../../src/excel/log-workbook.ts";
import { LogProblem } from "../../../src/excel/office-problems.ts";
import { tableOf } from "../../../src/excel/record/loaded-table.ts";
import type { Receipt } from "../../../src/excel/record/receipt.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { forms } from "../../../src/pane/record/forms.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { listed, type TypedRows, typedRows, withReceipt } from "../../property/week/typed-rows.ts";
import { runs } from "../../setup/random-runs.ts";
import { judgeOfThisFile } from "./judge/judged-excel.ts";
import { anyEntry } from "./log/any-entry.ts";
import { beforeTrip, deleteRowOf, insertColumnIn, insertSheetRowAbove, swapRows, typeAt } from "./log/in-between.ts";
import { openLog } from "./log/prepared-log.ts";

const rivals: Readonly<Record<string, (host: Host, table: string) => void>> = {
  "inserts a sheet row above": insertSheetRowAbove,
  "deletes the first row": (host, table) => {
    deleteRowOf(host, table, 0);
  },
  "sorts two rows": (host, table) => {
    swapRows(host, table, 0, 1, host.workbook.tables.named(table)?.headers.length ?? 0);
  },
  "puts a column in": (host, table) => {
    insertColumnIn(host, table, 1);
  },
  "renames a column": (host, table) => {
    typeAt(host, table, -1, 1, "Our own");
  },
};

const all = runs(1).numRuns > 1;

/** A release is of a closed bath, and the one on this log is in use. */
const inUse = forms.filter(({ id }) => id !== "release");

const cases = inUse.flatMap((form) => Object.keys(rivals).map((rival) => [form.id, rival, form] as const));

/** Without a soak a few of them, others for each judge and seed. */
const some = all
  ? cases
  : (fc.sample(fc.shuffledSubarray([...cases], { minLength: 3, maxLength: 3 }), {
      ...runs(1),
      seed: (fc.readConfigureGlobal().seed ?? 1) + (judgeOfThisFile() === "stand-in" ? 2 : 3),
    })[0] ?? []);

/** Undefined where a column bears another heading. */
async function rowsNow(): Promise<TypedRows | undefined> {
  return readLog().then(
    (log) => (log === undefined ? undefined : typedRows(log)),
    (error: unknown) => {
      expect(error).toBeInstanceOf(LogProblem);
      return undefined;
    },
  );
}

const sorted = (rows: TypedRows | undefined): readonly string[] | undefined =>
  rows === undefined ? undefined : listed(rows);

test.each(some)("%s while another person %s", async (_id, rival, form) => {
  const act = rivals[rival] ?? expect.fail(rival);
  const other = await openLog(firstTwoDays);
  const { rows = [], fills = [], changes = [], ...rest } = await anyEntry(form);
  const touched = [...rows, ...fills, ...changes].map(({ table }) => tableOf(jobLog, table).table.name);
  const [table = ""] = touched;
  act(other, table);
  const leaves = await rowsNow();

  const host = await openLog(firstTwoDays);
  const stop = beforeTrip(host, 2, () => {
    act(host, table);
  });
  let receipt: Receipt | undefined;
  try {
    receipt = await editLog({ rows, fills, changes, ...rest });
  } catch (error) {
    expect(error).toBeInstanceOf(LogProblem);
  } finally {
    stop();
  }
  const after = await rowsNow();
  if (receipt === undefined || leaves === undefined) {
    expect(receipt).toBeUndefined();
    expect(sorted(after)).toEqual(sorted(leaves));
    return;
  }
  expect(sorted(after)).toEqual(listed(withReceipt(leaves, receipt)));
  await takeBack(receipt);
  expect(sorted(await rowsNow())).toEqual(listed(leaves));
});
