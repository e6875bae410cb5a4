/** @module-tag landing */
import { expect, test } from "vitest";

import { buildLog, readLog } from "../../../src/excel/log-workbook.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import type { LogContent } from "../../../src/joblog/model/definition.ts";
import { fullWeek } from "../joblog/sheets/hostile-log.ts";
import { openWorkbook } from "./log/open-workbook.ts";
import { logOf } from "./log/prepared-log.ts";

/** Without its loads and with another pH: rows are to be added and cells changed. It is itself typed into another log. */
const start: LogContent = {
  ...fullWeek,
  rows: {
    ...fullWeek.rows,
    loads: [],
    readings: (fullWeek.rows.readings ?? []).map((row) => ({ ...row, ph: 9 })),
  },
};

test("a log that is restored and typed into reads as one that was built at once", async () => {
  const typed = await logOf(fullWeek, "US", [start]);
  openWorkbook();
  await buildLog(layOut(jobLog, { system: "US" }, fullWeek));
  expect(typed).toEqual(await readLog());
});
