import { describe, expect, it } from "vitest";

import type { ColumnId } from "../../../../src/joblog/formula/log-names.ts";
import { day, moment } from "../../../demo/demo-week-times.ts";
import { weekConcentrate } from "./demo-week-facts.ts";
import { weekWith } from "./week-of-sheets.ts";
import { workedLog } from "./worked-log.ts";

/** 4 March 2027, a day of the invented week. */
const march = day(3);
const line = (month: number) => ({ concentrate: "CN-1", month });

describe("a month's end of a concentrate", () => {
  // The invented week's stock list: 22.5 counted before, 10 received, 9.042 and 0.95 gal into baths, 22.308 counted after.
  it("says where the week's concentrate went, on whose account, and what the count lacks", async () => {
    const log = await workedLog(weekWith({}, { monthEnd: [line(march)] }));
    const cell = (column: ColumnId<"monthEnd">): unknown => log.cell("monthEnd", "CN-1", column);
    const known: readonly (readonly [ColumnId<"monthEnd">, number])[] = [
      ["opening", 22.5],
      ["received", 10],
      ["usedForClaims", 3.275 + 0.903 + 0.975 + 0.709 + 1.39 + 1.39 + 0.4],
      ["usedByShop", 0.95],
      ["usedForNobody", 0],
      ["issued", 0],
      ["difference", -0.2],
      ["closing", 22.308],
    ];
    for (const [column, value] of known) expect(cell(column), column).toBeCloseTo(value, 6);
  });

  // 139.00 for 5 gal: each addition to the cent, as the claims are billed, and the shelf at the same price.
  it("values it as the claims are billed", async () => {
    const log = await workedLog(weekWith({}, { monthEnd: [line(march)] }));
    expect(log.cell("monthEnd", "CN-1", "costForClaims")).toBeCloseTo(
      91.05 + 25.1 + 27.11 + 19.71 + 38.64 + 38.64 + 11.12,
      6,
    );
    expect(log.cell("monthEnd", "CN-1", "costToShop")).toBeCloseTo(26.41, 6);
    expect(log.cell("stockMoves", "S2", "value")).toBeCloseTo(10 * 28.4, 6);
    expect(log.cell("monthEnd", "CN-1", "closingValue")).toBeCloseTo(22.308 * 27.8, 2);
  });

  it("before the first count has no opening, and closes on it", async () => {
    const log = await workedLog(weekWith({}, { monthEnd: [line(march - 10)] }));
    expect(log.cell("monthEnd", "CN-1", "opening")).toBe("not counted before");
    expect(log.cell("monthEnd", "CN-1", "closing")).toBeCloseTo(22.5, 9);
    expect(log.cell("monthEnd", "CN-1", "difference")).toBe("");
  });

  it("in the next month opens where this one closed, over the turn of a year too", async () => {
    const log = await workedLog(weekWith({}, { monthEnd: [line(march + 31)] }));
    expect(log.cell("monthEnd", "CN-1", "opening")).toBeCloseTo(22.308, 9);
    expect(log.cell("monthEnd", "CN-1", "usedForClaims")).toBe(0);
    const december = await workedLog(weekWith({}, { monthEnd: [line(march + 300)] }));
    // 29 December 2027: the month ends with the year.
    expect(Number(december.cell("monthEnd", "CN-1", "until")) - Number(december.cell("monthEnd", "CN-1", "from"))).toBe(
      31,
    );
    expect(december.cell("monthEnd", "CN-1", "difference")).toBe(0);
  });

  it("names what no account was given for, and other issues apart", async () => {
    const unsaid = {
      id: "A020",
      bath: "B-T2-0303",
      when: moment(6, "08:00"),
      kind: "concentrate",
      purpose: "top-up",
      amount: 0.5,
    };
    const log = await workedLog(
      weekWith(
        {},
        {
          additions: [unsaid, ...weekConcentrate],
          monthEnd: [line(march)],
          stockMoves: [
            { id: "S1", when: day(-1), concentrate: "CN-1", kind: "count", amount: 22.5 },
            { id: "S2", when: day(7), concentrate: "CN-1", kind: "issue", amount: 0.25 },
          ],
        },
      ),
    );
    expect(log.cell("monthEnd", "CN-1", "usedForNobody")).toBeCloseTo(0.5, 9);
    expect(log.cell("monthEnd", "CN-1", "issued")).toBe(0.25);
    expect(log.cell("monthEnd", "CN-1", "difference")).toBe(0);
    expect(log.cell("monthEnd", "CN-1", "closing")).toBeCloseTo(22.5 - 9.042 - 0.95 - 0.5 - 0.25, 6);
  });
});

describe("the sums of a month over all concentrates", () => {
  const ids = [
    "monthOpening",
    "monthReceived",
    "monthClaims",
    "monthShop",
    "monthNobody",
    "monthIssued",
    "monthDifference",
    "monthClosing",
  ] as const;
  const columns = [
    "openingValue",
    "receivedValue",
    "costForClaims",
    "costToShop",
    "costForNobody",
    "issuedValue",
    "differenceValue",
    "closingValue",
  ] as const;
  const second = { concentrate: "CN-2", packVolume: 5, packPrice: 50 };
  const withSecond = (monthOfTotals?: number) => {
    const content = weekWith();
    return weekWith(
      { ...(monthOfTotals === undefined ? {} : { monthOfTotals }) },
      {
        concentrates: [...(content.rows.concentrates ?? []), second],
        stockMoves: [
          ...(content.rows.stockMoves ?? []),
          { id: "S8", when: day(1), concentrate: "CN-2", kind: "count", amount: 3 },
        ],
        monthEnd: [march + 31, march].flatMap((month) => [line(month), { concentrate: "CN-2", month }]),
      },
    );
  };

  it("are of the last month that has lines, to the cent", async () => {
    const log = await workedLog(withSecond());
    const lines = ["CN-1", "CN-2"].map((key) => columns.map((column) => Number(log.cell("monthEnd", key, column))));
    expect(log.field("monthFrom")).toBe(log.cell("monthEnd", "CN-1", "from"));
    expect(ids.map((id) => log.field(id))).toEqual(
      columns.map((_, at) => Number(lines.reduce((all, values) => all + (values[at] ?? 0), 0).toFixed(2))),
    );
    // 3 gal of 50.00 for 5.
    expect(lines[1]?.at(-1)).toBe(30);
    expect([log.field("monthUnvalued"), log.field("monthLeftOut")]).toEqual([0, ""]);
  });

  it("name the concentrate that they leave out, and say where a month has no line", async () => {
    const log = await workedLog(withSecond(march));
    expect([log.field("monthUnvalued"), log.field("monthLeftOut")]).toEqual([1, "CN-2"]);
    expect(log.field("monthClosing")).toBe(Number((22.308 * 27.8 + 30).toFixed(2)));
    const other = await workedLog(withSecond(march + 100));
    expect(other.field("monthLeftOut")).toBe("no line of the month");
    const none = await workedLog(weekWith({}, { monthEnd: [] }));
    expect([none.field("monthFrom"), none.field("monthClosing"), none.field("monthLeftOut")]).toEqual(["", "", ""]);
  });
});
