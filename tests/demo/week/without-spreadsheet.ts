import { expect, it } from "vitest";

import { compareWithGrid } from "../../unit/joblog/evaluate/compare-with-grid.ts";
import type { PlayedWeek } from "./played-week.ts";

export function holdsWithoutSpreadsheet(week: () => PlayedWeek): void {
  it("shows in every cell what the grid shows, at the end of every day and of the week", () => {
    const lastOfDay = new Map(week().entries.map(({ event, log }) => [event.at.slice(0, 10), log]));
    for (const log of [...lastOfDay.values(), week().log]) {
      const { agreed, unlike } = compareWithGrid(log);
      expect(unlike).toEqual([]);
      expect(agreed).toBeGreaterThan(500);
    }
  });
}
