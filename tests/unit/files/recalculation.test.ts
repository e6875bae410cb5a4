/** @module-tag landing */
import { expect, it } from "vitest";

import { buildLog } from "../../../src/excel/log-workbook.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import type { LogRow } from "../../../src/joblog/model/definition.ts";
import { demoBath as bath, moment } from "../../demo/demo-week-times.ts";
import { openWorkbook } from "../excel/log/open-workbook.ts";
import { demoRowsAnd, demoWith } from "../joblog/sheets/worked-log.ts";
import { hasLibreOffice } from "./libre-office.ts";
import { type ShownIn, workedOutTwice } from "./native-formulas.ts";

const reading = (id: string, day: 2 | 3, clock: string, ph: number, purpose: string): LogRow<"readings"> => ({
  id,
  bath,
  when: moment(day, clock),
  purpose,
  ph,
  temperature: 77,
});
const topUp = (
  id: string,
  day: 2 | 3,
  clock: string,
  amount: number,
  phBefore: number,
  phAfter?: number,
): LogRow<"additions"> => ({
  id,
  bath,
  when: moment(day, clock),
  kind: "concentrate",
  purpose: "top-up",
  amount,
  account: "claims",
  phBefore,
  phAfter,
});

/** Two rounds of top-ups, the second larger: every computed column has something to say. */
const content = demoWith({
  readings: demoRowsAnd(
    "readings",
    reading("R011", 2, "08:00", 10.84, "check"),
    reading("R012", 2, "08:40", 11.2, "after top-up"),
    reading("R013", 2, "09:20", 11.4, "after top-up"),
    reading("R014", 3, "08:00", 10.83, "check"),
    reading("R015", 3, "08:30", 11.1, "after top-up"),
  ),
  additions: demoRowsAnd(
    "additions",
    topUp("A005", 2, "08:10", 1.39, 10.84, 11.2),
    topUp("A006", 2, "08:50", 0.61, 11.2, 11.4),
    topUp("A007", 3, "08:00", 1.39, 10.83, 11.1),
    topUp("A008", 3, "08:50", 1.2, 11.1),
  ),
});

it.skipIf(!hasLibreOffice)(
  "LibreOffice works out every formula of a log as the workbench does [needs LibreOffice]",
  { timeout: 120_000 },
  async () => {
    const host = openWorkbook();
    const plan = layOut(jobLog, { system: "US" }, content);
    await buildLog(plan);
    const sheets = new Map(plan.sheets.map((sheet) => [sheet.name, host.values(sheet.name)] as const));
    const shown: ShownIn = (sheet, row, column) => sheets.get(sheet)?.[row]?.[column] ?? "";
    const { expected, found } = await workedOutTwice(plan, shown);
    expect(expected.length).toBeGreaterThan(250);
    expect(expected.some((line) => line.endsWith("top-ups grow: consider a change-out"))).toBe(true);
    expect(found).toEqual(expected);
  },
);
