import { firstTwoDays } from "../src/joblog/demo-week.ts";
import { buildHeadlessLog } from "./headless-log.ts";

/** What the workbench opens with: the log of the invented week's first two days, as its host saves it. */
export async function demoWeekState(functionsScript: string): Promise<object> {
  const { host } = await buildHeadlessLog(functionsScript, firstTwoDays);
  await host.Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Sheet1").delete();
    context.workbook.worksheets.getItem("Readings").activate();
    await context.sync();
  });
  return host.save();
}
