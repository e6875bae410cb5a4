import { expect, it } from "vitest";

import type { Cells } from "../../../src/joblog/model/definition.ts";
import type { LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import { shareBases } from "../../../src/joblog/model/words.ts";
import { shareWeek, type WeekBook } from "../../../src/pane/demo/play-week.ts";
import { numberIn, readCsv, textIn } from "../../reference/read-csv.ts";
import { number, type PlayedWeek, row, serial } from "./played-week.ts";

const shares = readCsv("../demo/week/expected-shares.csv");

/** What goes into the pool, as the week's books have it; the first two come from the additions. */
const pool = {
  opening: 116.15,
  topUps: 88.4,
  water: 3.9,
  electricity: 8.42,
  labor: 253,
  bags: 11.8,
  acid: 1.32,
  sludge: 96,
} as const;

export function holdsMoney(week: () => PlayedWeek, book?: WeekBook): void {
  const ours = (): Cells => row(week().log, "baths", { bath: "B-T1-0301" });

  it("the pool's concentrate comes from the additions at the pack's price, to the cent", () => {
    const cost = (purpose: string): number =>
      week()
        .log.rows.additions.filter(
          ({ cells }) => cells.bath === "B-T1-0301" && cells.kind === "concentrate" && cells.purpose === purpose,
        )
        .reduce((sum, { cells }) => sum + number(cells, "cost"), 0);
    expect(cost("opening")).toBeCloseTo(pool.opening, 9);
    expect(cost("top-up")).toBeCloseTo(pool.topUps, 9);
    expect(cost("corrective")).toBeCloseTo(26.65, 9);
    expect(Object.values(pool).reduce((sum, one) => sum + one, 0)).toBeCloseTo(number(ours(), "pool"), 9);
  });

  // At 0.031 a gallon the 126.17 gal of RO water that were logged come to 3.91; the week's books say 3.90.
  it("water is booked by the week, not by the addition, so that it counts once", () => {
    const gallons = week()
      .log.rows.additions.filter(({ cells }) => cells.water === "RO")
      .reduce((sum, { cells }) => sum + number(cells, "amount"), 0);
    expect(gallons * 0.031).toBeCloseTo(pool.water + 0.01, 2);
    expect(week().log.rows.additions.filter(({ cells }) => cells.kind === "water" && cells.cost !== undefined)).toEqual(
      [],
    );
  });

  it("the shop bears its own mistake: corrective concentrate, bags and labor", () => {
    expect(number(ours(), "costShop")).toBeCloseTo(26.65 + 11.8 + 69, 9);
    expect(number(week().log.fields, "costNotPlaced")).toBe(0);
  });

  it("stock is 0.20 gal short at the end, and no count is compared before there was one", () => {
    expect(row(week().log, "stockMoves", { when: serial("2027-02-28T17:00") })["variance"]).toBeUndefined();
    expect(row(week().log, "stockMoves", { when: serial("2027-03-06T12:00") })["book"]).toBeCloseTo(22.508, 9);
  });

  let shared: LogSnapshot | undefined;

  it.each(shareBases)(
    "by %s every claim's share is the list's, to the cent, and nothing is left over",
    async (basis) => {
      const log = await shareWeek(shared ?? week().log, basis, book);
      shared = log;
      const expected = shares.filter((one) => textIn(one, "basis") === basis);
      expect(expected).toHaveLength(3);
      for (const one of expected) {
        const claim = row(log, "shares", { bath: "B-T1-0301", claim: textIn(one, "claim") });
        expect([claim["unitsUsed"], claim["share"]]).toEqual([numberIn(one, "units"), numberIn(one, "share")]);
      }
      expect([log.fields.costNotPlaced, log.fields.costOpen, log.fields.loadAstray]).toEqual([0, undefined, undefined]);
    },
    120_000,
  );
}
