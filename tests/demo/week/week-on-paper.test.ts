/** The week in seconds, without a spreadsheet; that the grid shows the same stands in the longer test. */
import { beforeAll, describe } from "vitest";

import { paperBook } from "../../../scripts/build/paper-log.ts";
import { contentOf } from "../../../src/joblog/model/log-content.ts";
import type { LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import { type Played, playWeek, type WeekBook } from "../../../src/pane/demo/play-week.ts";
import { evaluated } from "../../unit/joblog/evaluate/worked-out.ts";
import type { PlayedWeek } from "./played-week.ts";
import { holdsWholeWeek } from "./whole-week.ts";

let week: PlayedWeek;

const paper = paperBook();

/** The same log with all its figures. */
const book: WeekBook = { ...paper, present: async () => evaluated(contentOf(await paper.present())) };

/** A log's formulas are worked out when a test first looks at it. */
function workedOutWhenAsked(log: LogSnapshot): () => LogSnapshot {
  let known: LogSnapshot | undefined;
  return () => (known ??= evaluated(contentOf(log)));
}

beforeAll(async () => {
  const entries: Played[] = [];
  const last = await playWeek({
    book: paper,
    afterEntry: (played) => {
      const log = workedOutWhenAsked(played.log);
      entries.push({
        ...played,
        get log() {
          return log();
        },
      });
    },
  });
  week = { entries, log: evaluated(contentOf(last)) };
}, 60_000);

describe("the invented week, typed on paper", () => {
  holdsWholeWeek(() => week, book);
});
