import type { LogContent } from "../../src/joblog/model/definition.ts";
import { contentOf } from "../../src/joblog/model/log-content.ts";
import { playWeek } from "../../src/pane/demo/play-week.ts";
import { march } from "../../src/pane/demo/week-event.ts";
import { buildHeadlessLog } from "./headless-log.ts";
import { paperBook } from "./paper-log.ts";

/** Thursday morning: a meter that failed its check, two top-ups that it had hidden, and one that is due now. */
const opening = march(4, "08:15");

/** What was typed by the morning on which the workbench opens, and by the end of the week. */
export interface WeekContent {
  readonly opening: LogContent;
  readonly end: LogContent;
}

/** Types the invented week into the pane's forms. */
export async function playedWeek(): Promise<WeekContent> {
  let opened: LogContent | undefined;
  const log = await playWeek({
    book: paperBook(),
    afterEntry: ({ event, log: sofar }) => {
      if (event.at === opening) opened = contentOf(sofar);
    },
  });
  if (opened === undefined) throw new Error(`Nothing is typed at ${opening}.`);
  return { opening: opened, end: contentOf(log) };
}

/** A workbook with this log as the workbench's host saves it, its readings in front. */
export async function savedLog(functionsScript: string, content: LogContent): Promise<object> {
  const { host } = await buildHeadlessLog(functionsScript, content);
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Sheet1").delete();
    context.workbook.worksheets.getItem("Readings").activate();
    await context.sync();
  });
  return host.save();
}
