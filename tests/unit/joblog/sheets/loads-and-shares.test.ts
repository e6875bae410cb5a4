import { describe, expect, it } from "vitest";

import type { ColumnId } from "../../../../src/joblog/formula/log-names.ts";
import type { LogRow } from "../../../../src/joblog/model/definition.ts";
import { moment } from "../../../demo/demo-week-times.ts";
import { weekBaths, weekCostLines, weekLoads } from "./demo-week-facts.ts";
import { weekShares, weekWith } from "./week-of-sheets.ts";
import { workedLog } from "./worked-log.ts";

const claims = ["D-0427", "D-0431", "D-0436"] as const;
const bath = "B-T1-0301";
const of = (log: Awaited<ReturnType<typeof workedLog>>, column: ColumnId<"shares">): unknown[] =>
  claims.map((claim) => log.share(bath, claim, column));

// The invented week's own allocation of 578.99, worked out by hand with largest remainders.
const expected = {
  baskets: { units: [12, 11, 10], shares: [210.54, 193, 175.45] },
  "soil-weighted baskets": { units: [27, 25, 18], shares: [223.33, 206.78, 148.88] },
  "basket-minutes": { units: [102, 94, 76], shares: [217.12, 200.09, 161.78] },
} as const;

const placed = "placed to the cent";

describe("a bath's cost", () => {
  it.each(Object.entries(expected))(
    "is shared by %s, counted from the loads, to the cent",
    async (shareBasis, { units, shares }) => {
      const log = await workedLog(weekWith({ shareBasis }));
      expect(log.cell("baths", bath, "pool")).toBe(578.99);
      expect(of(log, "unitsUsed")).toEqual(units);
      expect(of(log, "share")).toEqual(shares);
      expect([log.cell("baths", bath, "costShared"), log.cell("baths", bath, "costOpen")]).toEqual([578.99, 0]);
      // 26.41 of concentrate, 11.80 of filter bags, 69.00 of labor: the shop's mistake with the hard water.
      expect(log.cell("baths", bath, "costShop")).toBe(107.21);
      expect(log.cell("baths", bath, "costState")).toBe(placed);
      expect([log.field("costNotPlaced"), log.field("costOpen"), log.field("loadAstray")]).toEqual([0, "", ""]);
    },
  );

  it("goes by the bath's own basis where it has one", async () => {
    const [first, second] = weekBaths;
    const log = await workedLog(
      weekWith({ shareBasis: "baskets" }, { baths: [{ ...first, shareBasis: "basket-minutes" }, { ...second }] }),
    );
    expect(of(log, "share")).toEqual(expected["basket-minutes"].shares);
    expect(log.share("B-T2-0303", "D-0436", "basis")).toBe("baskets");
  });

  it("goes by typed units where there are any, and says what the loads say", async () => {
    const typed = [11, undefined, 12];
    const shares = weekShares.map((row, index) => ({ ...row, units: typed[index] }));
    const log = await workedLog(weekWith({}, { shares }));
    expect(of(log, "unitsUsed")).toEqual([11, 11, 12]);
    expect(of(log, "check")).toEqual(["the loads say 12", "", "the loads say 10"]);
    expect(log.cell("baths", bath, "costOpen")).toBe(0);
    expect(log.cell("baths", bath, "costState")).toBe(placed);
  });

  it("goes to one claim alone where the line says so, and the others share the rest", async () => {
    const alone: LogRow<"costLines"> = {
      id: "C20",
      bath,
      what: "Delivery",
      amount: 40,
      account: "claims",
      claim: "D-0431",
    };
    const log = await workedLog(
      weekWith(
        { statementClaim: "D-0431" },
        { costLines: [...weekCostLines, alone, { ...alone, id: "C21", bath: undefined, amount: 2.5 }] },
      ),
    );
    expect([log.cell("baths", bath, "pool"), log.cell("baths", bath, "costDirect")]).toEqual([578.99, 40]);
    expect(of(log, "share")).toEqual(expected.baskets.shares);
    expect(log.cell("claims", "D-0431", "cost")).toBe(193 + 42.5);
    expect(log.field("statementCost")).toBe(235.5);
    expect(["C20", "C21"].map((id) => log.cell("statementAlone", id, "amount"))).toEqual([40, 2.5]);
    expect([log.field("costNotPlaced"), log.cell("claims", "D-0431", "costState")]).toEqual([0, "placed"]);
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
    expect(log.share(bath, "D-0427", "separation")).toBe("");
    expect(log.share(bath, "D-0431", "separation")).toBeCloseTo(moment(1, "09:30"), 6);
    expect(log.share(bath, "D-0436", "separation")).toBeCloseTo(moment(3, "09:55"), 6);
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

describe("the sums on Costs", () => {
  it("add up to what they are made of", async () => {
    const log = await workedLog(weekWith());
    const sums = (
      ["costTotal", "costOfAdditions", "costOfLines", "costToClaims", "costShares", "costAlone"] as const
    ).map((id) => log.field(id));
    // The invented week's books: 277.78 of concentrate, 455.24 of cost lines, 578.99 and 46.82 shared out.
    expect(sums).toEqual([733.02, 277.78, 455.24, 625.81, 625.81, 0]);
    expect(log.field("costLeftOut")).toBe(0);
  });

  it("say how many rows they leave out", async () => {
    const content = weekWith();
    const log = await workedLog(
      weekWith(
        {},
        {
          costLines: [
            ...(content.rows.costLines ?? []),
            { id: "C9", what: "courier", amount: "12,5", account: "claims" },
          ],
          loads: weekLoads.map((row) => (row.bath === "B-T2-0303" ? { ...row, claim: "" } : row)),
          additions: [
            ...(content.rows.additions ?? []),
            { id: "A90", bath: "B-T1-0301", amount: "1.2 gal", kind: "concentrate" },
          ],
        },
      ),
    );
    expect(log.field("costLeftOut")).toBe(3);
    expect(log.field("costTotal")).toBe(733.02);
  });
});
