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

  describe("counted more than once", () => {
    const count = (id: string, when: number, amount: number) =>
      ({ id, when, concentrate: "CN-1", kind: "count", amount }) as const;
    const recounted = (...counts: readonly ReturnType<typeof count>[]) =>
      workedLog(
        weekWith(
          {},
          { monthEnd: [{ concentrate: "CN-1", month: day(3) }], stockMoves: [...weekStock.slice(0, 2), ...counts] },
        ),
      );

    it("goes by the later count of one day, with or without times, and never by both", async () => {
      for (const [first, second] of [
        [day(5), day(5)],
        [moment(5, "08:00"), moment(5, "10:30")],
        [moment(5, "10:30"), moment(5, "10:30")],
        [moment(5, "10:30"), day(5)],
      ] as const) {
        const log = await recounted(count("S3", first, 22.308), count("S4", second, 22.4));
        expect(log.cell("stockBalance", "CN-1", "book")).toBe(22.4);
        expect(log.cell("stockMoves", "S3", "variance")).toBe(-0.2);
        expect(log.cell("stockMoves", "S4", "variance")).toBe(0.092);
        expect(log.cell("monthEnd", "CN-1", "difference")).toBe(-0.108);
        expect(log.cell("monthEnd", "CN-1", "closing")).toBe(22.4);
      }
    });

    it("takes off what went in between two counts of one day", async () => {
      // 0.95 gal went in at 07:45 that day; 23.458 gal were there before by the book.
      const log = await recounted(count("S3", moment(4, "06:30"), 23.458), count("S4", moment(4, "09:00"), 22.508));
      expect(log.cell("stockMoves", "S3", "variance")).toBe(0);
      expect(log.cell("stockMoves", "S4", "variance")).toBe(0);
      expect(log.cell("stockBalance", "CN-1", "used")).toBe(0);
      const morning = await recounted(count("S3", moment(4, "06:30"), 23.458));
      expect(morning.cell("stockBalance", "CN-1", "used")).toBe(0.95);
      expect(morning.cell("stockBalance", "CN-1", "book")).toBeCloseTo(22.508, 9);
    });

    it("in the minute of an addition or a receipt stands after both, wherever its row is", async () => {
      const together = await recounted(count("S3", moment(4, "07:45"), 22.508));
      expect(together.cell("stockMoves", "S3", "variance")).toBe(0);
      const received = { ...weekStock[1], when: moment(3, "12:00") };
      const log = await workedLog(
        weekWith({}, { stockMoves: [count("S1", day(-1), 22.5), count("S3", moment(3, "12:00"), 23.458), received] }),
      );
      expect(log.cell("stockMoves", "S3", "variance")).toBe(0);
      expect(log.cell("stockBalance", "CN-1", "book")).toBeCloseTo(23.458 - 0.95, 9);
    });
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
