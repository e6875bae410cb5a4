import { describe, expect, it } from "vitest";

import type { ColumnId } from "../../../../src/joblog/formula/log-names.ts";
import type { TableId } from "../../../../src/joblog/formula/log-types.ts";
import type { LogRow } from "../../../../src/joblog/model/definition.ts";
import { moment } from "../../../demo/demo-week-times.ts";
import { weekCostLines, weekItems, weekLoads } from "./demo-week-facts.ts";
import { weekWith } from "./week-of-sheets.ts";
import { type WorkedLog, workedLog } from "./worked-log.ts";

const shared = "B-T1-0301";
const own = "B-T2-0303";

function line<Table extends TableId>(
  log: WorkedLog,
  table: Table,
  key: string,
  columns: readonly ColumnId<Table>[],
): unknown[] {
  return columns.map((column) => log.cell(table, key, column));
}

describe("the claim statement", () => {
  it("shows the claim, its baths, its loads and its share of each bath", async () => {
    const log = await workedLog(weekWith({ statementClaim: "D-0436" }));
    expect((["statementLoss", "statementInsurer", "statementAdjuster"] as const).map((id) => log.field(id))).toEqual([
      "apartment above a shop, smoke only",
      "Insurer A (invented)",
      "adjuster 3",
    ]);
    expect(line(log, "statementBaths", own, ["tank", "water"])).toEqual(["T2", "Softened city water"]);
    expect(line(log, "statementBaths", shared, ["tank", "water", "strength", "baseline", "trigger"])).toEqual([
      "T1",
      "RO permeate",
      "1+28",
      11.42,
      10.92,
    ]);
    expect(line(log, "statementUse", shared, ["shared", "loads"])).toEqual(["claim 3 of 3 in it", 5]);
    expect(line(log, "statementUse", own, ["shared", "loads"])).toEqual(["alone in it", 3]);
    expect(line(log, "statementShares", shared, ["basis", "units", "allUnits", "pool", "share"])).toEqual([
      "baskets",
      10,
      33,
      578.99,
      175.45,
    ]);
    // 1.684 gal of concentrate at 27.80 in two additions: 27.11 and 19.71.
    expect(line(log, "statementShares", own, ["how", "share"])).toEqual(["placed to the cent", 46.82]);
    expect(log.field("statementCost")).toBeCloseTo(175.45 + 46.82, 9);
  });

  it("charges by kind, each line adding up to the cent: the bath's cost to share, and below it the claim's part", async () => {
    const kinds = ["supplies", "labor", "water", "energy", "labor", "supplies", "supplies", "disposal"];
    const costLines = weekCostLines.map((row, at) => ({ ...row, kind: kinds[at] }));
    const log = await workedLog(weekWith({ statementClaim: "D-0436" }, { costLines }));
    const columns = ["concentrate", "water", "labor", "energy", "supplies", "disposal", "other", "total"] as const;
    const lines = [shared, "its part"].map((key) => line(log, "statementCharges", key, columns).map(Number));
    // Of the week's books: 116.15 + 88.40 of concentrate for the claims.
    expect(lines[0]?.[0]).toBe(204.55);
    expect(lines.map((amounts) => amounts.at(-1))).toEqual([578.99, 175.45]);
    for (const amounts of lines) {
      const cents = amounts.map((amount) => Math.round(amount * 100));
      expect(cents.slice(0, -1).reduce((sum, one) => sum + one, 0)).toBe(cents.at(-1));
    }
  });

  it("has the shop's letterhead, the claim's policy and owner, and its days in the bath", async () => {
    const content = weekWith({
      statementClaim: "D-0436",
      shopAddress: "1 Invented Street",
      shopPhone: "555-0100",
      currency: "USD",
    });
    const claims = (content.rows.claims ?? []).map((row) => ({ ...row, policy: "HO-77", owner: "A. Invented" }));
    const log = await workedLog({ ...content, rows: { ...content.rows, claims } });
    expect(log.field("statementLetterhead")).toBe("Quillhaven Contents Works · 1 Invented Street · 555-0100");
    expect([log.field("statementPolicy"), log.field("statementOwner"), log.field("statementCurrency")]).toEqual([
      "HO-77",
      "A. Invented",
      "USD",
    ]);
    expect([log.field("statementFrom"), log.field("statementUntil")]).toEqual([
      Math.floor(moment(2, "13:30")),
      Math.floor(moment(4, "14:10")),
    ]);
  });

  it("has the invoice number and the signatures of the claim that it shows, and none of another's", async () => {
    const content = weekWith();
    const claims = (content.rows.claims ?? []).map((row): LogRow<"claims"> =>
      row.claim === "D-0427"
        ? { ...row, invoice: "INV-1", preparedBy: "KT", preparedOn: 46_450, acceptedBy: "RO" }
        : row,
    );
    const typed = async (statementClaim: string): Promise<unknown[]> => {
      const log = await workedLog(weekWith({ statementClaim }, { claims }));
      return (["statementInvoice", "statementBy", "statementDate", "statementAccepted"] as const).map((id) =>
        log.field(id),
      );
    };
    expect(await typed("D-0427")).toEqual(["INV-1", "KT", 46_450, "RO"]);
    expect(await typed("D-0436")).toEqual(["", "", "", ""]);
  });

  it("sums up by kind what the claim pays of all baths and alone, and names the baths that it leaves out", async () => {
    const kinds = ["supplies", "labor", "water", "energy", "labor", "supplies", "supplies", "disposal"];
    const costLines = [
      ...weekCostLines.map((row, at) => ({ ...row, kind: kinds[at] })),
      { id: "C9", what: "courier", amount: 12.5, account: "claims", claim: "D-0436" },
      { id: "C10", what: "appraisal", amount: 30, account: "claims", claim: "D-0436", kind: "labor" },
    ];
    const columns = ["concentrate", "water", "labor", "energy", "supplies", "disposal", "other", "total"] as const;
    const log = await workedLog(weekWith({}, { costLines }));
    const total = line(log, "statementTotal", "all baths", columns).map(Number);
    const part = line(log, "statementCharges", "its part", columns).map(Number);
    // The bath of its own took concentrate alone, for 46.82; courier and appraisal come on top.
    expect(total).toEqual(
      [46.82, 0, 30, 0, 0, 0, 12.5, 46.82 + 42.5].map((more, at) => Number(((part[at] ?? 0) + more).toFixed(2))),
    );
    expect(total.at(-1)).toBe(log.field("statementCost"));
    const unread = await workedLog(
      weekWith({}, { costLines, loads: weekLoads.map((row) => (row.bath === own ? { ...row, claim: "" } : row)) }),
    );
    expect(unread.cell("statementTotal", "baths left out: 1", "total")).toBe(
      Number(((part.at(-1) ?? 0) + 42.5).toFixed(2)),
    );
  });

  it("counts the readings and lists the top-ups of the days from first to last load only", async () => {
    const first = await workedLog(weekWith({ statementClaim: "D-0427" }));
    // Ten readings of Monday and Tuesday; the claim was in from Monday to Friday: 3.18 gal of top-ups and 0.95 of the shop's.
    expect(line(first, "statementUse", shared, ["readings", "verdicts"])[0]).toBe(10);
    expect(Number(first.cell("statementUse", shared, "toppedUp"))).toBeCloseTo(4.13, 9);
    expect(first.cell("statementUse", shared, "verdicts")).toMatch(/^hold \d/);
    const last = await workedLog(weekWith({ statementClaim: "D-0436" }));
    expect(last.cell("statementUse", shared, "readings")).toBe(0);
    expect(last.cell("statementUse", shared, "lowest")).toBe("");
    expect(line(last, "statementTopUps", shared, ["purpose", "amount"])).toEqual(["top-up", 1.39]);
  });

  it("counts the pieces by outcome and lists those not restorable with their reasons", async () => {
    const counted = { itemCounts: [{ claim: "D-0427" }, { claim: "D-0431", received: 91 }] };
    const log = await workedLog(weekWith({ statementClaim: "D-0431" }, counted));
    expect(
      line(log, "statementCounts", "91", [
        "restored",
        "handCleaned",
        "notRestorable",
        "returned",
        "pending",
        "balance",
        "reasonMissing",
      ]),
    ).toEqual([51, 19, 21, 0, 0, "balances", 0]);
    expect(
      line(log, "statementItems", "I017", ["item", "quantity", "reason", "reasonText", "replacementValue"]),
    ).toEqual(["cordless drill batteries", 3, "SAFETY", "heat-exposed cells; to hazardous-waste collection", 150]);
    expect(line(log, "statementItems", "I020", ["reason"])).toEqual(["POROUS"]);
  });

  it("says that pieces balance only where they were counted in, as many as are accounted for", async () => {
    const balance = async (received: number | undefined): Promise<unknown> => {
      const counts = { itemCounts: [{ claim: "D-0431", received }] };
      const log = await workedLog(weekWith({ statementClaim: "D-0431" }, counts));
      return log.cell("statementCounts", "91", "balance");
    };
    expect([await balance(undefined), await balance(91), await balance(95)]).toEqual([
      "not counted in",
      "balances",
      "does not balance",
    ]);
  });

  it("says how much more there is where a list is too long for the page", async () => {
    const many = Array.from({ length: 14 }, (_, index): LogRow<"items"> => ({
      id: `X${String(index)}`,
      claim: "D-0431",
      quantity: 1,
      item: "piece",
      outcome: "not restorable",
      reason: "BURN",
      reasonText: "char",
    }));
    const log = await workedLog(weekWith({ statementClaim: "D-0431" }, { items: [...weekItems, ...many] }));
    // 4 of the week and 14 more, on ten lines of which the last one says so.
    expect(log.cell("statementItems", "X4", "item")).toBe("piece");
    expect(log.cell("statementItems", "… 9 more in the log", "item")).toBe("");
  });

  it("is blank until a claim is chosen", async () => {
    const log = await workedLog(weekWith({ statementClaim: "" }));
    expect(log.field("statementCost")).toBe("");
    expect(() => log.cell("statementBaths", shared, "tank")).toThrow("has no row");
  });
});
