import { describe, expect, it } from "vitest";

import { rowsOfBath } from "../../../src/advice/bath-facts.ts";
import { nextStep } from "../../../src/advice/next-step/next-step.ts";
import type { LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import { claimsInBath } from "../../../src/pane/claims/share-plan.ts";
import { shareResult } from "../../../src/pane/claims/share-result.ts";
import { loadEntry } from "../../../src/pane/record/forms/load/load-entry.ts";
import { firstTwoDays } from "../../demo/days/demo-week.ts";
import { demoLog, moment } from "../excel/log/demo-log.ts";
import { workedOut } from "../joblog/evaluate/worked-out.ts";
import { asked, fill } from "../pane/record/entry-forms.ts";

const bath = "B-T1-0301";

const sentenceOf = (log: LogSnapshot): string => nextStep(log, bath, "US", moment("2027-03-02T17:00")).sentence;

const overdueOf = (log: LogSnapshot): readonly string[] =>
  nextStep(log, bath, "US", moment("2027-03-02T17:00")).overdue.map(({ text }) => text);

const pasted = (ph: number) => ({
  id: "R900",
  bath,
  when: moment("2027-03-02T17:00"),
  purpose: "check",
  ph,
  temperature: 77,
});

describe("what is pasted past the lists and limits", () => {
  it.each([0, -5])(
    "a pH of %s is no reading: the one before stands, and the row says that it does not count",
    async (ph) => {
      const before = sentenceOf(await demoLog("2027-03-02T17:00"));
      expect(before).toMatch(/^Keep going: 0\.\d\d pH above the trigger/);
      const log = await demoLog("2027-03-02T17:00", { readings: [pasted(ph)] });
      expect(sentenceOf(log)).toBe(before);
      const row = log.rows.readings.find(({ cells }) => cells.id === "R900")?.cells;
      expect(row?.verdict).toBe("not counted: pH is 0 or below");
      expect(Object.values(row ?? {})).not.toContain("#VALUE!");
    },
  );

  it("a baseline sample under the trigger asks for a check, and never leaves less than no room", async () => {
    const log = await demoLog("2027-03-02T17:00", { readings: [{ ...pasted(10.7), purpose: "baseline" }] });
    expect(sentenceOf(log)).toMatch(/^Read again: the last sample is 0\.\d\d pH under the trigger\.$/);
  });

  it("a cleared result of a bench test is said in words", async () => {
    const rows = firstTwoDays.rows.benchTests ?? [];
    const [last] = rows.slice(-1);
    const cleared = rows.map((row) => (row === last ? { ...row, result: undefined } : row));
    const log = await workedOut({ ...firstTwoDays, rows: { ...firstTwoDays.rows, benchTests: cleared } });
    expect(sentenceOf(log)).toContain(`${String(last?.surface)} (no result)`);
  });

  it("a number that stands twice is said, with the lines and the sheet to mend it on", async () => {
    const [first] = firstTwoDays.rows.readings ?? [];
    const again = { ...pasted(11.2), id: String(first?.id).toLowerCase() };
    expect(overdueOf(await demoLog("2027-03-02T17:00"))).not.toContainEqual(expect.stringContaining("bear the number"));
    expect(overdueOf(await demoLog("2027-03-02T17:00", { readings: [again] }))).toContain(
      "Reading: lines 1 and 11 of the table on the sheet Readings have the number R001. Renumber all but one, so that nothing goes to the wrong one.",
    );
  });

  it("a bath written in other letters is the same bath, as for Excel's own formulas", async () => {
    const log = await demoLog("2027-03-02T17:00", { readings: [{ ...pasted(10.5), bath: bath.toLowerCase() }] });
    expect(rowsOfBath(log, "readings", bath).at(-1)?.cells.id).toBe("R900");
    expect(sentenceOf(log)).toMatch(/^Top up/);
  });

  it("a claim written in other letters is listed once, and its old pieces stay apart", async () => {
    const load = (id: string, claim: string) => ({
      id,
      bath,
      claim,
      when: moment("2027-03-02T12:00"),
      baskets: 1,
      soil: "heavy",
    });
    const log = await demoLog("2027-03-02T17:00", {
      loads: [load("L001", "d-0431"), load("L002", "D-0431")],
      items: [{ id: "I001", claim: "d-0427", item: "oak chair", quantity: 1, route: "bath", pre1978: "yes" }],
    });
    expect(claimsInBath(log, bath)).toEqual(["d-0431"]);
    const typed = { bath, claim: "D-0427", when: "2027-03-02T16:00", baskets: "1", soil: "light", minutes: "5" };
    expect(asked(fill(loadEntry, log, typed, "2027-03-02T17:00"))).toMatch(/D-0427/);
  });

  it("an accent makes another name, for Excel as for the pane", async () => {
    const log = await demoLog("2027-03-02T17:00", { readings: [{ ...pasted(10.5), bath: "B-T1-0301é" }] });
    expect(rowsOfBath(log, "readings", "B-T1-0301e")).toEqual([]);
    expect(sentenceOf(log)).toMatch(/^Keep going/);
  });
});

describe("a bath whose costs come to nothing, or less", () => {
  const sharedBy = (account: string, units: number | undefined, amount?: number): Promise<LogSnapshot> =>
    workedOut({
      fields: firstTwoDays.fields,
      rows: {
        ...firstTwoDays.rows,
        additions: (firstTwoDays.rows.additions ?? []).map((row) => ({ ...row, account })),
        costLines: amount === undefined ? [] : [{ id: "C001", bath, what: "credit", amount, account: "claims" }],
        shares: (firstTwoDays.rows.shares ?? []).map((row, index) =>
          index === 0 && units !== undefined ? { ...row, units } : row,
        ),
      },
    });

  const sumOf = (result: ReturnType<typeof shareResult>, name: string): number | undefined =>
    result?.sums.find(([one]) => one === name)?.[1];

  it("gives each claim a share of 0.00 where the shop bears all of it", async () => {
    const log = await sharedBy("shop", undefined);
    const result = shareResult(log, bath);
    expect(sumOf(result, "To share out")).toBe(0);
    expect(result?.shares.map(({ share }) => share)).toEqual(result?.shares.map(() => 0));
    expect(sumOf(result, "Not placed")).toBe(0);
    expect(result?.findings).toEqual([
      { tone: "good", text: "Every cost of this bath is charged to someone, to the cent." },
    ]);
  });

  it("never calls a cost borne whose share is not worked out", async () => {
    const result = shareResult(await sharedBy("claims", -5), bath);
    expect(result?.shares.map(({ share }) => share)).toContain(undefined);
    const said = result?.findings.map(({ text }) => text).join("\n");
    expect(said).toContain("Provisional: share of D-0427: units under 0.");
    expect(said).toMatch(/\d of the log's costs is not charged to anyone yet/);
    expect(said).not.toContain("to the cent");
  });

  it("says that a credit is larger than the costs", async () => {
    const result = shareResult(await sharedBy("shop", undefined, -12.5), bath);
    expect(sumOf(result, "To share out")).toBe(-12.5);
    expect(result?.shares.reduce((sum, { share }) => sum + (share ?? NaN), 0)).toBeCloseTo(-12.5, 9);
    expect(result?.findings.map(({ text }) => text).join()).toMatch(/come to -12\.50, less than nothing/);
  });
});
