import { beforeAll, describe, expect, test } from "vitest";

import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import type { FilledForm } from "../../../../src/pane/record/fill-form.ts";
import { additionEntry } from "../../../../src/pane/record/forms/addition/addition-entry.ts";
import { baselineEntry } from "../../../../src/pane/record/forms/baseline/baseline-entry.ts";
import { benchTestEntry } from "../../../../src/pane/record/forms/bench-test/bench-test-entry.ts";
import { chargeEntry } from "../../../../src/pane/record/forms/charge/charge-entry.ts";
import { readingEntry } from "../../../../src/pane/record/forms/reading/reading-entry.ts";
import { demoLog, moment } from "../../excel/log/demo-log.ts";
import { asked, bath, fill, said, withCells, withRows, written } from "./entry-forms.ts";

let afterTwoDays: LogSnapshot;
let beforeBenchTest: LogSnapshot;
let benchTested: LogSnapshot;
let topUpDue: LogSnapshot;
let toppedUp: LogSnapshot;
let refused: LogSnapshot;
let changedOut: LogSnapshot;

const due = { id: "R015", bath, when: moment("2027-03-04T08:15"), purpose: "check", ph: 10.83, temperature: 77 };
const topUp = {
  id: "A005",
  bath,
  when: moment("2027-03-04T08:30"),
  kind: "concentrate",
  purpose: "top-up",
  amount: 1.39,
  account: "claims",
  phBefore: 10.83,
};

beforeAll(async () => {
  afterTwoDays = await demoLog("2027-03-02T17:00");
  changedOut = withCells(afterTwoDays, "baths", bath, { closed: moment("2027-03-06T08:00"), state: "closed" });
  beforeBenchTest = await demoLog("2027-03-01T09:20");
  benchTested = await demoLog("2027-03-01T09:40");
  topUpDue = await demoLog("2027-03-02T17:00", { readings: [due] });
  toppedUp = await demoLog("2027-03-02T17:00", { readings: [due], additions: [topUp] });
}, 180_000);

describe("the charge form", () => {
  const typed = { tank: "T1", water: "RO", strength: "1:28", opened: "2027-03-08T06:50" };

  // 121.175 gal / 29 = 4.178 gal, / 28 = 4.328 gal; 534.8 US fl oz: the invented demo week's own answers.
  test("says the dose and both readings of a ratio written with a colon", () => {
    const text = said(fill(chargeEntry, afterTwoDays, typed));
    expect(text).toContain("Dose for 1:28: 4.18 gal (534.8 US fl oz).");
    expect(text).toContain("1:28 is read as 1+28, 1 part and 28 parts of water: 4.18 gal. 1 in 28 would be 4.33 gal.");
  });

  test("a ratio with a plus sign has one reading", () => {
    expect(said(fill(chargeEntry, afterTwoDays, { ...typed, strength: "1+28" }))).not.toContain("is read as");
  });

  test("names the bath after tank and day, and gives a second fill of that day a letter", () => {
    expect(fill(chargeEntry, afterTwoDays, typed).values["bath"]).toBe("B-T1-0308");
    expect(fill(chargeEntry, afterTwoDays, { ...typed, opened: "2027-03-01T18:00" }).values["bath"]).toBe("B-T1-0301b");
  });

  test("records the bath with its water and concentrate, numbered on", () => {
    const filled = fill(chargeEntry, changedOut, {
      ...typed,
      waterAmount: "117",
      concentrateAmount: "3.275",
      concentrateAt: "2027-03-08T07:25",
    });
    expect(filled.problems).toEqual([]);
    expect(filled.meaning.rows.map(({ table }) => table)).toEqual(["baths", "additions", "additions"]);
    expect(filled.meaning.rows[1]?.row).toMatchObject({
      id: "A005",
      kind: "water",
      purpose: "opening",
      amount: 117,
      water: "RO",
      when: moment("2027-03-08T06:50"),
    });
    expect(filled.meaning.rows[2]?.row).toMatchObject({
      id: "A006",
      kind: "concentrate",
      amount: 3.275,
      when: moment("2027-03-08T07:25"),
    });
    // 117 / 3.275 = 35.7 parts of water.
    expect(said(filled)).toContain("3.28 gal now makes 1+35.7.");
  });

  test("refuses a bath name that the log has already", () => {
    const filled = fill(chargeEntry, afterTwoDays, { ...typed, bath });
    expect(filled.problems[0]?.message).toMatch(/"B-T1-0301" is in the log already/);
    expect(filled.meaning.rows).toEqual([]);
  });

  test("refuses it in other capitals too, for the sheet's look-ups do not tell them apart", () => {
    expect(fill(chargeEntry, afterTwoDays, { ...typed, bath: "b-t1-0301" }).problems[0]?.message).toMatch(
      /"B-T1-0301" is in the log already/,
    );
  });

  test("proposes the label's strength for the soil, the shop's usual drop, and offers every label strength", () => {
    const filled = fill(chargeEntry, afterTwoDays, typed);
    expect(filled.values).toMatchObject({ dropAllowed: "0.50" });
    expect(fill(chargeEntry, afterTwoDays, { tank: "T1", water: "RO", soil: "heavy" }).values["strength"]).toBe("1+18");
    expect(filled.groups[0]?.fields.find(({ key }) => key === "strength")?.suggestions).toEqual([
      "1+36",
      "1+28",
      "1+18",
    ]);
  });

  test("is closed for a tank that holds a bath, until its change-out is recorded", () => {
    const { blocked, rows } = fill(chargeEntry, afterTwoDays, typed).meaning;
    expect(blocked).toEqual({
      why: expect.stringMatching(/T1 still holds bath B-T1-0301/) as unknown,
      first: expect.objectContaining({ id: "change-out" }) as unknown,
    });
    expect(rows).toEqual([]);
    expect(fill(chargeEntry, afterTwoDays, { ...typed, tank: "T2" }).meaning.blocked).toBeUndefined();
    expect(fill(chargeEntry, changedOut, typed).meaning.blocked).toBeUndefined();
  });

  test("refuses a fill that began while the tank held another bath, and asks about one from before it", () => {
    const during = fill(chargeEntry, changedOut, { ...typed, opened: "2027-03-05T06:50" });
    expect(during.problems).toEqual([
      { key: "opened", message: expect.stringMatching(/while the tank held bath B-T1-0301/) as unknown },
    ]);
    const late = fill(chargeEntry, afterTwoDays, { ...typed, opened: "2027-02-20T06:50" });
    expect(late.problems).toEqual([]);
    expect(asked(late)).toMatch(/so this one has ended/);
  });

  test("refuses more water and concentrate together than the tank holds, and concentrate before the fill began", () => {
    const keys = (change: Record<string, string>): readonly string[] =>
      fill(chargeEntry, changedOut, { ...typed, ...change }).problems.map(({ key }) => key);
    expect(keys({ waterAmount: "117", concentrateAmount: "20" })).toEqual(["waterAmount"]);
    expect(keys({ concentrateAt: "2027-03-08T06:40" })).toEqual(["concentrateAt"]);
  });

  // 1:42 is one hour and 42 minutes of a day to Excel, 0.0708; as a share of the bath it would be 7 %.
  test("takes no strength from a label that Excel made a time of, and a share as a percentage", () => {
    const strengthFrom = (cell: number): string | undefined =>
      fill(chargeEntry, withCells(changedOut, "concentrates", "CN-1", { labelMedium: cell }), {
        tank: "T1",
        water: "RO",
        soil: "medium",
      }).values["strength"];
    expect(strengthFrom(102 / 1440)).toBe("");
    expect(strengthFrom(0.025)).toBe("2.5%");
  });

  test("refuses more water or concentrate than the tank holds", () => {
    expect(fill(chargeEntry, afterTwoDays, { ...typed, waterAmount: "1000" }).problems.map(({ key }) => key)).toEqual([
      "waterAmount",
    ]);
  });

  test("refuses a strength that gives no dose, at its field", () => {
    const filled = fill(chargeEntry, afterTwoDays, { ...typed, strength: "a splash" });
    expect(filled.problems).toEqual([
      { key: "strength", message: expect.stringMatching(/"a splash" gives no dose.*write 1\+40/) as string },
    ]);
    expect(filled.meaning.rows).toEqual([]);
  });
});

describe("the bench test form", () => {
  test("writes one row for every surface that was tried", () => {
    const filled = fill(benchTestEntry, beforeBenchTest, {
      "result metal": "pass",
      "result plastic": "partial",
      "note plastic": "smear left",
    });
    expect(written(filled, "benchTests", "surface", "result", "note")).toEqual([
      ["metal", "pass", undefined],
      ["plastic", "partial", "smear left"],
    ]);
    expect(said(filled)).toMatch(/Not accepted: plastic did not pass/);
  });

  test("refuses to record without a result", () => {
    const filled = fill(benchTestEntry, beforeBenchTest, {});
    expect(filled.problems).toHaveLength(1);
    expect(filled.meaning.rows).toEqual([]);
  });
});

describe("the baseline form", () => {
  const three = {
    ph1: "11.42",
    temperature1: "24.7 C",
    ph2: "11.43",
    temperature2: "25 C",
    ph3: "11.41",
    temperature3: "24.9 C",
  };

  test("is closed without a bench test since the last concentrate, and leads to it", () => {
    const filled = fill(baselineEntry, beforeBenchTest, three);
    expect(filled.meaning.blocked?.first.id).toBe("bench test");
    expect(filled.meaning.rows).toEqual([]);
  });

  test("shows the median and the trigger of three readings and writes three rows", () => {
    const filled = fill(baselineEntry, benchTested, three);
    expect(filled.meaning.blocked).toBeUndefined();
    expect(said(filled)).toContain("Baseline 11.42");
    expect(said(filled)).toContain("Top-up due at 10.92 or under");
    expect(written(filled, "readings", "id", "purpose", "ph", "temperature")).toEqual([
      ["R001", "baseline", 11.42, 76.46],
      ["R002", "baseline", 11.43, 77],
      ["R003", "baseline", 11.41, 76.82],
    ]);
  });

  test("refuses samples of different temperature", () => {
    const filled = fill(baselineEntry, benchTested, { ...three, temperature3: "40 C" });
    expect(filled.problems[0]?.message).toMatch(/differ by 27\.5 °F\. Allowed: 3\.6 °F/);
  });

  test("asks whether a cold sample was read in °C", () => {
    const cold = { ...three, temperature1: "52", temperature2: "52", temperature3: "52 F" };
    expect(asked(fill(baselineEntry, benchTested, cold)).match(/write "52 C" \(125\.6 °F\)/g)).toHaveLength(2);
    expect(asked(fill(baselineEntry, benchTested, three))).not.toContain("cold for a sample");
  });

  test("asks for three readings", () => {
    const filled = fill(baselineEntry, benchTested, { ...three, ph3: "" });
    expect(filled.problems.map(({ key }) => key)).toContain("ph3");
    expect(said(filled)).toContain("1 more reading for a median.");
  });
});

describe("the reading form", () => {
  test("says top-up with trigger and first addition where one is due", () => {
    const text = said(fill(readingEntry, afterTwoDays, { ph: "10.83", temperature: "25 C" }));
    expect(text).toContain("Top up: at or under the trigger.");
    expect(text).toContain("First addition: 1.39 gal, mix, read again.");
  });

  // R008 of the demo week: 10.58 read at 53.1 °C is no top-up, though it is under the cold trigger of 10.92.
  test("does not ask for a top-up because a sample was hot", () => {
    const text = said(fill(readingEntry, afterTwoDays, { ph: "10.58", temperature: "53.1 C" }));
    expect(text).not.toContain("Top up");
    expect(text).not.toContain("First addition");
  });

  // pKw falls by about 0.8 from 25 to 53.1 °C (CRC Handbook table), so 10.58 is well over 11 in the cold.
  test("says what a hot sample would read at the baseline's temperature, and the band of an unknown builder", () => {
    const text = said(fill(readingEntry, afterTwoDays, { ph: "10.58", temperature: "53.1 C" }));
    const [, best, low, high] =
      /At 76\.8 °F, as the baseline was read, this is about ([\d.]+), ([\d.]+) to ([\d.]+) as its builder is not known\. A used bath/.exec(
        text,
      ) ?? [];
    expect(Number(low)).toBeLessThan(Number(best));
    expect(Number(best)).toBeLessThan(Number(high));
    expect(Number(best)).toBeGreaterThan(11.2);
  });

  test("says nothing of it at the baseline's temperature", () => {
    expect(said(fill(readingEntry, afterTwoDays, { ph: "11.2", temperature: "76.8 F" }))).not.toContain(
      "as the baseline was read",
    );
  });

  test("says how far a reading stands above the baseline, which no bath does by itself", () => {
    expect(said(fill(readingEntry, afterTwoDays, { ph: "12.1", temperature: "77" }))).toMatch(
      /0\.68 above the baseline\. Check/,
    );
    expect(said(fill(readingEntry, afterTwoDays, { ph: "11.46", temperature: "77" }))).not.toMatch(
      /above the baseline/i,
    );
    // A meter in order errs by 0.05.
    expect(said(fill(readingEntry, afterTwoDays, { ph: "11.5", temperature: "77" }))).toMatch(
      /Above the baseline: no top-up needed\.[^]*That is 0\.08 above the baseline/,
    );
  });

  test("shows no verdict and no amount for what was likely typed wrong, before that is settled", () => {
    const slip = fill(readingEntry, afterTwoDays, { ph: "1.12", temperature: "77" });
    expect(said(slip)).toBe("pH 1.12 is 10.09 from the reading before, 11.21 on Mar 2, 16:45. Was it typed right?");
    expect(asked(slip)).toContain("Was it typed right?");
    expect(slip.meaning.rows).toHaveLength(1);
    const celsius = fill(readingEntry, afterTwoDays, { ph: "10.9", temperature: "53" });
    // 53 × 1.8 + 32.
    expect(said(celsius)).toBe(`53 °F is cold for a sample. If it was read in °C, write "53 C" (127.4 °F).`);
    expect(said(fill(readingEntry, afterTwoDays, { ph: "10.9", temperature: "53 C" }))).not.toMatch(/cold/);
    expect(said(fill(readingEntry, afterTwoDays, { ph: "10.9", temperature: "66" }))).not.toMatch(/cold/);
  });

  test("refuses a time that is still to come and one before the fill, at its field", () => {
    const at = (when: string): FilledForm => fill(readingEntry, afterTwoDays, { ph: "11.2", temperature: "77", when });
    expect(at("2030-03-04T08:00").problems).toEqual([
      { key: "when", message: "When: Mar 4, 2030, 08:00 is still to come. Check the date." },
    ]);
    expect(at("2027-02-04T08:00").problems).toEqual([
      {
        key: "when",
        message:
          "When: Feb 4, 2027, 08:00 is before the bath was opened, Mar 1, 2027, 06:50. Check the bath and the date.",
      },
    ]);
    expect(at("2030-03-04T08:00").meaning.rows).toEqual([]);
    expect(at("2027-03-04T08:40").problems).toEqual([]);
  });

  test("refuses a time after the bath was closed", () => {
    const baths = afterTwoDays.rows.baths.map((row) => ({
      ...row,
      cells: { ...row.cells, closed: moment("2027-03-03T12:00") },
    }));
    const closed: LogSnapshot = { ...afterTwoDays, rows: { ...afterTwoDays.rows, baths } };
    const [problem] = fill(readingEntry, closed, { ph: "11.2", temperature: "77", when: "2027-03-04T08:00" }).problems;
    expect(problem?.message).toContain("is after the bath was closed, Mar 3, 2027, 12:00");
  });

  test("refuses a pH of 15", () => {
    expect(fill(readingEntry, afterTwoDays, { ph: "15", temperature: "77" }).problems[0]?.message).toMatch(
      /"15" is out of range\. Allowed: 0\.1 to 14\.5/,
    );
  });

  test("cannot judge without the sample's temperature", () => {
    const filled = fill(readingEntry, afterTwoDays, { ph: "10.83" });
    expect(filled.problems.map(({ key }) => key)).toEqual(["temperature"]);
    expect(said(filled)).toMatch(/cannot be judged/);
  });

  test("after a top-up it proposes that purpose and fills in the addition's pH after", () => {
    const filled = fill(readingEntry, toppedUp, { ph: "11.13", temperature: "25 C" });
    expect(filled.values["purpose"]).toBe("after top-up");
    expect(filled.meaning.fills).toEqual([{ table: "additions", key: "A005", cells: { phAfter: 11.13 } }]);
    // 1.39 gal took it from 10.83 to 11.13: about 1.39 × (10^0.59 − 10^0.30) / (10^0.30 − 1) = 2.65 gal more.
    expect(said(filled)).toMatch(/Short of the baseline 11\.42\. Add 1\.39 gal, mix, read again\./);
    expect(said(filled)).not.toContain("Hold");
  });

  test("does not judge a top-up by a hot sample, nor write one to its row", () => {
    const filled = fill(readingEntry, toppedUp, { ph: "10.5", temperature: "53 C" });
    expect(said(filled)).toContain("Only a sample cooled to 76.8 °F shows whether the top-up was enough.");
    expect(said(filled)).not.toContain("Short of the baseline");
    expect(filled.meaning.fills).toBeUndefined();
  });

  test("a top-up that hardly moved the bath asks for a look at the meter, not for more", () => {
    const text = said(fill(readingEntry, toppedUp, { ph: "10.84", temperature: "25 C" }));
    expect(text).toMatch(/Check meter, temperature, mixing and water before adding more/);
    expect(text).not.toMatch(/baseline 11\.42\. Add/);
  });

  // 11.39 is within 0.1 of 11.42 (common practice, no source).
  test("says when the bath is back", () => {
    expect(said(fill(readingEntry, toppedUp, { ph: "11.39", temperature: "25 C" }))).toContain("Recovered");
  });
});

describe("the top-up form", () => {
  test("proposes the first addition and the reading before it", () => {
    const filled = fill(additionEntry, topUpDue, {});
    expect(filled.values).toMatchObject({ purpose: "top-up", amount: "1.39", phBefore: "10.83", account: "claims" });
    expect(filled.problems).toEqual([]);
    // 5 gal cost 139.00, so 1.39 gal cost 38.64.
    expect(said(filled)).toContain("Cost 38.64, to claims.");
    expect(filled.meaning.rows[0]?.row).toMatchObject({ kind: "concentrate", purpose: "top-up", amount: 1.39 });
  });

  test("says whose cost it is: nobody's without an account, the shop's where the bath had rework alone", () => {
    expect(said(fill(additionEntry, topUpDue, { account: "" }))).toContain("Cost 38.64, to no account yet.");
    expect(said(fill(additionEntry, topUpDue, { account: "shop" }))).toContain(
      "Cost 38.64, to the shop's own account.",
    );
    const load = { id: "L001", bath, claim: "D-0427", when: moment("2027-03-01T11:00"), baskets: 2, rework: "yes" };
    expect(said(fill(additionEntry, withRows(topUpDue, "loads", [load]), {}))).toContain(
      "Cost 38.64, to the shop: the bath had rework and nothing else.",
    );
  });

  test("after a top-up that fell short it proposes what that one says is missing, but no more than a first addition", async () => {
    const after = {
      id: "R016",
      bath,
      when: moment("2027-03-04T08:50"),
      purpose: "after top-up",
      ph: 11.13,
      temperature: 77,
    };
    const log = await demoLog("2027-03-02T17:00", {
      readings: [due, after],
      additions: [{ ...topUp, phAfter: 11.13 }],
    });
    const { values } = fill(additionEntry, log, {});
    // The hydroxide missing over the hydroxide gained would be about 2.65 gal; a third of 4.178 gal is the most at once.
    expect(Number(values["amount"])).toBe(1.39);
    expect(values["phBefore"]).toBe("11.13");
  });

  test("a corrective dose goes to the shop's account", () => {
    expect(fill(additionEntry, topUpDue, { purpose: "corrective" }).values["account"]).toBe("shop");
  });

  test("before the baseline it proposes what is missing of the opening dose", async () => {
    refused = await demoLog("2027-03-01T09:10");
    const filled = fill(additionEntry, refused, {});
    expect(filled.values["purpose"]).toBe("opening");
    expect(Number(filled.values["amount"])).toBeCloseTo(0.95, 1);
  });

  // 3.275 gal are in, all that is planned with a water that takes up none; the bench test failed: a fifth less water than 1+36 is 1+28.8.
  test("where the plan is in and the bench test failed, it proposes a step up in strength", () => {
    const pure = withCells(refused, "waters", "RO", { hardness: 0, alkalinity: 0 });
    const full = withCells(pure, "baths", bath, { strength: "1+36", baseDose: 3.275, plannedDose: 3.275 });
    const { values } = fill(additionEntry, full, {});
    expect(values["strengthNow"]).toBe("1+28.8");
    expect(Number(values["amount"])).toBeCloseTo(121.175 / 29.8 - 3.275, 2);
  });

  test("refuses more than the tank holds", () => {
    expect(fill(additionEntry, topUpDue, { amount: "200" }).problems[0]?.message).toMatch(
      /200 gal is more than the tank holds, 121\.2 gal/,
    );
  });

  test("refuses a pH of 15 and a time to come", () => {
    expect(fill(additionEntry, topUpDue, { phBefore: "15" }).problems.map(({ key }) => key)).toEqual(["phBefore"]);
    expect(fill(additionEntry, topUpDue, { when: "2031-01-01T08:00" }).problems.map(({ key }) => key)).toEqual([
      "when",
    ]);
  });

  test("nothing is nothing to record", () => {
    expect(fill(additionEntry, topUpDue, { amount: "0" }).problems[0]?.message).toMatch(/Allowed: more than 0/);
  });
});
