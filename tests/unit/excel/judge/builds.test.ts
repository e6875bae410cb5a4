/**
 * Microsoft builds its object model for Excel on the web, on Windows and on Mac. All tests of src/excel run on that of
 * the web. This one holds that the other two send the same requests, byte for byte, for one piece of work that takes in
 * building with charts, reading, writing, taking back and repairing: what was judged on one is then judged on all.
 */
import { beforeAll, expect, test } from "vitest";

import { buildLog, editLog, insertFormula, repairFormulas, takeBack } from "../../../../src/excel/log-workbook.ts";
import { readActiveSheet } from "../../../../src/excel/read/read-active-sheet.ts";
import { showSheet } from "../../../../src/excel/show-sheet.ts";
import { firstTwoDays } from "../../../demo/days/demo-week.ts";
import { openWorkbook } from "../log/open-workbook.ts";
import { stillLog } from "../log/still-log.ts";
import { wireOf } from "./judged-excel.ts";
import type { Build } from "./object-model.ts";

/** The requests of the work, as text. */
async function requestsOn(build: Build): Promise<readonly string[]> {
  const host = openWorkbook(build);
  const plan = stillLog(firstTwoDays);
  await buildLog(plan);
  const reading = { id: "R011", bath: "B-T1-0301", when: 46449.3, purpose: "check", ph: 10.83 } as const;
  const receipt = await editLog({
    rows: [
      { table: "readings", row: reading },
      { table: "readings", row: { ...reading, id: "R012" } },
    ],
    fills: [{ table: "readings", key: "R002", cells: { pTitre: 2 } }],
    fields: { chartBath: { before: firstTwoDays.fields.chartBath, after: undefined } },
  });
  await takeBack(receipt);
  await repairFormulas(plan);
  await showSheet("readings");
  await readActiveSheet();
  await Excel.run(async (context) => {
    context.workbook.worksheets.add("Own").activate();
    await context.sync();
  });
  await insertFormula("=1+1");
  return (wireOf(host)?.requests ?? []).map(({ body }) => JSON.stringify(body));
}

let onTheWeb: readonly string[];

beforeAll(async () => {
  onTheWeb = await requestsOn("web");
});

test("the piece of work draws charts and uses lists, as the log does", () => {
  expect(onTheWeb.length).toBeGreaterThan(25);
  for (const part of ["Charts", "DataValidation", "ConditionalFormats", "PageLayout", "CopyFrom", "Resize"])
    expect(onTheWeb.join("\n"), part).toContain(`"Name":"${part}"`);
});

test.each(["win32", "mac"] as const)("the build for %s sends the same requests as that for the web", async (build) => {
  expect(await requestsOn(build)).toEqual(onTheWeb);
});
