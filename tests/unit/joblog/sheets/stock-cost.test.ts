import { describe, expect, it } from "vitest";

import type { LogContent, LogRow } from "../../../../src/joblog/model/definition.ts";
import { firstTwoDays } from "../../../demo/days/demo-week.ts";
import { day, moment } from "../../../demo/demo-week-times.ts";
import { averagesWritten, costsWritten } from "./averages-written.ts";
import { weekConcentrate, weekStock } from "./demo-week-facts.ts";
import { weekWith } from "./week-of-sheets.ts";
import { workedLog } from "./worked-log.ts";

type Move = LogRow<"stockMoves">;

/** Lines of one concentrate, a day apart, and the month that they are in. */
function ledger(moves: readonly Move[]): LogContent {
  return weekWith(
    {},
    {
      additions: [],
      monthEnd: [{ concentrate: "CN-1", month: day(3) }],
      stockMoves: moves.map((move, index) => ({
        id: `S${String(index + 1)}`,
        when: moment(index, "12:00"),
        concentrate: "CN-1",
        ...move,
      })),
    },
  );
}

const packAt = (packPrice: number): readonly LogRow<"concentrates">[] =>
  (firstTwoDays.rows.concentrates ?? []).map((concentrate) => ({ ...concentrate, packPrice }));

describe("the average cost of what is on the shelf", () => {
  // Worked example of the moving average of a perpetual inventory at justaaa.com/accounting/965119 (read 2026-11): 150
  // at 5, 350 at 6 make 5.700; after 420 are gone, 80 and 240 at 7 make 6.675; after 50 more 270 are left, 1,802 in
  // all, and 2,728 went out, both rounded to the dollar. Its month begins with stock, ours with a count on its first day.
  it("moves with each receipt and with nothing else, as in a published example", async () => {
    const log = await workedLog(
      await averagesWritten(
        ledger([
          { kind: "count", amount: 150, price: 5 },
          { kind: "receipt", amount: 350, price: 6 },
          { kind: "issue", amount: 420 },
          { kind: "receipt", amount: 240, price: 7 },
          { kind: "issue", amount: 50 },
        ]),
      ),
    );
    const cell = (id: string, column: "averageAfter" | "value" | "book") => log.cell("stockMoves", id, column);
    expect([cell("S1", "averageAfter"), cell("S2", "averageAfter"), cell("S4", "averageAfter")]).toEqual([
      5, 5.7, 6.675,
    ]);
    const out = Number(cell("S3", "value")) + Number(cell("S5", "value"));
    expect([cell("S3", "value"), out, Math.round(out)]).toEqual([2394, 2727.75, 2728]);
    expect(cell("S5", "book")).toBe(270);
    expect(log.cell("monthEnd", "CN-1", "closingValue")).toBe(1802.25);
  });

  // Another, at instantcertcredit.com/courses/5/lesson/318 (read 2026-11): of 500 at 2.40 there are 200 left, 480; 100
  // more at 3.50 make 830 for 300, 2.77 each.
  it("is value by amount on hand, as in a second one", async () => {
    const log = await workedLog(
      await averagesWritten(
        ledger([
          { kind: "count", amount: 500, price: 2.4 },
          { kind: "issue", amount: 300 },
          { kind: "receipt", amount: 100, price: 3.5 },
        ]),
      ),
    );
    expect(log.cell("stockMoves", "S2", "value")).toBe(720);
    expect(log.cell("stockMoves", "S3", "worth")).toBe(830);
    expect(Number(log.cell("stockMoves", "S3", "averageAfter")).toFixed(2)).toBe("2.77");
  });

  it("starts anew with the price of a receipt where nothing was on hand", async () => {
    const log = await workedLog(
      await averagesWritten(
        ledger([
          { kind: "count", amount: 0, price: 20 },
          { kind: "receipt", amount: 10, price: 30 },
        ]),
      ),
    );
    expect(log.cell("stockMoves", "S2", "averageAfter")).toBe(30);
  });

  it("says where it is not written down, where another follows, and where a receipt has no price", async () => {
    const moves: readonly Move[] = [
      { kind: "count", amount: 10, averageAfter: 20 },
      { kind: "receipt", amount: 10, price: 30 },
      { kind: "receipt", amount: 10, price: 30, averageAfter: 24 },
      { kind: "receipt", amount: 10 },
    ];
    const log = await workedLog(ledger(moves));
    expect(["S1", "S2", "S3", "S4"].map((id) => log.cell("stockMoves", id, "averageCheck"))).toEqual([
      "",
      "not written down",
      // 20 on hand at 20.00, and 10 at 30.00: 23.333333.
      "another follows from the lines before",
      "price missing",
    ]);
    expect(log.cell("stockMoves", "S3", "averageWouldBe")).toBeCloseTo(70 / 3, 9);
    expect(log.cell("stockMoves", "S4", "value")).toBe("");
  });
});

describe("the cost of an addition", () => {
  it("is the same after the price has risen, where the unit cost is written down", async () => {
    const posted = weekConcentrate.map((addition) => ({ ...addition, unitCost: 27.8 }));
    const week = (additions: readonly LogRow<"additions">[], packPrice: number) =>
      workedLog(weekWith({}, { additions, concentrates: packAt(packPrice) }));
    const pool = async (additions: readonly LogRow<"additions">[], packPrice: number): Promise<unknown> =>
      (await week(additions, packPrice)).cell("baths", "B-T1-0301", "pool");
    expect(await pool(posted, 139)).toBe(578.99);
    expect(await pool(posted, 160)).toBe(578.99);
    // As it was with one price for all that ever went in.
    expect(await pool(weekConcentrate, 160)).toBe(609.9);
  });

  it("says what it is priced by: what is written down, the average of its time, or the pack", async () => {
    const [before, after] = [moment(3, "09:20"), moment(4, "07:45")];
    const bath = { bath: "B-T1-0301", kind: "concentrate", purpose: "top-up", amount: 1, account: "claims" } as const;
    const additions: readonly LogRow<"additions">[] = [
      { ...bath, id: "A1", when: before },
      { ...bath, id: "A2", when: after },
      { ...bath, id: "A3", when: after, unitCost: 25 },
      { ...bath, id: "A4", when: moment(-2, "08:00") },
    ];
    const stockMoves: readonly Move[] = [
      { id: "S1", when: moment(-1, "08:00"), concentrate: "CN-1", kind: "count", amount: 20, averageAfter: 26 },
      {
        id: "S2",
        when: moment(3, "12:00"),
        concentrate: "CN-1",
        kind: "receipt",
        amount: 10,
        price: 29,
        averageAfter: 27,
      },
    ];
    const log = await workedLog(weekWith({}, { additions, stockMoves }));
    expect(
      ["A1", "A2", "A3", "A4"].map((id) => [log.cell("additions", id, "cost"), log.cell("additions", id, "costBasis")]),
    ).toEqual([
      [26, "average then, not posted"],
      [27, "average then, not posted"],
      [25, "posted"],
      [27.8, "pack price, not posted"],
    ]);
  });

  it("of a priced water says so too, and of one without a price nothing", async () => {
    const waters = (firstTwoDays.rows.waters ?? []).map((water) => ({
      ...water,
      price: water.water === "RO" ? 0.031 : undefined,
    }));
    const water = { bath: "B-T1-0301", kind: "water", purpose: "make-up", amount: 100, account: "claims" } as const;
    const additions: readonly LogRow<"additions">[] = [
      { ...water, id: "W1", when: moment(3, "09:20"), water: "RO" },
      { ...water, id: "W2", when: moment(3, "09:30"), water: "RO", unitCost: 0.05 },
      { ...water, id: "W3", when: moment(3, "09:40"), water: "SOFT" },
    ];
    const log = await workedLog(weekWith({}, { additions, waters }));
    expect(
      ["W1", "W2", "W3"].map((id) => [log.cell("additions", id, "cost"), log.cell("additions", id, "costBasis")]),
    ).toEqual([
      [3.1, "water price, not posted"],
      [5, "posted"],
      ["", ""],
    ]);
  });
});

describe("a month's end in money", () => {
  const march = [{ concentrate: "CN-1", month: day(3) }];
  const values = [
    "openingValue",
    "receivedValue",
    "costForClaims",
    "costToShop",
    "costForNobody",
    "issuedValue",
    "differenceValue",
    "closingValue",
    "rounding",
    "valueCheck",
  ] as const;

  // 22.5 at 27.80; 13.458 of it left when 10 at 28.40 came: 28.0558. By that the 0.95 of the day after, and the 0.2 that lack.
  it("comes out even once what the week cost is written down", async () => {
    const log = await workedLog(await costsWritten(weekWith({}, { monthEnd: march })));
    expect(log.cell("stockMoves", "S2", "averageAfter")).toBeCloseTo((13.458 * 27.8 + 284) / 23.458, 6);
    expect(values.map((column) => log.cell("monthEnd", "CN-1", column))).toEqual([
      625.5, 284, 251.37, 26.65, 0, 0, -5.61, 625.87, 0, 0,
    ]);
    expect(log.cell("monthEnd", "CN-1", "amountCheck")).toBe(0);
  });

  // 625.50 + 284.00 - 251.37 - 26.41 - 5.56 = 626.16: ten gallons that cost 0.60 more than they are valued at.
  it("says what is left over as long as nothing is written down: 626.16 come to a closing of 620.16", async () => {
    const log = await workedLog(weekWith({}, { monthEnd: march }));
    expect(values.map((column) => log.cell("monthEnd", "CN-1", column))).toEqual([
      625.5, 284, 251.37, 26.41, 0, 0, -5.56, 620.16, 0, 6,
    ]);
  });

  it("stays as it was when the pack's price changes", async () => {
    const written = await costsWritten(weekWith({}, { monthEnd: march }));
    const log = await workedLog({ ...written, rows: { ...written.rows, concentrates: packAt(160) } });
    expect(log.cell("monthEnd", "CN-1", "closingValue")).toBe(625.87);
    expect(log.cell("monthEnd", "CN-1", "valueCheck")).toBe(0);
  });

  it("shows a line that does not count, in the amount", async () => {
    const spoiled: readonly Move[] = weekStock.map((move) => (move.id === "S2" ? { ...move, amount: 10 } : move));
    const log = await workedLog(weekWith({}, { monthEnd: march, stockMoves: spoiled }));
    expect(log.cell("monthEnd", "CN-1", "amountCheck")).toBe(0);
    const text: readonly Move[] = weekStock.map((move) => (move.id === "S3" ? { ...move, amount: "22,308" } : move));
    const wrong = await workedLog(weekWith({}, { monthEnd: march, stockMoves: text }));
    expect(wrong.cell("monthEnd", "CN-1", "amountCheck")).toBe(22.508);
  });
});
