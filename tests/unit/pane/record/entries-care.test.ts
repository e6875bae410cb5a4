import { beforeAll, describe, expect, test } from "vitest";

import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { careEntry } from "../../../../src/pane/record/forms/care/care-entry.ts";
import { changeOutEntry } from "../../../../src/pane/record/forms/change-out/change-out-entry.ts";
import { demoLog, moment } from "../../excel/log/demo-log.ts";
import { asked, bath, fill, said, withCells, withRows } from "./entry-forms.ts";

let log: LogSnapshot;

beforeAll(async () => {
  log = await demoLog("2027-03-02T17:00");
}, 120_000);

describe("the care form", () => {
  const keysOf = (kind: string): readonly string[] =>
    fill(careEntry, log, { kind }).groups[0]?.fields.map(({ key }) => key) ?? [];

  test("asks only what the kind of care needs", () => {
    expect(keysOf("drain")).toEqual(["kind", "amount", "destination", "result", "when", "bath"]);
    expect(keysOf("rinse check")).toEqual(["kind", "rinsePh", "rinseConductivity", "result", "when", "bath"]);
    expect(keysOf("degas")).toEqual(["kind", "minutes", "result", "when", "bath"]);
  });

  // 7.5 gal at 4.178 gal in 121.175 gal hold 0.26 gal of concentrate.
  test("writes a drain and says what concentrate it takes along", () => {
    const filled = fill(careEntry, log, { kind: "drain", amount: "7.5", destination: "drum 1" });
    expect(filled.problems).toEqual([]);
    expect(filled.meaning.rows[0]).toMatchObject({
      table: "care",
      row: { id: "K001", kind: "drain", amount: 7.5, destination: "drum 1" },
    });
    expect(said(filled)).toContain(
      "7.5 gal taken out of this bath in all. It takes about 0.26 gal of concentrate along.",
    );
  });

  test("refuses a drain of nothing, of more than the tank holds, and without a destination", () => {
    expect(fill(careEntry, log, { kind: "drain", amount: "0", destination: "drum 1" }).problems[0]?.message).toMatch(
      /Allowed: more than 0/,
    );
    expect(fill(careEntry, log, { kind: "drain", amount: "500", destination: "drum 1" }).problems[0]?.message).toBe(
      "Taken out: 500 gal is more than the tank holds, 121.2 gal at its fill line.",
    );
    expect(fill(careEntry, log, { kind: "drain", amount: "5" }).problems.map(({ key }) => key)).toEqual([
      "destination",
    ]);
  });

  // The demo's RO water reads 6.1.
  test("holds a rinse against the water it was made of and the rinse check before", () => {
    const earlier = withRows(log, "care", [
      { id: "K001", bath, when: moment("2027-03-01T11:40"), kind: "rinse check", rinsePh: 8.7 },
    ]);
    expect(said(fill(careEntry, earlier, { kind: "rinse check", rinsePh: "9.39" }))).toContain(
      "Rinse pH 9.39. That is 3.29 above the bath's water. Last time 8.70.",
    );
  });

  test("refuses a rinse of pH 15 and a degassing of no minutes", () => {
    expect(fill(careEntry, log, { kind: "rinse check", rinsePh: "15" }).problems.map(({ key }) => key)).toEqual([
      "rinsePh",
    ]);
    expect(fill(careEntry, log, { kind: "degas", minutes: "0" }).problems.map(({ key }) => key)).toEqual(["minutes"]);
  });
});

describe("the change-out form", () => {
  const typed = { closeReason: "job done", closed: "2027-03-06T08:30" };

  test("completes the bath's own row", () => {
    const filled = fill(changeOutEntry, log, typed);
    expect(filled.problems).toEqual([]);
    expect(filled.meaning.rows).toEqual([]);
    expect(filled.meaning.fills).toEqual([
      {
        table: "baths",
        key: bath,
        cells: { closed: moment("2027-03-06T08:30"), closeReason: "job done", note: undefined },
      },
    ]);
  });

  test("shows what speaks for it: top-ups, days, titrations, bench tests, last reading", () => {
    const facts = {
      topUpShare: 1.1,
      changeOut: "top-ups have reached the limit: consider a change-out",
      ratioFirst: 1.52,
      ratioLast: 1.86,
    };
    const text = said(fill(changeOutEntry, withCells(log, "baths", bath, facts), typed));
    expect(text).toContain("Top-ups: 110% of the opening dose; the shop's limit is 100%.");
    // Opened March 1 at 06:50, closed March 6 at 08:30.
    expect(text).toContain("Open for 5.1 days; the shop's limit is 7 days.");
    expect(text).toContain("Total to free alkalinity went from 1.52 to 1.86: soil is building up.");
    expect(text).toContain("Bench tests: accepted.");
    expect(text).toContain("Last reading 11.21, Mar 2, 16:45.");
  });

  test("refuses to close before the last entry, twice, in the future and without a reason", () => {
    expect(fill(changeOutEntry, log, { ...typed, closed: "2027-03-02T08:00" }).problems[0]?.message).toMatch(
      /before the bath's last entry, Mar 2, 16:45/,
    );
    expect(
      fill(changeOutEntry, withCells(log, "baths", bath, { closed: moment("2027-03-03T08:00") }), typed).problems.map(
        ({ key }) => key,
      ),
    ).toContain("bath");
    expect(fill(changeOutEntry, log, { ...typed, closed: "2031-01-01T08:00" }).problems.map(({ key }) => key)).toEqual([
      "closed",
    ]);
    expect(fill(changeOutEntry, log, { closed: "2027-03-06T08:30" }).problems.map(({ key }) => key)).toEqual([
      "closeReason",
    ]);
  });

  test("asks for a final reading after the last load", () => {
    expect(asked(fill(changeOutEntry, log, typed))).toBe("");
    const loaded = withRows(log, "loads", [
      { id: "L001", bath, claim: "D-0427", when: moment("2027-03-02T16:50"), baskets: 1 },
    ]);
    expect(asked(fill(changeOutEntry, loaded, typed))).toMatch(/No reading since the last load/);
  });
});
