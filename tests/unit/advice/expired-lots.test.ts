import { describe, expect, it } from "vitest";

import { expiredLots } from "../../../src/advice/expired-lots.ts";
import { serialOf } from "../../../src/advice/wording/moments.ts";
import type { LogRow } from "../../../src/joblog/model/definition.ts";
import type { LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";

const day = (text: string): number => {
  const serial = serialOf(text);
  if (serial === undefined) throw new Error(text);
  return serial;
};

const receipt = (lot: string | undefined, order: number, amount: number, expiry?: string): LogRow<"stockMoves"> => ({
  concentrate: "CN-1",
  kind: "receipt",
  order,
  amount,
  lot,
  expiry: expiry === undefined ? undefined : day(expiry),
});

function lots(book: number | undefined, now: string, ...moves: readonly LogRow<"stockMoves">[]) {
  const rows = { stockMoves: moves.map((cells, position) => ({ position, cells })) };
  return expiredLots({ fields: {}, rows: rows as unknown as LogSnapshot["rows"] }, "cn-1", book, day(now)).map(
    ({ lot }) => lot,
  );
}

describe("a lot whose last day is over", () => {
  const old = receipt("L-1", 1, 10, "2027-03-01");

  it("is told from the day after on, with a number or without", () => {
    expect(lots(10, "2027-03-01T23:00", old)).toEqual([]);
    expect(lots(10, "2027-03-02T00:10", old)).toEqual(["L-1"]);
    expect(lots(10, "2027-03-02", receipt(undefined, 1, 10, "2027-03-01"))).toEqual([undefined]);
  });

  it("is not told once no more is on the shelf than came after it", () => {
    const fresh = receipt("L-2", 2, 5, "2028-01-01");
    expect(lots(5, "2027-03-02", old, fresh)).toEqual([]);
    expect(lots(5.1, "2027-03-02", fresh, old)).toEqual(["L-1"]);
    expect(lots(0, "2027-03-02", old)).toEqual([]);
  });

  it("is told where nothing was ever counted, and never of another concentrate or without a date", () => {
    expect(lots(undefined, "2027-03-02", old, receipt("L-3", 2, 4))).toEqual(["L-1"]);
    expect(lots(10, "2027-03-02", { ...old, concentrate: "CN-2" }, { ...old, kind: "count" })).toEqual([]);
  });
});
