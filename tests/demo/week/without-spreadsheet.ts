import { expect, it } from "vitest";

import { paperBook } from "../../../scripts/build/paper-log.ts";
import type { LogContent } from "../../../src/joblog/model/definition.ts";
import { contentOf } from "../../../src/joblog/model/log-content.ts";
import { playWeek } from "../../../src/pane/demo/play-week.ts";
import { compareWithGrid } from "../../unit/joblog/evaluate/compare-with-grid.ts";
import type { PlayedWeek } from "./played-week.ts";

async function typedOnPaper(): Promise<readonly LogContent[]> {
  const contents: LogContent[] = [];
  await playWeek({
    book: paperBook(),
    afterEntry: ({ log }) => {
      contents.push(contentOf(log));
    },
  });
  return contents;
}

export function holdsWithoutSpreadsheet(week: () => PlayedWeek): void {
  it("shows in every cell what the grid shows, at the end of every day and of the week", () => {
    const lastOfDay = new Map(week().entries.map(({ event, log }) => [event.at.slice(0, 10), log]));
    for (const log of [...lastOfDay.values(), week().log]) {
      const { agreed, unlike } = compareWithGrid(log);
      expect(unlike).toEqual([]);
      expect(agreed).toBeGreaterThan(500);
    }
  });

  it("typed on paper, as the build does, holds the same after every entry", async () => {
    expect(await typedOnPaper()).toEqual(week().entries.map(({ log }) => contentOf(log)));
  });
}
