import { beforeAll, describe, expect, test } from "vitest";

import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { additionEntry } from "../../../../src/pane/record/forms/addition/addition-entry.ts";
import { chargeEntry } from "../../../../src/pane/record/forms/charge/charge-entry.ts";
import { levelMakeUpEntry } from "../../../../src/pane/record/forms/level-make-up/level-make-up-entry.ts";
import { stockMoveEntry } from "../../../../src/pane/record/forms/stock-move/stock-move-entry.ts";
import { stockSentences } from "../../../../src/pane/shop/shop-view.tsx";
import { demoLog, moment } from "../../excel/log/demo-log.ts";
import { bath, fill, said, withCells, withRows, written } from "./entry-forms.ts";

const evening = "2027-03-02T17:00";

let log: LogSnapshot;
/** With 20 gal counted that afternoon, at 26.00 a gallon. */
let counted: LogSnapshot;

beforeAll(async () => {
  log = await demoLog(evening);
  const when = moment("2027-03-02T16:00");
  counted = withRows(log, "stockMoves", [
    { id: "S001", when, concentrate: "CN-1", kind: "count", amount: 20, averageAfter: 26, order: when + 0.000_3 },
  ]);
}, 120_000);

describe("the stock form", () => {
  test("takes the time as well as the day", () => {
    const filled = fill(stockMoveEntry, log, { amount: "22.5" }, evening);
    expect(filled.values["when"]).toBe(evening);
    expect(written(filled, "stockMoves", "when")).toEqual([[moment(evening)]]);
  });

  test("writes down what the opening stock cost: its own price, or else the pack's", () => {
    const average = (price: string) =>
      written(fill(stockMoveEntry, log, { amount: "22.5", price }, evening), "stockMoves", "averageAfter");
    expect(average("")).toEqual([[27.8]]);
    expect(average("25.5")).toEqual([[25.5]]);
  });

  // 20 at 26.00 and 10 at 29.00 are 810 for 30.
  test("writes down the average that a receipt makes, and says both", () => {
    const filled = fill(stockMoveEntry, counted, { kind: "receipt", amount: "10", price: "29" }, evening);
    expect(written(filled, "stockMoves", "averageAfter")).toEqual([[27]]);
    expect(said(filled)).toContain("Average cost from here on 27.00, was 26.00.");
  });

  test("leaves the average alone for a later count, an issue, and a receipt without a price", () => {
    const average = (kind: string) => {
      const filled = fill(stockMoveEntry, counted, { kind, amount: "10" }, evening);
      return [written(filled, "stockMoves", "averageAfter"), said(filled)] as const;
    };
    expect(average("count")[0]).toEqual([[undefined]]);
    expect(average("count")[1]).toContain("10 gal less than the book, 20 gal. Worth 260.00, a loss of the shop.");
    expect(average("issue")[0]).toEqual([[undefined]]);
    expect(average("receipt")[0]).toEqual([[undefined]]);
    expect(average("receipt")[1]).toContain("Without a price the average cost stays as it is");
  });

  test("asks for the last day of what is received, and the stock says when it is over", () => {
    const filled = fill(
      stockMoveEntry,
      counted,
      { kind: "receipt", amount: "10", lot: "L-7", expiry: "2027-05-31" },
      evening,
    );
    expect(filled.problems).toEqual([]);
    expect(written(filled, "stockMoves", "lot", "expiry")).toEqual([["L-7", moment("2027-05-31T00:00")]]);
    const received = withRows(withRows(counted, "stockBalance", [{ concentrate: "CN-1", book: 30 }]), "stockMoves", [
      {
        concentrate: "CN-1",
        kind: "receipt",
        amount: 10,
        lot: "L-7",
        expiry: moment("2027-05-31T00:00"),
        order: 46_448,
      },
    ]);
    const stock = (now: string) => stockSentences({ log: received, system: "US", now }).join("\n");
    expect(stock("2027-05-31T18:00")).not.toContain("expired");
    expect(stock("2027-06-01T08:00")).toContain("Lot L-7 expired on May 31, 2027, and some of it may be left");
  });
});

describe("what goes into a bath is written down with its unit cost", () => {
  const unitCost = (filled: ReturnType<typeof fill>) => written(filled, "additions", "kind", "unitCost");

  test("by the addition form: the average then, or the pack's price before there was one", () => {
    const topUp = { amount: "0.5", purpose: "top-up" };
    expect(unitCost(fill(additionEntry, counted, topUp, evening))).toEqual([["concentrate", 26]]);
    expect(said(fill(additionEntry, counted, topUp, evening))).toContain("Cost 13.00, to claims.");
    expect(unitCost(fill(additionEntry, counted, { ...topUp, when: "2027-03-02T15:00" }, evening))).toEqual([
      ["concentrate", 27.8],
    ]);
    expect(unitCost(fill(additionEntry, log, topUp, evening))).toEqual([["concentrate", 27.8]]);
  });

  test("by the level make-up, priced water and concentrate alike", () => {
    const makeUp = { levelBefore: "23.6", levelAfter: "25", water: "RO", concentrateAmount: "0.05" };
    expect(unitCost(fill(levelMakeUpEntry, counted, makeUp, evening))).toEqual([
      ["water", 0.031],
      ["concentrate", 26],
    ]);
    const unpriced = withCells(counted, "waters", "RO", { price: undefined });
    expect(unitCost(fill(levelMakeUpEntry, unpriced, makeUp, evening))).toEqual([
      ["water", undefined],
      ["concentrate", 26],
    ]);
  });

  test("by the charge, whose bath is new", () => {
    const emptied = withCells(counted, "baths", bath, { closed: moment("2027-03-06T08:00"), state: "closed" });
    const opened = "2027-03-08T06:50";
    const charge = {
      tank: "T1",
      water: "RO",
      strength: "1+28",
      opened,
      waterAmount: "117",
      concentrateAmount: "3.275",
    };
    expect(unitCost(fill(chargeEntry, emptied, charge))).toEqual([
      ["water", 0.031],
      ["concentrate", 26],
    ]);
  });
});
