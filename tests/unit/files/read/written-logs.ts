import * as library from "@odoo/o-spreadsheet";

import { catalogue } from "../../../../functions/catalogue.ts";
import type { UnitSystem } from "../../../../src/core/units/unit-system.ts";
import type { KnownValue, ValueOf } from "../../../../src/files/cell-value.ts";
import { writeWorkbook } from "../../../../src/files/xlsx-writer.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import { layOut } from "../../../../src/joblog/layout/lay-out.ts";
import type { WorkbookPlan } from "../../../../src/joblog/model/plan.ts";
import { firstTwoDays } from "../../../demo/days/demo-week.ts";
import { contentIn } from "../../../demo/metric/week-in.ts";

/** The functions that the workbench's grid works out. */
export const gridFunctions: readonly string[] = [
  ...library.registries.functionRegistry.getKeys(),
  ...catalogue.map(({ id }) => `BATH.${id}`),
];

/** Made-up results, one of every kind in turn: what a formula gives is not what is tried here. */
function madeUp(row: number, column: number): KnownValue {
  return [row * 100 + column + 0.25, "words & <so on>", { error: "#N/A" }, "", true][(row + column) % 5] ?? 0;
}

/** The two demo days in a file of the log's own writer, and the plan that it was written from. */
export async function writtenLog(
  system: UnitSystem,
): Promise<{ readonly plan: WorkbookPlan; readonly file: Uint8Array; readonly valueOf: ValueOf }> {
  const plan = layOut(jobLog, { system }, system === "US" ? firstTwoDays : contentIn(firstTwoDays, system));
  const valueOf: ValueOf = (_sheet, row, column) => madeUp(row, column);
  return { plan, valueOf, file: await writeWorkbook(plan, valueOf) };
}
