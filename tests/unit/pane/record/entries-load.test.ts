import { beforeAll, describe, expect, test } from "vitest";

import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { loadEntry } from "../../../../src/pane/record/forms/load/load-entry.ts";
import { demoLog, moment } from "../../excel/log/demo-log.ts";
import { asked, bath, fill, said, withCells, withRows } from "./entry-forms.ts";

const typed = { claim: "D-0431", baskets: "2", soil: "medium", minutes: "8", when: "2027-03-02T16:00" };

const earlier = [
  {
    id: "L001",
    bath,
    claim: "D-0427",
    when: moment("2027-03-01T10:05"),
    baskets: 2,
    soil: "heavy",
    minutes: 10,
    initials: "KT",
  },
  {
    id: "L002",
    bath,
    claim: "D-0427",
    when: moment("2027-03-01T13:05"),
    baskets: 9,
    soil: "medium",
    minutes: 8,
    rework: "yes",
  },
];

const skimmed = { id: "K001", bath, when: moment("2027-03-02T09:30"), kind: "skim" };

let log: LogSnapshot;

/** The days without the units that somebody typed. */
const byLoads = ({ fields, rows }: LogSnapshot): LogSnapshot => ({ fields, rows: { ...rows, shares: [] } });

beforeAll(async () => {
  log = await demoLog("2027-03-02T17:00", { loads: earlier });
}, 120_000);

describe("the load form", () => {
  test("names no part where nothing counts yet", async () => {
    const none = await demoLog("2027-03-02T17:00");
    expect(said(fill(loadEntry, byLoads(none), { ...typed, minutes: "0" }))).toContain(
      "With it claim D-0431 pays 100% of this bath by baskets, 100% by soil, none by basket-minutes.",
    );
  });

  test("writes one row, numbered on", () => {
    const filled = fill(loadEntry, log, { ...typed, initials: "MV" });
    expect(filled.problems).toEqual([]);
    expect(filled.meaning.rows).toEqual([
      {
        table: "loads",
        row: expect.objectContaining({
          id: "L003",
          bath,
          claim: "D-0431",
          baskets: 2,
          soil: "medium",
          minutes: 8,
          initials: "MV",
          when: moment("2027-03-02T16:00"),
        }) as unknown,
      },
    ]);
  });

  // Baskets 2 of 4, by soil 2 × 2 of 2 × 2 + 2 × 3, basket-minutes 16 of 16 + 20; the rework counts nothing.
  test("says what the load counts for by each basis and the claim's share with it", () => {
    const text = said(fill(loadEntry, byLoads(log), typed));
    expect(text).toContain("Counts 2 by baskets, 4 by soil, 16 by basket-minutes.");
    expect(text).toContain("claim D-0431 pays 50% of this bath by baskets, 40% by soil, 44% by basket-minutes.");
  });

  // 11 and 3 are typed, so 3 of 14, whatever the load counts.
  test("says that a claim's own typed units count in place of the load", () => {
    const text = said(fill(loadEntry, log, typed));
    expect(text).toContain(
      "Units of claim D-0427 and claim D-0431 in this bath are typed on Costs and count in place of their loads. Claim D-0431 then pays 21% of the bath by baskets.",
    );
    expect(text).not.toContain("With it claim");
  });

  // 6 baskets beside the 14 that are typed.
  test("says what a claim that joins typed units pays, as the sheet then does", async () => {
    expect(said(fill(loadEntry, log, { ...typed, claim: "D-0436", baskets: "6" }))).toContain(
      "Claim D-0436 then pays 30% of the bath by baskets.",
    );
    const load = { id: "L003", bath, claim: "D-0436", when: moment("2027-03-02T16:00"), baskets: 6, soil: "medium" };
    const after = await demoLog("2027-03-02T17:00", {
      loads: [...earlier, { ...load, minutes: 8 }],
      shares: [{ bath, claim: "D-0436" }],
    });
    expect(after.rows.shares.find(({ cells }) => cells.claim === "D-0436")?.cells.weight).toBe(0.3);
  });

  test("a rework counts nothing", () => {
    expect(said(fill(loadEntry, log, { ...typed, rework: "yes" }))).toContain("Rework: counts nothing");
  });

  test("asks before a cleaner claim follows a dirtier one, unless the bath was skimmed since", () => {
    expect(asked(fill(loadEntry, log, typed))).toMatch(
      /after heavier soil of D-0427, with no skimming or filtering since/,
    );
    expect(asked(fill(loadEntry, withRows(log, "care", [skimmed]), typed))).toBe("");
    expect(asked(fill(loadEntry, log, { ...typed, soil: "heavy" }))).toBe("");
  });

  test("asks before a claim with pieces of old paint shares a bath, by its note or by its items", () => {
    expect(asked(fill(loadEntry, log, { ...typed, claim: "D-0436", soil: "heavy" }))).toMatch(
      /old paint or lead suspected, and claim D-0427 has been in this bath/,
    );
    expect(asked(fill(loadEntry, log, { ...typed, soil: "heavy" }))).toBe("");
  });

  test("does not ask where the old pieces are known to go elsewhere", () => {
    const toys = { id: "I001", claim: "D-0436", quantity: 6, item: "tin toys", pre1978: "yes", route: "hand" };
    expect(asked(fill(loadEntry, withRows(log, "items", [toys]), { ...typed, claim: "D-0436", soil: "heavy" }))).toBe(
      "",
    );
  });

  test("asks before a load goes into a bath whose top-up is due, or that has no baseline", () => {
    expect(
      asked(fill(loadEntry, withCells(log, "baths", bath, { state: "top up" }), { ...typed, soil: "heavy" })),
    ).toMatch(/top-up is due/);
    expect(
      asked(fill(loadEntry, withCells(log, "baths", bath, { state: "baseline" }), { ...typed, soil: "heavy" })),
    ).toMatch(/no baseline yet/);
  });

  test("is closed for a bath without concentrate", () => {
    const filled = fill(loadEntry, withCells(log, "baths", bath, { state: "charge" }), typed);
    expect(filled.meaning.blocked?.first.id).toBe("addition");
    expect(filled.meaning.rows).toEqual([]);
  });

  test("refuses no baskets, no minutes, a claim that is not in the log and a time to come", () => {
    const keys = (change: Record<string, string>): readonly string[] =>
      fill(loadEntry, log, { ...typed, ...change }).problems.map(({ key }) => key);
    expect(keys({ baskets: "0" })).toEqual(["baskets"]);
    expect(keys({ minutes: "0" })).toEqual(["minutes"]);
    expect(keys({ claim: "D-9999" })).toEqual(["claim"]);
    expect(keys({ when: "2031-01-01T10:00" })).toEqual(["when"]);
  });
});
