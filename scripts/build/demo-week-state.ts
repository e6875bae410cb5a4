import type { LogContent } from "../../src/joblog/model/definition.ts";
import { contentOf } from "../../src/joblog/model/log-content.ts";
import { playWeek } from "../../src/pane/demo/play-week.ts";
import { march } from "../../src/pane/demo/week-event.ts";
import type { Host } from "../../src/workbench/host/create-host.ts";
import { openHeadlessWorkbook } from "./headless-log.ts";

/** Thursday morning: a meter that failed its check, two top-ups that it had hidden, and one that is due now. */
const opening = march(4, "08:15");

async function savedAsOpened(host: Host): Promise<object> {
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Sheet1").delete();
    context.workbook.worksheets.getItem("Readings").activate();
    await context.sync();
  });
  return host.save();
}

/**
 * Types the invented week into the pane's forms: what the workbench opens with, as its host saves it in the
 * middle of the week, and what had been typed at its end.
 */
export async function playedWeek(functionsScript: string): Promise<{ state: object; content: LogContent }> {
  const host = openHeadlessWorkbook(functionsScript);
  let state: object | undefined;
  const log = await playWeek({
    afterEntry: async ({ event }) => {
      if (event.at === opening) state = await savedAsOpened(host);
    },
  });
  if (state === undefined) throw new Error(`Nothing is typed at ${opening}.`);
  return { state, content: contentOf(log) };
}
