import { expect, it } from "vitest";

import { buildLog } from "../../../src/excel/log-workbook.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import { openWorkbook } from "./log/open-workbook.ts";

const empty = layOut(jobLog, { system: "US" }, { fields: {}, rows: {} });

it("a workbook that counts its dates from 1904 gets no log, and hears why and what to do", async () => {
  const host = openWorkbook();
  host.workbook.datesFrom1904 = true;
  const sheets = host.workbook.sheets.ids();
  await expect(buildLog(empty)).rejects.toMatchObject({
    what: "This workbook counts its dates from 1904, where the log counts from 1900. Nothing was written.",
    remedy: expect.stringContaining("Use 1904 date system") as string,
  });
  expect(host.workbook.sheets.ids()).toEqual(sheets);
  expect(host.workbook.tables.list()).toEqual([]);
});
