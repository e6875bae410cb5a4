import { expect, it } from "vitest";

import { weekSample } from "../../../scripts/build-samples.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/layout/lay-out.ts";
import { contentOf } from "../../../src/joblog/model/log-content.ts";
import type { WorkbookPlan } from "../../../src/joblog/model/plan.ts";
import { hasOpenXmlValidator } from "../../unit/files/open-xml-validator.ts";
import { expectNoErrors, expectTodaysFormulas, expectValid, firstRowValue } from "../../unit/files/sample-checks.ts";
import type { PlayedWeek } from "./played-week.ts";

export function holdsSample(week: () => PlayedWeek): void {
  const plan = (): WorkbookPlan => layOut(jobLog, { system: "US" }, contentOf(week().log));

  it.skipIf(!hasOpenXmlValidator)(
    "passes the Open XML validator [needs the Open XML validator]",
    () => expectValid(weekSample),
    120_000,
  );

  it(
    "holds today's formulas where this week's rows stand, each with a value (run npm run samples if not)",
    () => expectTodaysFormulas(weekSample, plan()),
    120_000,
  );

  it("shows no error but #N/A in the chart's helpers", () => expectNoErrors(weekSample, plan()), 120_000);

  it("shows the week's own answers without the add-in", async () => {
    const value = async (table: string, column: string): Promise<number> =>
      Number(await firstRowValue(weekSample, plan(), table, column));
    // 48 × 24 × 25 / 231 − 3.5 gal; at 1+28 a 29th of it; median of 11.42, 11.43 and 11.41; half a point less.
    expect(await value("Tanks", "workingVolume")).toBeCloseTo(121.175, 3);
    expect(await value("Baths", "baseDose")).toBeCloseTo(4.178, 3);
    expect(await value("Baths", "openingDose")).toBeCloseTo(4.178, 9);
    expect(await value("Baths", "baseline")).toBeCloseTo(11.42, 9);
    expect(await value("Baths", "trigger")).toBeCloseTo(10.92, 9);
    expect(await value("Shares", "share")).toBe(210.54);
  }, 120_000);
}
