import { describe, expect, test } from "vitest";

import { findRow } from "../../../src/advice/bath-facts.ts";
import { nextStep } from "../../../src/advice/next-step/next-step.ts";
import type { NextStep } from "../../../src/advice/next-step/step.ts";
import { unreadTopUp } from "../../../src/advice/readings/unread-additions.ts";
import type { LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import { bathState } from "../../../src/joblog/model/words.ts";
import { demoLog, moment } from "../excel/log/demo-log.ts";

const bath = "B-T1-0301";

/** The demo's meter on its Monday. */
const mondayCheck = {
  id: "M001",
  when: moment("2027-03-01T08:00"),
  meter: "M-1",
  buffer1: 7,
  asFound1: 7.01,
  buffer2: 10.01,
  asFound2: 10.02,
  asLeft1: 7,
  asLeft2: 10.01,
};

/** The step with what is overdue in words alone. */
async function stepAt(
  time: string,
  extra: Parameters<typeof demoLog>[1] = {},
  now = time,
): Promise<Omit<NextStep, "overdue"> & { readonly overdue: readonly string[] }> {
  const step = nextStep(await demoLog(time, { meterChecks: [mondayCheck], ...extra }), bath, "US", moment(now));
  return { ...step, overdue: step.overdue.map(({ text }) => text) };
}

const reading = (id: string, when: string, ph: number, temperature: number, purpose = "check") => ({
  id,
  bath,
  when: moment(when),
  purpose,
  ph,
  temperature,
});

describe("the next step of the demo bath", () => {
  // 121.175 gal at 1+28 is 4.178 gal; the RO water's alkalinity of 5 mg/L takes 0.05 gal more.
  test("with water in and nothing else it is the charge, with the planned dose", async () => {
    const step = await stepAt("2027-03-01T07:00");
    expect(step.kind).toBe("opening dose");
    expect(step.sentence).toMatch(/cold water first, then 4\.2[0-9] gal of CN-1, mix, then heat/);
  });

  test("after the first part of the charge it is the bench test", async () => {
    const step = await stepAt("2027-03-01T07:30");
    expect(step.kind).toBe("bench test");
    expect(step.sentence).toContain("1+35.7");
  });

  test("after a bench test that failed it names the surfaces and what is missing to the plan", async () => {
    const step = await stepAt("2027-03-01T09:10");
    expect(step.kind).toBe("opening dose");
    expect(step.sentence).toMatch(/plastic \(partial\)/);
    expect(step.sentence).toMatch(/0\.9[0-9] gal more reaches 1\+28/);
    expect(step.urgent).toBe(true);
  });

  test("new concentrate asks for the bench test again", async () => {
    expect((await stepAt("2027-03-01T09:20")).kind).toBe("bench test");
  });

  test("with every surface passed it is the baseline of three readings", async () => {
    const step = await stepAt("2027-03-01T09:40");
    expect(step.kind).toBe("baseline");
    expect(step.sentence).toMatch(/three readings/);
    expect(step.overdue).toEqual([]);
  });

  test("before the first baseline it offers a check of a meter that nobody has checked", async () => {
    const { kind, overdue } = await stepAt("2027-03-01T09:40", { meterChecks: [] });
    expect([kind, overdue]).toEqual([
      "baseline",
      [expect.stringMatching(/^No meter check is in this log yet: check the meter in two buffers before it reads/)],
    ]);
  });

  test("with a baseline it says how far the last reading is above the trigger", async () => {
    const step = await stepAt("2027-03-02T17:00");
    expect(step.sentence).toMatch(/^Keep going: 0\.2[0-9] pH above the trigger/);
    expect(step.urgent).toBe(false);
    expect(step.overdue).toEqual([]);
  });

  // The first addition is a third of the opening dose, 4.178 / 3 (common practice, no source).
  test("at or under the trigger it is a top-up of the first addition, with the range", async () => {
    const step = await stepAt(
      "2027-03-02T17:00",
      { readings: [reading("R015", "2027-03-04T08:15", 10.83, 77)] },
      "2027-03-04T08:20",
    );
    expect(step.kind).toBe("top-up");
    expect(step.sentence).toBe("Top up: add 1.39 gal, mix, read again.");
    expect(step.reason).toMatch(
      /^First part of the \d\.\d to \d\.\d gal it may need\. Last reading 10\.83, trigger 10\.\d\d\.$/,
    );
  });

  test("concentrate after the last reading asks for a reading", async () => {
    const extra = {
      readings: [reading("R015", "2027-03-04T08:15", 10.83, 77)],
      additions: [
        {
          id: "A005",
          bath,
          when: moment("2027-03-04T08:30"),
          kind: "concentrate",
          purpose: "top-up",
          amount: 1.39,
          account: "claims",
        },
      ],
    };
    const step = await stepAt("2027-03-02T17:00", extra, "2027-03-04T08:40");
    expect(step.kind).toBe("reading");
    expect(step.sentence).toBe("Mix, then read: 1.39 gal went in since the last reading.");
  });

  describe("at the minute of the last reading", () => {
    const low = reading("R015", "2027-03-04T08:15", 10.83, 77);
    const added = (id: string, kind: "concentrate" | "water", amount: number) => ({
      id,
      bath,
      when: moment("2027-03-04T08:15"),
      kind,
      purpose: kind === "concentrate" ? "top-up" : "make-up",
      amount,
      account: "claims",
    });
    const topUp = added("A005", "concentrate", 1.39);
    const readAgain = reading("R016", "2027-03-04T08:15", 11.42, 77, "after top-up");

    test.each([
      ["a top-up asks for a reading", [low], [topUp], "Mix, then read: 1.39 gal went in since the last reading."],
      ["a reading after the top-up has answered it", [low, readAgain], [topUp], undefined],
      ["so it has where it was entered first", [readAgain, low], [topUp], undefined],
      [
        "another top-up after that asks for another reading",
        [low, readAgain],
        [topUp, added("A006", "concentrate", 0.5)],
        "Mix, then read: 0.50 gal went in since the last reading.",
      ],
      [
        "water asks for a reading",
        [low],
        [added("A005", "water", 5.61)],
        "Mix, then read: 5.61 gal of water went in since the last reading.",
      ],
      [
        "one reading answers concentrate and water alike",
        [low, readAgain],
        [added("A005", "water", 5.61), added("A006", "concentrate", 0.5)],
        undefined,
      ],
    ])("%s, in pane and sheet", async (_, readings, additions, sentence) => {
      const log = await demoLog("2027-03-02T17:00", { meterChecks: [mondayCheck], readings, additions });
      const step = nextStep(log, bath, "US", moment("2027-03-04T08:16"));
      const { state } = findRow(log, "baths", "bath", bath)?.cells ?? {};
      if (sentence === undefined) {
        expect(state).not.toBe(bathState.reRead);
        expect(step.sentence).not.toMatch(/^Mix/);
        expect(unreadTopUp(log, bath)).toBeUndefined();
      } else expect([step.kind, step.sentence, state]).toEqual(["reading", sentence, bathState.reRead]);
    });

    test("a level is no longer said to be low once it was made up", async () => {
      const extra = { readings: [{ ...low, level: 23.6, meter: "M-1" }] };
      const lowLevel = [expect.stringMatching(/^Level 1\.4 in under the line/)];
      expect((await stepAt("2027-03-02T17:00", extra, "2027-03-04T08:16")).overdue).toEqual(lowLevel);
      const madeUp = { ...extra, additions: [added("A005", "water", 6.98)] };
      expect((await stepAt("2027-03-02T17:00", madeUp, "2027-03-04T08:16")).overdue).toEqual([]);
    });
  });

  test("a bath without a reading for a day says so", async () => {
    const step = await stepAt("2027-03-02T17:00", {}, "2027-03-03T17:00");
    expect(step.overdue).toEqual(["No reading for 24 hours."]);
  });

  test("a level half an inch under the line asks for make-up, by the tank's own gallons an inch", async () => {
    const low = { ...reading("R015", "2027-03-03T07:15", 11.19, 77), level: 23.6, meter: "M-1" };
    const extra = { meterChecks: [mondayCheck], readings: [low] };
    // 1.4 in × 48 × 24 / 231 gal an inch is 6.98 gal.
    expect((await stepAt("2027-03-02T17:00", extra, "2027-03-03T07:20")).overdue).toEqual([
      "Level 1.4 in under the line: about 6.98 gal to make up.",
    ]);
    const madeUp = {
      id: "A005",
      bath,
      when: moment("2027-03-03T07:30"),
      kind: "water",
      purpose: "make-up",
      amount: 7.16,
      account: "claims",
    };
    expect((await stepAt("2027-03-02T17:00", { ...extra, additions: [madeUp] }, "2027-03-03T07:40")).overdue).toEqual(
      [],
    );
  });

  test("a level less than half an inch under the line asks for nothing, half an inch does", async () => {
    const at = (level: number) => ({
      readings: [{ ...reading("R015", "2027-03-03T07:15", 11.19, 77), level, meter: "M-1" }],
    });
    expect((await stepAt("2027-03-02T17:00", at(24.6), "2027-03-03T07:20")).overdue).toEqual([]);
    // 0.5 in × 48 × 24 / 231 gal an inch is 2.49 gal.
    expect((await stepAt("2027-03-02T17:00", at(24.5), "2027-03-03T07:20")).overdue).toEqual([
      "Level 0.5 in under the line: about 2.49 gal to make up.",
    ]);
  });

  test("a bench test that fails in use stops the loading, whatever the pH", async () => {
    const failed = {
      id: "T090",
      bath,
      when: moment("2027-03-02T16:50"),
      surface: "plastic",
      method: "spray",
      result: "fail",
    };
    const step = await stepAt("2027-03-02T17:00", { benchTests: [failed] });
    expect(step).toMatchObject({ kind: "bench test", urgent: true });
    expect(step.sentence).toMatch(/^Stop loading: bench test not passed on plastic \(fail\)\./);
  });

  test("a meter without a check, with an old one or with a failed one says so", async () => {
    const [none] = (await stepAt("2027-03-02T17:00", { meterChecks: [] })).overdue;
    expect(none).toMatch(/^Meter M-1 has no check in this log/);
    const old = { ...mondayCheck, when: moment("2027-02-22T08:00") };
    const [late] = (await stepAt("2027-03-02T17:00", { meterChecks: [old] })).overdue;
    expect(late).toBe("Meter M-1 was last checked 8 days ago: check it in two buffers.");
    // 10.15 in 10.01 is off by 0.14, more than the 0.05 of ASTM D1287.
    const failed = { ...mondayCheck, asFound2: 10.15, asLeft1: undefined, asLeft2: undefined };
    const out = await stepAt("2027-03-02T17:00", { meterChecks: [failed] });
    expect(out.kind).toBe("meter check");
    expect(out.sentence).toMatch(
      /^Meter M-1: as found out of limits at its last check\. Clean the bulb, adjust, check again/,
    );
    // Left 0.14 high, it is no better for having been adjusted.
    const still = await stepAt("2027-03-02T17:00", { meterChecks: [{ ...failed, asLeft1: 7, asLeft2: 10.15 }] });
    expect(still.kind).toBe("meter check");
    const adjusted = { ...failed, asLeft1: 7, asLeft2: 10.01 };
    const read = await stepAt("2027-03-02T17:00", { meterChecks: [adjusted] });
    expect(read.overdue).toEqual([]);
    expect(read.sentence).not.toMatch(/Meter/i);
    const since = await stepAt("2027-03-02T17:00", {
      meterChecks: [{ ...adjusted, when: moment("2027-03-02T16:55") }],
    });
    expect(since.kind).toBe("reading");
    expect(since.sentence).toBe(
      "Read again: meter M-1 was out of limits and has been adjusted since the last reading.",
    );
  });

  test("a bath that was changed out asks for its release until that is on record", async () => {
    const log = await demoLog("2027-03-02T17:00");
    const baths = log.rows.baths.map((row) => ({
      ...row,
      cells: { ...row.cells, state: "closed", closeReason: "age" },
    }));
    const withRelease = (state: string): LogSnapshot => ({
      ...log,
      rows: { ...log.rows, baths, releases: [{ position: 0, cells: { id: "D001", bath, state } }] },
    });
    const closed = nextStep({ ...log, rows: { ...log.rows, baths } }, bath, "US", moment("2027-03-06T08:00"));
    expect(closed.kind).toBe("release");
    expect(closed.sentence).toMatch(/^Titrate the spent bath, neutralize it in stages/);
    expect(closed.reason).toMatch(/^This bath is closed: age\./);
    expect(nextStep(withRelease("not released: results awaited"), bath, "US", 0)).toMatchObject({
      sentence: "Not released: results awaited. Keep it until they are in.",
      reason: "This bath is closed: age.",
    });
    expect(nextStep(withRelease("released"), bath, "US", 0)).toMatchObject({
      kind: "closed",
      sentence: "This bath is closed: age. Its release is on record.",
    });
  });

  test("top-ups that grow are a change-out signal, with their figures", async () => {
    const topUp = (id: string, when: string, amount: number) => ({
      id,
      bath,
      when: moment(when),
      kind: "concentrate",
      purpose: "top-up",
      amount,
      account: "claims",
    });
    const extra = {
      readings: [
        reading("R015", "2027-03-04T08:15", 10.83, 77),
        reading("R016", "2027-03-04T08:50", 11.4, 77, "after top-up"),
        reading("R017", "2027-03-05T08:15", 10.83, 77),
      ],
      additions: [topUp("A005", "2027-03-04T08:30", 1.39), topUp("A006", "2027-03-05T08:30", 1.8)],
    };
    const step = await stepAt("2027-03-02T17:00", extra, "2027-03-05T08:40");
    // (1.39 + 1.80) / 4.178 is 76 %.
    expect(step.overdue[0]).toMatch(
      /^Top-ups grow: the first round took 1\.39 gal, a later one 1\.80 gal, 76% of the opening dose in all\. Consider a change-out;/,
    );
  });

  test("top-ups that reach the opening dose are one too", async () => {
    const additions = [
      {
        id: "A005",
        bath,
        when: moment("2027-03-04T08:30"),
        kind: "concentrate",
        purpose: "top-up",
        amount: 4.2,
        account: "claims",
      },
    ];
    const step = await stepAt("2027-03-02T17:00", { additions }, "2027-03-02T17:00");
    expect(step.overdue[0]).toMatch(/^Top-ups have reached 101% of the opening dose\. Consider a change-out;/);
  });

  test("an unknown bath is refused", async () => {
    const log = await demoLog("2027-03-01T07:00");
    expect(() => nextStep(log, "B-9", "US", 0)).toThrow(/no bath "B-9"/);
  });
});

describe("after a top-up that fell short of the baseline", () => {
  const first = {
    readings: [
      reading("R015", "2027-03-04T08:15", 10.83, 77),
      reading("R016", "2027-03-04T08:50", 11.13, 77, "after top-up"),
    ],
    additions: [
      {
        id: "A005",
        bath,
        when: moment("2027-03-04T08:30"),
        kind: "concentrate",
        purpose: "top-up",
        amount: 1.39,
        account: "claims",
        phBefore: 10.83,
        phAfter: 11.13,
      },
    ],
  };

  test("it is another top-up, though the trigger is far below", async () => {
    const step = await stepAt("2027-03-02T17:00", first, "2027-03-04T08:55");
    expect(step.kind).toBe("top-up");
    // About (10^0.59 − 10^0.30) / (10^0.30 − 1) times 1.39 gal, the hydroxide missing over the hydroxide gained.
    expect(step.sentence).toMatch(/^Not back yet: 0\.29 pH under the baseline\. Add 1\.39 gal, mix, read\.$/);
    expect(step.reason).toBeUndefined();
  });

  test("two in a row that fall short ask for a look at meter, temperature, mixing and water", async () => {
    const second = {
      readings: [...first.readings, reading("R017", "2027-03-04T09:15", 11.15, 77, "after top-up")],
      additions: [
        ...first.additions,
        {
          id: "A006",
          bath,
          when: moment("2027-03-04T09:00"),
          kind: "concentrate",
          purpose: "top-up",
          amount: 1.39,
          account: "claims",
          phBefore: 11.13,
          phAfter: 11.15,
        },
      ],
    };
    const step = await stepAt("2027-03-02T17:00", second, "2027-03-04T09:20");
    expect(step.reason).toMatch(/check meter, temperature, mixing and water/);
  });

  test("a recovered bath keeps going", async () => {
    const back = {
      readings: [...first.readings, reading("R018", "2027-03-04T09:40", 11.39, 77, "after top-up")],
      additions: [
        ...first.additions,
        {
          id: "A006",
          bath,
          when: moment("2027-03-04T09:20"),
          kind: "concentrate",
          purpose: "top-up",
          amount: 0.8,
          account: "claims",
          phBefore: 11.13,
          phAfter: 11.39,
        },
      ],
    };
    expect((await stepAt("2027-03-02T17:00", back, "2027-03-04T09:50")).sentence).toMatch(/^Keep going/);
  });
});
