import { describe, expect, it } from "vitest";

import type { ColumnId } from "../../../../src/joblog/formula/log-names.ts";
import type { LogRow } from "../../../../src/joblog/model/definition.ts";
import { moment } from "../../../demo/demo-week-times.ts";
import { weekCostLines, weekLoads } from "./demo-week-facts.ts";
import { weekWith } from "./week-of-sheets.ts";
import { workedLog } from "./worked-log.ts";

const claims = ["D-0427", "D-0431", "D-0436"] as const;
const of = (log: Awaited<ReturnType<typeof workedLog>>, column: ColumnId<"shares">): unknown[] =>
  claims.map((claim) => log.cell("shares", claim, column));

// The invented week's own allocation of 578.99, worked out by hand with largest remainders.
const expected = {
  baskets: { units: [12, 11, 10], shares: [210.54, 193, 175.45] },
  "soil-weighted baskets": { units: [27, 25, 18], shares: [223.33, 206.78, 148.88] },
  "basket-minutes": { units: [102, 94, 76], shares: [217.12, 200.09, 161.78] },
} as const;

describe("a bath's cost", () => {
  it.each(Object.entries(expected))(
    "is shared by %s, counted from the loads, to the cent",
    async (shareBasis, { units, shares }) => {
      const log = await workedLog(weekWith({ shareBasis }));
      expect(log.field("poolTotal")).toBe(578.99);
      expect(of(log, "unitsUsed")).toEqual(units);
      expect(of(log, "share")).toEqual(shares);
      expect(log.field("sharesCheck")).toBe(0);
      expect(log.field("loadsLeftOut")).toBe(0);
      // 26.41 of concentrate, 11.80 of filter bags, 69.00 of labor: the shop's mistake with the hard water.
      expect(log.field("shopTotal")).toBe(107.21);
      expect(log.field("notAllocated")).toBe(0);
    },
  );

  it("goes by typed units where there are any, and says what the loads say", async () => {
    const log = await workedLog(
      weekWith({}, { shares: [{ claim: "D-0427", units: 11 }, { claim: "D-0431" }, { claim: "D-0436", units: 10 }] }),
    );
    expect(of(log, "unitsUsed")).toEqual([11, 11, 10]);
    expect(of(log, "unitsCheck")).toEqual(["the loads say 12", "", "as logged"]);
    expect(log.field("sharesCheck")).toBe(0);
  });

  it("says how many loads no share counts: claim left out, claim or soil missing", async () => {
    const left = await workedLog(weekWith({}, { shares: [{ claim: "D-0427" }, { claim: "D-0431" }] }));
    expect(left.field("sharesCheck")).toBe(0);
    expect(left.field("loadsLeftOut")).toBe(5);
    const open: readonly LogRow<"loads">[] = [
      ...weekLoads,
      { id: "L030", bath: "B-T1-0301", when: moment(4, "15:00"), baskets: 1, soil: "light", minutes: 5 },
      { id: "L031", bath: "B-T1-0301", claim: "D-0427", when: moment(4, "15:30"), baskets: 1, minutes: 5 },
    ];
    const log = await workedLog(weekWith({ shareBasis: "soil-weighted baskets" }, { loads: open }));
    expect(log.field("loadsLeftOut")).toBe(2);
    expect(log.cell("loads", "L030", "check")).toBe("claim missing: cost not shared");
    expect(log.cell("loads", "L031", "check")).toBe("missing: soil");
  });

  it("says aloud what stands on no bath or account", async () => {
    const stray: readonly LogRow<"costLines">[] = [
      ...weekCostLines,
      { id: "C20", what: "no bath", amount: 5, account: "claims" },
      { id: "C21", bath: "B-T1-0301", what: "no account", amount: 7.5 },
    ];
    const log = await workedLog(weekWith({}, { costLines: stray }));
    expect(log.field("notAllocated")).toBe(12.5);
    expect(log.field("poolTotal")).toBe(578.99);
  });
});

describe("the claims of a bath", () => {
  it("stand in the order they came in, with first and last load and what was done between", async () => {
    const log = await workedLog(weekWith({}, { loads: [...weekLoads].reverse() }));
    expect(of(log, "entered")).toEqual([1, 2, 3]);
    const first = of(log, "firstLoad").map(Number);
    [moment(0, "10:05"), moment(1, "09:40"), moment(3, "10:00")].forEach((time, index) => {
      expect(first[index]).toBeCloseTo(time, 6);
    });
    const last = of(log, "lastLoad").map(Number);
    [moment(4, "09:50"), moment(4, "13:00"), moment(4, "14:10")].forEach((time, index) => {
      expect(last[index]).toBeCloseTo(time, 6);
    });
    expect(log.cell("shares", "D-0427", "separation")).toBe("");
    expect(log.cell("shares", "D-0431", "separation")).toBeCloseTo(moment(1, "09:30"), 6);
    expect(log.cell("shares", "D-0436", "separation")).toBeCloseTo(moment(3, "09:55"), 6);
  });
});

describe("a load", () => {
  it("that is a rework counts for nothing and says so", async () => {
    const log = await workedLog(weekWith());
    expect([
      log.cell("loads", "L017", "counted"),
      log.cell("loads", "L017", "weighted"),
      log.cell("loads", "L017", "basketMinutes"),
    ]).toEqual([0, 0, 0]);
    expect(log.cell("loads", "L017", "check")).toBe("rework: not billed twice");
  });

  it("before the fill or after the change-out is pointed at", async () => {
    const odd = { bath: "B-T1-0301", claim: "D-0427", baskets: 1, soil: "light", minutes: 5 };
    const log = await workedLog(
      weekWith(
        {},
        {
          loads: [
            { id: "L1", ...odd, when: moment(-1, "10:00") },
            { id: "L2", ...odd, when: moment(5, "11:00") },
            { id: "L3", ...odd, bath: "nowhere", when: moment(2, "10:00") },
          ],
        },
      ),
    );
    expect(["L1", "L2", "L3"].map((id) => log.cell("loads", id, "check"))).toEqual([
      "bath not yet open then",
      "bath closed by then",
      "bath missing",
    ]);
  });
});
