import { beforeEach, expect, test } from "vitest";

import { editLog, readLog, repairFormulas, takeBack } from "../../../src/excel/log-workbook.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { openLog } from "./log/prepared-log.ts";

const plan = layOut(jobLog, { system: "US" }, firstTwoDays);

let host: Host;

beforeEach(async () => {
  host = await openLog(firstTwoDays);
});

/** Hides every row of the readings but those of one purpose, as a person does with the filter button. */
async function hideAllBut(purpose: string): Promise<void> {
  await Excel.run(async (context) => {
    context.workbook.tables.getItem("Readings").showFilterButton = true;
    await context.sync();
  });
  const area = host.workbook.tables.named("Readings")?.area;
  const at = host.workbook.tables.named("Readings")?.headers.indexOf("Purpose") ?? -1;
  if (area === undefined || at < 0) throw new Error("no readings");
  const hiddenValues = ["baseline", "check", "after top-up", "rinse"].filter((word) => word !== purpose);
  host.model.dispatch("UPDATE_FILTER", {
    sheetId: area.sheet,
    col: area.column + at,
    row: area.row,
    value: { filterType: "values", hiddenValues },
  });
}

test("an entry under a filter goes beneath the last row, hidden or not, and no row is lost", async () => {
  await hideAllBut("rinse");
  const before = (await readLog())?.rows.readings ?? [];
  const receipt = await editLog({
    rows: [
      {
        table: "readings",
        row: { id: "R011", bath: "B-T1-0301", when: 46449.302083, purpose: "check", ph: 10.83, temperature: 77 },
      },
    ],
  });
  const after = (await readLog())?.rows.readings ?? [];
  expect(after.slice(0, -1).map(({ cells }) => cells.id)).toEqual(before.map(({ cells }) => cells.id));
  expect(after.at(-1)?.cells).toMatchObject({ id: "R011", ph: 10.83, verdict: "top up" });
  await takeBack(receipt);
  expect((await readLog())?.rows.readings.map(({ cells }) => cells.id)).toEqual(before.map(({ cells }) => cells.id));
});

test("formulas are not written anew under a filter: the table is named, with what to do", async () => {
  await hideAllBut("rinse");
  await expect(repairFormulas(plan)).rejects.toThrow(
    /table Readings on sheet Readings is filtered.*Nothing was changed.*Show all rows/,
  );
});

test("formulas that Excel left as #NAME? are written anew, and a typed cell keeps what it holds", async () => {
  const before = await readLog();
  await Excel.run(async (context) => {
    const verdicts = context.workbook.tables.getItem("Readings").columns.getItem("Verdict").getDataBodyRange();
    verdicts.formulas = "=_xldudf_BATH_VERDICT(1,2)" as unknown as string[][];
    context.workbook.names.getItem("Cost.Total").getRange().formulas = [["=_xldudf_BATH_SHARE(1)"]];
    await context.sync();
  });
  expect((await readLog())?.rows.readings[0]?.cells.verdict).toBe("#NAME?");
  const report = await repairFormulas(plan);
  expect(report).toMatchObject({ added: [], addedColumns: [] });
  expect(report.rewritten).toBeGreaterThan(50);
  expect(await readLog()).toEqual(before);
});
