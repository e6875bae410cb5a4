/** What the label allows and the tank holds, asked about before it is booked. */
import { beforeAll, describe, expect, test } from "vitest";

import { nextStep } from "../../../../src/advice/next-step/next-step.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { bench } from "../../../../src/joblog/model/words.ts";
import { additionEntry } from "../../../../src/pane/record/forms/addition/addition-entry.ts";
import { benchTestEntry } from "../../../../src/pane/record/forms/bench-test/bench-test-entry.ts";
import { chargeEntry } from "../../../../src/pane/record/forms/charge/charge-entry.ts";
import { correctionEntry } from "../../../../src/pane/record/forms/correction/correction-entry.ts";
import { levelMakeUpEntry } from "../../../../src/pane/record/forms/level-make-up/level-make-up-entry.ts";
import { readingEntry } from "../../../../src/pane/record/forms/reading/reading-entry.ts";
import { demoLog, moment } from "../../excel/log/demo-log.ts";
import { asked, bath, fill, said, withCells } from "./entry-forms.ts";

/** 121.175 gal at the fill line. */
const atLine = 121.175;

let log: LogSnapshot;
let firstMorning: LogSnapshot;

beforeAll(async () => {
  log = await demoLog("2027-03-02T17:00");
  firstMorning = await demoLog("2027-03-01T08:50");
}, 120_000);

describe("the label's highest strength, 1+18", () => {
  const strengthOf = (parts: number) => ({
    state: "bench test",
    benchState: bench.refused,
    baseline: undefined,
    strength: `1+${String(parts)}`,
    baseDose: atLine / (parts + 1),
    plannedDose: atLine / (parts + 1),
    openingDose: atLine / (parts + 1),
  });

  test("ends the steps up after failed bench tests, and no stronger bath is filled in", () => {
    // A fifth less water than 1+20 is 1+16, beyond the label.
    const near = fill(additionEntry, withCells(firstMorning, "baths", bath, strengthOf(20)), {});
    expect(near.values["strengthNow"]).toBe("1+18");
    const at = withCells(firstMorning, "baths", bath, strengthOf(18));
    const none = fill(additionEntry, at, {});
    expect(none.values["strengthNow"]).toBe("");
    expect(none.values["amount"]).toBe("");
    expect(said(none)).toMatch(
      /The label's highest strength, 1\+18 \(5\.26%\), is wanted already\. Do not go stronger/,
    );
    const step = nextStep(at, bath, "US", moment("2027-03-01T09:00"));
    expect(step.kind).toBe("bench test");
    expect(step.sentence).toMatch(/at the label's highest strength, 1\+18 \(5\.26%\)\.$/);
    expect(step.reason).toMatch(/^Do not go stronger/);
    const refused = fill(benchTestEntry, at, { "result metal": "fail" });
    expect(said(refused)).toMatch(/The label's highest strength is in\. Do not go stronger/);
  });

  test("is told to be unknown where the log has none of the label", () => {
    const unlabeled = withCells(firstMorning, "baths", bath, { ...strengthOf(18), labelHighest: undefined });
    const raised = fill(additionEntry, unlabeled, {});
    expect(raised.values["strengthNow"]).toBe("1+14.4");
    expect(said(raised)).toMatch(/The label's highest strength is not in the log: look at the label first\./);
  });

  test("is asked about where a stronger one is booked, with a raise or a charge", () => {
    const raised = (strengthNow: string) =>
      asked(fill(additionEntry, firstMorning, { purpose: "opening", strengthNow, amount: "1" }));
    expect(raised("1+16")).toMatch(/^1\+16 is stronger than the label's highest, 1\+18 \(5\.26%\)\. The label wins/);
    expect(raised("1+18")).toBe("");
    const charge = { tank: "T2", concentrate: "CN-1", water: "RO", bath: "B-NEW", concentrateAmount: "" };
    expect(asked(fill(chargeEntry, log, { ...charge, strength: "1+10" }))).toMatch(
      /^1\+10 is stronger than the label's/,
    );
    expect(asked(fill(chargeEntry, log, { ...charge, strength: "1+18" }))).toBe("");
    expect(asked(fill(chargeEntry, log, { ...charge, strength: "1+28", concentrateAmount: "30" }))).toMatch(
      /makes the bath stronger than the label's highest/,
    );
  });

  test("a strength that is not the label's for the soil draws a remark", () => {
    const charge = { tank: "T2", concentrate: "CN-1", water: "RO", bath: "B-NEW", soil: "medium" };
    // 29 / 19.
    expect(said(fill(chargeEntry, log, { ...charge, strength: "1+18" }))).toContain(
      "For medium soil the label names 1+28; 1+18 is 1.5 times as strong.",
    );
    expect(said(fill(chargeEntry, log, charge))).not.toMatch(/For medium soil/);
    expect(said(fill(chargeEntry, log, { ...charge, strength: "1 in 29" }))).not.toMatch(/For medium soil/);
  });
});

describe("room in the tank", () => {
  const full = (): LogSnapshot => withCells(log, "readings", "R010", { level: 25 });
  const topUp = { amount: "5", purpose: "top-up", when: "2027-03-02T17:30" };

  test("is asked for where an addition goes over the fill line", () => {
    // 5 gal at 48 × 24 / 231 = 4.987 gal/in is an inch.
    expect(asked(fill(additionEntry, full(), topUp))).toContain(
      "By the log the tank then holds 126.2 gal, 5 gal over its fill line, which is 1 in higher. Is there room? Enter the tank's inside height under More, Shop, Tanks, and the log can check this.",
    );
    expect(asked(fill(additionEntry, full(), { ...topUp, amount: "1" }))).not.toMatch(/Is there room/);
    const water = { amount: "5", water: "RO", levelBefore: "", levelAfter: "", when: "2027-03-02T17:30" };
    expect(asked(fill(levelMakeUpEntry, full(), water))).toMatch(/5 gal over its fill line.* Is there room\?/);
  });

  test("is told where the rim is known, and asked for again above it", () => {
    const tank = (height: number): LogSnapshot => withCells(full(), "tanks", "T1", { height });
    expect(asked(fill(additionEntry, tank(30), topUp))).not.toMatch(/By the log/);
    expect(said(fill(additionEntry, tank(30), topUp))).toMatch(/5 gal over its fill line.*; the rim is at 30 in\./);
    expect(asked(fill(additionEntry, tank(25.5), topUp))).toMatch(/above the rim at 25\.5 in\. Did it fit\?/);
  });

  test("a level above the rim is refused, one above the fill line asked about", () => {
    const reading = { ph: "11.2", temperature: "77" };
    expect(asked(fill(readingEntry, log, { ...reading, level: "26" }))).toMatch(/1 in above the fill line/);
    expect(asked(fill(readingEntry, log, { ...reading, level: "25.2" }))).toBe("");
    const tank = withCells(log, "tanks", "T1", { height: 26 });
    expect(fill(readingEntry, tank, { ...reading, level: "27" }).problems).toEqual([
      {
        key: "level",
        message: "Level: 27 in is above the tank's rim; its inside height is 26 in. Check the level and the tank.",
      },
    ]);
    const makeUp = { levelBefore: "27", levelAfter: "26", amount: "5" };
    expect(fill(levelMakeUpEntry, tank, makeUp).problems.map(({ key }) => key)).toContain("levelBefore");
    expect(asked(fill(levelMakeUpEntry, log, { levelBefore: "26", levelAfter: "27", amount: "5" }))).toMatch(
      /A level of 26 in is 1 in above/,
    );
  });
});

describe("water poured after the last reading", () => {
  test("asks for another one", async () => {
    const water = {
      id: "A005",
      bath,
      when: moment("2027-03-02T17:30"),
      kind: "water",
      purpose: "make-up",
      amount: 5.61,
      water: "CITY",
      account: "claims",
    };
    const step = nextStep(
      await demoLog("2027-03-02T17:00", { additions: [water] }),
      bath,
      "US",
      moment("2027-03-02T17:40"),
    );
    expect(step.kind).toBe("reading");
    expect(step.sentence).toBe("Mix, then read: 5.61 gal of water went in since the last reading.");
  });
});

describe("a bath that was opened at another time", () => {
  const correct = (opened: string) => {
    const draft = { entryTable: "Bath", entryRow: `${bath} · T1` };
    return fill(correctionEntry, log, { ...draft, [`baths 0 opened`]: opened, why: "typed a day late" });
  };

  test("takes its opening water and concentrate along, as far as nothing else came between", () => {
    const filled = correct("2027-02-28T06:50");
    expect(filled.problems).toEqual([]);
    expect(said(filled)).toContain("The opening water and concentrate move along: A001, Mar 1, 06:50 to Feb 28, 06:50");
    const moved = (filled.meaning.changes ?? []).filter(({ table }) => table === "additions");
    // A003 went in after the first bench tests: its time was no part of the opening's.
    expect(moved.map(({ position }) => position)).toEqual([0, 1]);
    expect(moved[0]?.cells).toMatchObject({
      id: { before: "A001", after: "A001" },
      when: { before: moment("2027-03-01T06:50"), after: moment("2027-02-28T06:50") },
    });
    expect(JSON.stringify(moved[0]?.cells)).toContain("moved with the bath's opening, was 2027-03-01 06:50");
  });

  test("says why where they cannot", () => {
    expect(correct("2027-03-01T08:40").problems).toEqual([
      {
        key: expect.stringContaining("opened") as string,
        message: expect.stringMatching(/would move along to Mar 1, 09:15/) as string,
      },
    ]);
    expect(correct("2027-03-03T08:00").problems[0]?.message).toMatch(/after the bath's first entry/);
  });
});
