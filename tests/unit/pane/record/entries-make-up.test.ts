import { beforeAll, describe, expect, test } from "vitest";

import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { levelMakeUpEntry } from "../../../../src/pane/record/forms/level-make-up/level-make-up-entry.ts";
import { demoLog, moment } from "../../excel/log/demo-log.ts";
import { asked, bath, fill, said, withCells, withRows, written } from "./entry-forms.ts";

const overnight = { levelBefore: "23.6", levelAfter: "25", water: "RO", when: "2027-03-03T07:30" };

let log: LogSnapshot;
let loaded: LogSnapshot;

beforeAll(async () => {
  log = await demoLog("2027-03-02T17:00");
  const load = (id: string, hour: string): Record<string, string | number> => ({
    id,
    bath,
    claim: "D-0427",
    when: moment(`2027-03-02T${hour}`),
    baskets: 2,
    soil: "medium",
    minutes: 8,
  });
  loaded = withRows(withCells(log, "tanks", "T1", { dragOut: 0.3 }), "loads", [
    load("L001", "09:30"),
    load("L002", "10:30"),
    load("L003", "12:30"),
    load("L004", "14:30"),
  ]);
}, 120_000);

describe("the level make-up form", () => {
  // 1.4 in × 48 × 24 / 231 gal/in = 6.98 gal.
  test("fills in the amount from the levels and the tank, and writes one row", () => {
    const filled = fill(levelMakeUpEntry, log, overnight);
    expect(filled.values["amount"]).toBe("6.98");
    expect(filled.problems).toEqual([]);
    expect(filled.meaning.rows).toHaveLength(1);
    expect(filled.meaning.rows[0]).toMatchObject({
      table: "additions",
      row: {
        kind: "water",
        purpose: "make-up",
        amount: 6.98,
        water: "RO",
        levelBefore: 23.6,
        levelAfter: 25,
        account: "claims",
      },
    });
  });

  // 4 loads × 0.3 gal = 1.2 gal carried out, 5.78 gal evaporated; 1.2 gal × 4.178 / 121.175 = 0.041 gal of concentrate.
  test("splits what evaporated from what was carried out and says how much concentrate goes with the water", () => {
    const text = said(fill(levelMakeUpEntry, loaded, overnight));
    expect(text).toContain(
      "Lost since the last water: 5.78 gal evaporated, 1.2 gal carried out as solution, by 4 loads.",
    );
    expect(text).toMatch(/0\.041 gal \(5\.3 US fl oz\) of concentrate went with it: add it with the water/);
  });

  test("counts what was drained as carried out", () => {
    const drained = withRows(loaded, "care", [
      { id: "K001", bath, when: moment("2027-03-02T15:00"), kind: "drain", amount: 2 },
    ]);
    expect(said(fill(levelMakeUpEntry, drained, overnight))).toContain(
      "3.78 gal evaporated, 3.2 gal carried out as solution, by 4 loads and 2 gal drained",
    );
  });

  test("a concentrate amount typed with it becomes a row of its own", () => {
    const filled = fill(levelMakeUpEntry, loaded, { ...overnight, concentrateAmount: "0.04" });
    expect(written(filled, "additions", "id", "kind", "purpose", "amount")).toEqual([
      ["A005", "water", "make-up", 6.98],
      ["A006", "concentrate", "make-up", 0.04],
    ]);
  });

  test("without a drag-out in the log it says why it cannot divide", () => {
    expect(
      said(
        fill(
          levelMakeUpEntry,
          withRows(log, "loads", [{ id: "L001", bath, when: moment("2027-03-02T09:30") }]),
          overnight,
        ),
      ),
    ).toMatch(/drag-out per load is not in the log/);
  });

  // The invented week's own answers: 9.9 g of hardness, 0.146 eq of bicarbonate in 8.05 gal of city water.
  test("says loudly what water other than that of the fill brings, and asks once", () => {
    const filled = fill(levelMakeUpEntry, log, { ...overnight, levelBefore: "23.4", amount: "8.05", water: "CITY" });
    expect(filled.meaning.findings.filter(({ tone }) => tone === "act").map(({ text }) => text)).toEqual([
      expect.stringMatching(
        /^CITY is not the water of the fill \(RO\)\. It brings 9\.9 g of hardness as CaCO3, which takes up/,
      ) as string,
      expect.stringMatching(/It brings 0\.146 eq of bicarbonate, which takes up 0\.15 gal of concentrate/) as string,
    ]);
    expect(asked(filled)).toMatch(/CITY is not the water of the fill and has 325 mg\/L of hardness/);
    expect(asked(fill(levelMakeUpEntry, log, overnight))).toBe("");
  });

  test("says where amount and rise contradict each other", () => {
    expect(said(fill(levelMakeUpEntry, log, { ...overnight, amount: "12" }))).toMatch(
      /12 gal does not match that rise/,
    );
    expect(said(fill(levelMakeUpEntry, log, { ...overnight, amount: "7.16" }))).not.toMatch(/do not fit/);
  });

  test("refuses 0 gal, more than the tank holds, and a level that did not rise; asks at a level far above the line", () => {
    const keys = (change: Record<string, string>): readonly string[] =>
      fill(levelMakeUpEntry, log, { ...overnight, ...change }).problems.map(({ key }) => key);
    expect(keys({ amount: "0" })).toEqual(["amount"]);
    expect(keys({ amount: "300" })).toEqual(["amount"]);
    expect(keys({ levelAfter: "23.6", amount: "5" })).toEqual(["levelAfter"]);
    expect(asked(fill(levelMakeUpEntry, log, { ...overnight, levelAfter: "29" }))).toMatch(/4 in above the fill line/);
  });
});
