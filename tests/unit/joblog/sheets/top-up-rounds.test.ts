import { describe, expect, it } from "vitest";

import type { LogRow } from "../../../../src/joblog/model/definition.ts";
import { demoBath as bath, moment } from "../../../demo/demo-week-times.ts";
import { demoRowsAnd, demoWith, type WorkedLog, workedLog } from "./worked-log.ts";

type Day = 2 | 3 | 4 | 5;

let running = 100;

const reading = (day: Day, clock: string, ph: number, purpose = "check"): LogRow<"readings"> => ({
  id: `R${String((running += 1))}`,
  bath,
  when: moment(day, clock),
  purpose,
  ph,
  temperature: 77,
});

const topUp = (day: Day, clock: string, amount: number, more: LogRow<"additions"> = {}): LogRow<"additions"> => ({
  id: `A${String((running += 1))}`,
  bath,
  when: moment(day, clock),
  kind: "concentrate",
  purpose: "top-up",
  amount,
  account: "claims",
  ...more,
});

async function worked(
  readings: readonly LogRow<"readings">[],
  additions: readonly LogRow<"additions">[],
): Promise<WorkedLog> {
  return workedLog(
    demoWith({ readings: demoRowsAnd("readings", ...readings), additions: demoRowsAnd("additions", ...additions) }),
  );
}

// Two additions a round: a third of the 4.178 gal at first (common practice, no source), then what was missing.
const firstRound = {
  readings: [
    reading(2, "08:00", 10.85),
    reading(2, "08:40", 11.2, "after top-up"),
    reading(2, "09:20", 11.4, "after top-up"),
  ],
  additions: [topUp(2, "08:10", 1.39), topUp(2, "08:50", 0.61)],
};

describe("rounds of top-ups", () => {
  it("are none before a top-up is due", async () => {
    const log = await worked([], []);
    for (const column of ["firstRound", "largestRound", "changeOut"] as const)
      expect(log.cell("baths", bath, column)).toBe("");
  });

  it("join the additions up to the next check that asks for one", async () => {
    const log = await worked(firstRound.readings, firstRound.additions);
    expect(log.cell("baths", bath, "firstRound")).toBeCloseTo(2, 9);
    expect(log.cell("baths", bath, "largestRound")).toBe("");
    expect(log.cell("baths", bath, "changeOut")).toBe("");
  });

  it("that grow by more than the setting ask for a thought about a change-out", async () => {
    const second = {
      readings: [reading(3, "08:00", 10.84)],
      additions: [topUp(3, "08:10", 1.39), topUp(3, "08:50", 1.02)],
    };
    const log = await worked(
      [...firstRound.readings, ...second.readings],
      [...firstRound.additions, ...second.additions],
    );
    expect(log.cell("baths", bath, "largestRound")).toBeCloseTo(2.41, 9);
    expect(log.cell("baths", bath, "changeOut")).toBe("top-ups grow: consider a change-out");
  });

  it("that stay within it ask for nothing", async () => {
    const second = { readings: [reading(3, "08:00", 10.84)], additions: [topUp(3, "08:10", 1.39)] };
    const log = await worked(
      [...firstRound.readings, ...second.readings],
      [...firstRound.additions, ...second.additions],
    );
    expect(log.cell("baths", bath, "largestRound")).toBeCloseTo(1.39, 9);
    expect(log.cell("baths", bath, "changeOut")).toBe("");
  });

  it("are not split by a check that asks again before the bath is back", async () => {
    const log = await worked(
      [reading(2, "08:00", 10.6), reading(2, "08:40", 10.85)],
      [topUp(2, "08:10", 1.39), topUp(2, "08:50", 1.8)],
    );
    expect(log.cell("baths", bath, "firstRound")).toBeCloseTo(3.19, 9);
    expect(log.cell("baths", bath, "largestRound")).toBe("");
  });

  it("pass over a round in which nothing went in", async () => {
    const unanswered = [reading(2, "08:00", 10.85), reading(2, "10:00", 11.2)];
    const log = await worked([...unanswered, reading(3, "08:00", 10.85)], [topUp(3, "08:10", 1.39)]);
    expect(log.cell("baths", bath, "firstRound")).toBeCloseTo(1.39, 9);
    expect(log.cell("baths", bath, "largestRound")).toBe("");
  });

  it("count neither make-up nor the shop's correction", async () => {
    const second = {
      readings: [reading(3, "08:00", 10.84)],
      additions: [
        topUp(3, "08:10", 1.39),
        topUp(3, "08:50", 0.9, { purpose: "make-up" }),
        topUp(3, "08:55", 0.9, { purpose: "corrective", account: "shop" }),
      ],
    };
    const log = await worked(
      [...firstRound.readings, ...second.readings],
      [...firstRound.additions, ...second.additions],
    );
    expect(log.cell("baths", bath, "largestRound")).toBeCloseTo(1.39, 9);
    expect(log.cell("baths", bath, "topUpTotal")).toBeCloseTo(2 + 1.39, 9);
    expect(log.cell("baths", bath, "topUpShare")).toBeCloseTo((2 + 1.39) / 4.178, 9);
  });

  it("count by their times, not by their rows, and at the same minute as the reading too", async () => {
    const second = {
      readings: [reading(3, "08:00", 10.84)],
      additions: [topUp(3, "08:00", 1.39), topUp(3, "08:50", 1.02)],
    };
    const log = await worked([...second.readings, ...firstRound.readings].reverse(), [
      ...second.additions,
      ...firstRound.additions,
    ]);
    expect(log.cell("baths", bath, "firstRound")).toBeCloseTo(2, 9);
    expect(log.cell("baths", bath, "largestRound")).toBeCloseTo(2.41, 9);
  });
});

describe("top-ups in all", () => {
  it("that reach the opening dose ask for a thought about a change-out, though they do not grow", async () => {
    const second = {
      readings: [reading(3, "08:00", 10.84), reading(3, "10:00", 11.4, "after top-up"), reading(4, "08:00", 10.84)],
      additions: [topUp(3, "08:10", 2), topUp(4, "08:10", 0.178)],
    };
    const log = await worked(
      [...firstRound.readings, ...second.readings],
      [...firstRound.additions, ...second.additions],
    );
    expect(log.cell("baths", bath, "topUpShare")).toBeCloseTo(1, 9);
    expect(log.cell("baths", bath, "changeOut")).toBe("top-ups have reached the limit: consider a change-out");
  });
});
