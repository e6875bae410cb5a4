import type { UnitSystem } from "../../../src/core/units/unit-system.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import type { LogContent } from "../../../src/joblog/model/definition.ts";
import type { LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import { shareBases } from "../../../src/joblog/model/words.ts";
import { type Played, playWeek, shareWeek } from "../../../src/pane/demo/play-week.ts";
import { weekShop } from "../../../src/pane/demo/week-shop.ts";
import { openWorkbook } from "../../unit/excel/log/open-workbook.ts";
import { workedOut } from "../../unit/joblog/evaluate/worked-out.ts";
import type { PlayedWeek } from "../week/played-week.ts";
import { contentIn, eventIn } from "./week-in.ts";

export interface MetricWeek extends PlayedWeek {
  /** The log by every basis of the share. */
  readonly shared: ReadonlyMap<string, LogSnapshot>;
}

/** A new log's own figures differ from system to system where round ones are usual: here the metric log starts with the US ones. */
const usFigures: LogContent["fields"] = Object.fromEntries(
  jobLog.sheets
    .flatMap(({ fields }) => fields)
    .flatMap(({ id, initial }) => (initial === undefined ? [] : [[id, initial.US]])),
);

/** Types the same week, entry by entry, into the forms of a log in metric units. */
export async function playMetricWeek(us: PlayedWeek): Promise<MetricWeek> {
  openWorkbook();
  const entries: Played[] = [];
  const shop = contentIn({ ...weekShop, fields: { ...usFigures, ...weekShop.fields } }, "metric");
  const events = us.entries.map((played) => eventIn(played, "metric"));
  const log = await playWeek({
    week: { system: "metric", shop, events },
    afterEntry: (played) => {
      entries.push(played);
    },
  });
  const shared = new Map<string, LogSnapshot>();
  let latest = log;
  for (const basis of shareBases) {
    latest = await shareWeek(latest, basis);
    shared.set(basis, latest);
  }
  return { entries, log, shared };
}

/** A log of the US content, laid out in one go. */
export function laidOutIn(content: LogContent, system: UnitSystem): Promise<LogSnapshot> {
  return workedOut(system === "US" ? content : contentIn(content, system), system);
}
