import { describe, expect, it } from "vitest";

import { day, moment } from "../../../demo/demo-week-times.ts";
import { weekConcentrate, weekStock } from "./demo-week-facts.ts";
import { weekWith } from "./week-of-sheets.ts";
import { workedLog } from "./worked-log.ts";

describe("the stock of a concentrate", () => {
  it("comes to the invented week's book: 22.508 gal against 22.308 counted, 0.20 short", async () => {
    const log = await workedLog(weekWith());
    expect(log.cell("stockMoves", "S1", "book")).toBe("");
    expect(log.cell("stockMoves", "S3", "book")).toBeCloseTo(22.508, 9);
    expect(log.cell("stockMoves", "S3", "variance")).toBe(-0.2);
    expect(log.cell("stockBalance", "CN-1", "counted")).toBe(22.308);
    expect(log.cell("stockBalance", "CN-1", "book")).toBeCloseTo(22.308, 9);
  });

  it("goes on from the last count and takes what left it since, into a bath or not", async () => {
    const later = {
      id: "A020",
      bath: "B-T2-0303",
      when: moment(6, "08:00"),
      kind: "concentrate",
      purpose: "top-up",
      amount: 0.5,
      account: "claims",
    };
    const log = await workedLog(
      weekWith(
        {},
        {
          additions: [later, ...weekConcentrate],
          stockMoves: [
            { id: "S5", when: day(6), concentrate: "CN-1", kind: "issue", amount: 0.25 },
            { id: "S4", when: day(6), concentrate: "CN-1", kind: "receipt", amount: 5 },
            ...[...weekStock].reverse(),
          ],
        },
      ),
    );
    expect(log.cell("stockBalance", "CN-1", "received")).toBe(5);
    expect(log.cell("stockBalance", "CN-1", "used")).toBeCloseTo(0.75, 9);
    expect(log.cell("stockBalance", "CN-1", "book")).toBeCloseTo(22.308 + 5 - 0.75, 9);
    // Both without a time, so that the row tells which was first.
    expect(log.cell("stockMoves", "S5", "book")).toBeCloseTo(22.308 - 0.75, 9);
    expect(log.cell("stockMoves", "S4", "book")).toBeCloseTo(22.308 + 5 - 0.75, 9);
  });

  it("lasts by the median of the days on which some was used, and asks to reorder in time", async () => {
    // Days: 4.178, 1.684, 3.18 and 0.95 gal; their median is (1.684 + 3.18) / 2.
    const log = await workedLog(weekWith());
    expect(log.cell("stockBalance", "CN-1", "dailyUse")).toBeCloseTo(2.432, 9);
    expect(log.cell("stockBalance", "CN-1", "daysLeft")).toBeCloseTo(22.308 / 2.432, 9);
    expect(log.cell("stockBalance", "CN-1", "reorderAt")).toBeCloseTo(2.432 * 4 + 5, 9);
    expect(log.cell("stockBalance", "CN-1", "reorder")).toBe("enough");
    const slow = await workedLog(weekWith({}, { stockBalance: [{ concentrate: "CN-1", leadDays: 8, safety: 5 }] }));
    expect(slow.cell("stockBalance", "CN-1", "reorder")).toBe("reorder");
  });
});
