import { describe, expect, it } from "vitest";

import { buildLog, readLog } from "../../../src/excel/log-workbook.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { fullWeek } from "../joblog/sheets/hostile-log.ts";
import { openWorkbook } from "./open-workbook.ts";
import { logOf } from "./prepared-log.ts";

describe("a log that is restored and typed into", () => {
  it.each([
    { what: "the demo days", content: firstTwoDays, starts: [] },
    {
      what: "the full week, from one without its loads and with another pH",
      content: fullWeek,
      starts: [
        {
          ...fullWeek,
          rows: {
            ...fullWeek.rows,
            loads: [],
            readings: (fullWeek.rows.readings ?? []).map((row) => ({ ...row, ph: 9 })),
          },
        },
      ],
    },
  ])("reads as one that was built at once: $what", async ({ content, starts }) => {
    const typed = await logOf(content, "US", starts);
    openWorkbook();
    await buildLog(layOut(jobLog, { system: "US" }, content));
    expect(typed).toEqual(await readLog());
  });
});
