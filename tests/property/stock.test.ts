import fc from "fast-check";
import { describe, expect, it } from "vitest";

import { EvaluatedLog } from "../../src/joblog/evaluate/evaluated-log.ts";
import type { ColumnId } from "../../src/joblog/formula/log-names.ts";
import { jobLog } from "../../src/joblog/job-log.ts";
import type { LogRow } from "../../src/joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../src/joblog/model/log-snapshot.ts";
import { runs } from "../setup/random-runs.ts";

/** 1 March 2027, and the minutes of it and the month after. */
const march = 46_447;
const minutes = 61 * 1440;

const thousandths = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: low * 1000, max: high * 1000 }).map((amount) => amount / 1000);

const price = fc.integer({ min: 50, max: 9_000 }).map((cents) => cents / 100);

/** Shares of what is on hand, so that the shelf never holds less than nothing. */
const happening = fc.oneof(
  fc.record({ what: fc.constant("receipt" as const), amount: thousandths(1, 60), price }),
  fc.record({ what: fc.constant("count" as const), share: fc.integer({ min: 800, max: 1200 }) }),
  fc.record({ what: fc.constant("issue" as const), share: fc.integer({ min: 1, max: 500 }) }),
  fc.record({
    what: fc.constant("addition" as const),
    share: fc.integer({ min: 1, max: 500 }),
    account: fc.constantFrom("claims", "shop", undefined),
  }),
);

const shelf = fc.record({
  opening: thousandths(5, 100),
  openingPrice: price,
  happenings: fc.array(happening, { minLength: 1, maxLength: 14 }),
  // A day without a time counts as its end, and midnight cannot be told from that.
  times: fc.uniqueArray(
    fc.integer({ min: 1, max: minutes - 2 }).filter((minute) => minute % 1440 !== 0),
    { minLength: 14, maxLength: 14 },
  ),
});

type Shelf = typeof shelf extends fc.Arbitrary<infer One> ? One : never;

interface Books {
  readonly stockMoves: LogRow<"stockMoves">[];
  readonly additions: LogRow<"additions">[];
}

function evaluated({ stockMoves, additions }: Books): EvaluatedLog {
  const placed = (rows: readonly object[]): readonly AnyRow[] =>
    rows.map((cells, position) => ({ position, cells: cells as AnyRow["cells"] }));
  const empty = Object.fromEntries(jobLog.sheets.flatMap(({ tables }) => tables.map(({ id }) => [id, []])));
  const rows = {
    ...empty,
    concentrates: placed([{ concentrate: "CN-1", packVolume: 5, packPrice: 139 }]),
    baths: placed([{ bath: "B-1", concentrate: "CN-1" }]),
    stockMoves: placed(stockMoves),
    additions: placed(additions),
    monthEnd: placed([
      { concentrate: "CN-1", month: march },
      { concentrate: "CN-1", month: march + 40 },
    ]),
  };
  return new EvaluatedLog(
    jobLog,
    { fields: { unitSystem: "US" }, rows: rows as unknown as LogSnapshot["rows"] },
    [],
    "everything",
  );
}

/** What a person would keep on paper: amount and average, moved by receipts alone. */
interface Card {
  amount: number;
  average: number;
}

const toThousandths = (value: number): number => Math.round(value * 1000) / 1000;

/** Entered one after the other, each with what is written down of it, beside a card that is kept by hand. */
function entered({ opening, openingPrice, happenings, times }: Shelf): { readonly books: Books; readonly card: Card } {
  const books: Books = {
    stockMoves: [
      {
        id: "S0",
        when: march - 2,
        concentrate: "CN-1",
        kind: "count",
        amount: opening,
        price: openingPrice,
        averageAfter: openingPrice,
      },
    ],
    additions: [],
  };
  const card: Card = { amount: opening, average: openingPrice };
  const inOrder = [...times].sort((one, other) => one - other);
  for (const [index, one] of happenings.entries()) {
    const when = march + (inOrder[index] ?? 0) / 1440;
    const id = String(index + 1);
    if (one.what === "addition") {
      const amount = toThousandths((card.amount * one.share) / 1000);
      const added = {
        id: `A${id}`,
        bath: "B-1",
        when,
        kind: "concentrate",
        purpose: "top-up",
        amount,
        account: one.account,
      };
      books.additions.push(added);
      const unitCost = evaluated(books).cell("additions", "averageThen", books.additions.length - 1);
      books.additions.splice(-1, 1, { ...added, unitCost: Number(unitCost) });
      card.amount -= amount;
      continue;
    }
    const line = { id: `S${id}`, when, concentrate: "CN-1", kind: one.what } as const;
    if (one.what === "receipt") {
      const received = { ...line, amount: one.amount, price: one.price };
      books.stockMoves.push(received);
      const average = evaluated(books).cell("stockMoves", "averageWouldBe", books.stockMoves.length - 1);
      books.stockMoves.splice(-1, 1, { ...received, averageAfter: Number(average) });
      card.average =
        card.amount <= 0
          ? one.price
          : (card.amount * card.average + one.amount * one.price) / (card.amount + one.amount);
      card.amount += one.amount;
      continue;
    }
    const amount = toThousandths((card.amount * one.share) / 1000);
    books.stockMoves.push({ ...line, amount });
    card.amount = one.what === "count" ? amount : card.amount - amount;
  }
  return { books, card };
}

const uses = ["usedForClaims", "usedByShop", "usedForNobody", "issued"] as const;
const costs = ["costForClaims", "costToShop", "costForNobody", "issuedValue"] as const;

describe("two months of a random shelf", () => {
  it("come out even, in the amount to a millionth and in money to the cent", () => {
    fc.assert(
      fc.property(shelf, (one) => {
        const { books, card } = entered(one);
        const log = evaluated(books);
        const figure = (line: number) => (column: ColumnId<"monthEnd">) => {
          const value = log.cell("monthEnd", column, line);
          if (typeof value !== "number") throw new Error(`${column} is no number.`);
          return value;
        };
        for (const line of [0, 1]) {
          const cell = figure(line);
          const sum = (columns: readonly ColumnId<"monthEnd">[]): number =>
            columns.reduce((all, column) => all + cell(column), 0);
          expect(cell("opening") + cell("received") + cell("difference") - sum(uses)).toBeCloseTo(cell("closing"), 6);
          expect(sum(["openingValue", "receivedValue", "differenceValue"]) - sum(costs) - cell("rounding")).toBeCloseTo(
            cell("closingValue"),
            6,
          );
          expect([cell("amountCheck"), cell("valueCheck")]).toEqual([0, 0]);
          expect(Math.abs(cell("rounding"))).toBeLessThanOrEqual(0.005 * cell("roundedLines") + 0.001);
        }
        expect(figure(1)("opening")).toBeCloseTo(figure(0)("closing"), 9);
        expect(figure(1)("openingValue")).toBe(figure(0)("closingValue"));
        expect(figure(1)("closing")).toBeCloseTo(card.amount, 6);
        expect(figure(1)("closingAverage")).toBeCloseTo(card.average, 4);
        expect(Math.abs(figure(1)("closingValue") - card.amount * card.average)).toBeLessThan(0.02);
        for (const [line] of books.stockMoves.entries()) expect(log.cell("stockMoves", "averageCheck", line)).toBe("");
      }),
      runs(40),
    );
  });

  it("do not, and say so, where one cost that is written down is another", () => {
    fc.assert(
      fc.property(shelf, (one) => {
        const { books } = entered(one);
        const at = books.additions.findIndex(({ when, amount }) => Number(when) < march + 31 && Number(amount) > 1);
        const addition = books.additions[at];
        fc.pre(addition !== undefined);
        books.additions.splice(at, 1, { ...addition, unitCost: Number(addition.unitCost) + 1 });
        const log = evaluated(books);
        const [left, lines] = [log.cell("monthEnd", "valueCheck", 0), Number(log.cell("monthEnd", "roundedLines", 0))];
        expect(Number(left)).toBeCloseTo(-Number(addition.amount), 0);
        expect(Math.abs(Number(left))).toBeGreaterThan(0.005 * lines);
      }),
      runs(15),
    );
  });
});
