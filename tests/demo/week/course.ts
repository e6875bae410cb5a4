import { expect, it } from "vitest";

import { nextStep } from "../../../src/advice/next-step/next-step.ts";
import { demoWeek } from "../../../src/pane/demo/week.ts";
import { bathOne, march } from "../../../src/pane/demo/week-event.ts";
import { logAt, number, type PlayedWeek, row, serial } from "./played-week.ts";

const count = {
  readings: 30,
  additions: 13,
  benchTests: 26,
  loads: 22,
  items: 30,
  meterChecks: 3,
  care: 18,
  baths: 2,
  releases: 1,
  costLines: 8,
  stockMoves: 3,
} as const;

/** Now's sentence at some moments of the week. */
const sentences: readonly (readonly [moment: string, sentence: RegExp])[] = [
  [march(1, "07:30"), /^Bench test: try the bath at 1\+35\.7/],
  [march(1, "09:10"), /not passed on plastic \(partial\), sealed wood \(fail\): 0\.95 gal more reaches 1\+28/],
  [march(1, "09:40"), /^Baseline: .* take three readings/],
  [march(2, "14:10"), /^Keep going: 0\.43 pH above the trigger/],
  [march(3, "16:35"), /^Near the trigger: 0\.03 pH above the trigger/],
  [march(4, "08:10"), /^Top up: add 1\.39 gal/],
  [march(4, "08:20"), /^Top up: add 1\.39 gal, mix, read again/],
  [march(4, "08:35"), /^Mix, then read: 1\.39 gal went in/],
  [march(4, "08:52"), /^Not back yet: 0\.28 pH under the baseline\. Add 1\.39 gal/],
  [march(4, "09:42"), /^Keep going: 0\.49 pH above the trigger/],
  [march(6, "09:25"), /^Titrate the spent bath, neutralize it in stages/],
  [march(6, "11:35"), /Not released: results awaited/],
  [march(9, "14:25"), /Its release is on record/],
];

export function holdsCourse(week: () => PlayedWeek): void {
  it("every entry of the week is in the log, and nothing else", () => {
    expect(week().entries).toHaveLength(demoWeek.length);
    expect(
      Object.fromEntries(
        Object.keys(count).map((table) => [table, week().log.rows[table as keyof typeof count].length]),
      ),
    ).toEqual(count);
  });

  it.each(sentences)("at %s Now says %s", (moment, sentence) => {
    expect(nextStep(logAt(week(), moment), bathOne, "US", serial(moment)).sentence).toMatch(sentence);
  });

  it("the release stays closed until the results are in, and is released by a person then", () => {
    const states = week().entries.map(({ event, log }) => [event.at, log.rows.releases[0]?.cells.state]);
    expect(states.filter(([at]) => String(at) < march(6, "11:30")).every(([, state]) => state === undefined)).toBe(
      true,
    );
    expect([
      ...new Set(
        states
          .filter(([at]) => String(at) >= march(6, "11:30") && String(at) < march(9, "14:20"))
          .map(([, state]) => state),
      ),
    ]).toEqual(["not released: results awaited"]);
    expect(states.at(-1)?.[1]).toBe("released");
  });

  it("items balance after every entry, and at the end with what was counted in, none pending", () => {
    const outcomes = ["restored", "handCleaned", "notRestorable", "returned", "pending"] as const;
    for (const { event, log } of week().entries) {
      for (const { cells } of log.rows.itemCounts) {
        const accounted = outcomes.reduce((sum, outcome) => sum + Number(cells[outcome]), 0);
        expect([event.at, accounted]).toEqual([event.at, cells.pieces]);
        expect([event.at, cells.difference]).toEqual([event.at, Number(cells.received) - accounted]);
      }
    }
    expect(week().log.rows.itemCounts.map(({ cells }) => [cells.balance, cells.difference])).toEqual(
      Array.from({ length: 3 }, () => ["balances, all accounted for", 0]),
    );
    expect(week().log.rows.itemCounts.map(({ cells }) => [cells.claim, cells.pieces, cells.pending])).toEqual([
      ["D-0427", 132, 0],
      ["D-0431", 91, 0],
      ["D-0436", 71, 0],
    ]);
  });

  it("the night without a lid is told from what loads carried out", () => {
    const makeUp = row(week().log, "additions", { when: serial(march(3, "07:30")) });
    // The level fell by 1.4 in; four loads carried out 0.2 gal each, and 0.2 gal were skimmed.
    expect(number(makeUp, "evaporated") + number(makeUp, "carriedOut")).toBeCloseTo((1.4 * (48 * 24)) / 231, 6);
    expect(number(makeUp, "carriedOut")).toBeCloseTo(4 * 0.2 + 0.2, 9);
  });

  it("no cell of the log shows an error at the end", () => {
    const faulty = Object.entries(week().log.rows).flatMap(([table, rows]) =>
      rows.flatMap(({ cells }) =>
        Object.entries(cells)
          .filter(([, value]) => typeof value === "string" && value.startsWith("#") && value !== "#N/A")
          .map(([column, value]) => `${table} ${column} ${String(value)}`),
      ),
    );
    expect(faulty).toEqual([]);
  });
}
