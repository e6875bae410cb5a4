import { beforeAll, describe, expect, test } from "vitest";

import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { baselineEntry } from "../../../../src/pane/record/forms/baseline/baseline-entry.ts";
import { meterCheckEntry } from "../../../../src/pane/record/forms/meter-check/meter-check-entry.ts";
import { readingEntry } from "../../../../src/pane/record/forms/reading/reading-entry.ts";
import { demoLog, moment } from "../../excel/log/demo-log.ts";
import { asked, bath, fill, said, withCells, withRows } from "./entry-forms.ts";

const first = {
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

const wednesday = [
  { id: "R013", bath, when: moment("2027-03-03T11:20"), purpose: "check", ph: 11, temperature: 76.28, meter: "M-1" },
  { id: "R014", bath, when: moment("2027-03-03T16:30"), purpose: "check", ph: 10.96, temperature: 76.28, meter: "M-1" },
];

const thursday = {
  meter: "M-1",
  when: "2027-03-04T08:05",
  temperature: "25 C",
  buffer1: "7.00",
  asFound1: "7.06",
  buffer2: "10.01",
  asFound2: "10.15",
  mv1: "-9.8",
  mv2: "-180.9",
};

let log: LogSnapshot;

beforeAll(async () => {
  log = await demoLog("2027-03-02T17:00", { meterChecks: [first], readings: wednesday });
}, 120_000);

describe("the meter check form", () => {
  // Demo week: 7.06 in 7.00 and 10.15 in 10.01, slope 96.1 %, limit 0.05.
  test("says errors, slope and verdict, and writes one row", () => {
    const filled = fill(meterCheckEntry, log, thursday);
    expect(filled.problems).toEqual([]);
    const text = said(filled);
    expect(text).toContain("As found: +0.06 in 7.00, +0.14 in 10.01.");
    expect(text).toContain("Slope 96.1% of the theoretical.");
    expect(text).toContain("As found out of limits (limits: 0.05 pH, slope 95 to 105%).");
    expect(filled.meaning.rows[0]).toMatchObject({
      table: "meterChecks",
      row: { id: "M002", meter: "M-1", asFound2: 10.15, mv2: -180.9, temperature: 77 },
    });
  });

  // 0.14 × 2.139 / 3.003 days and × 2.354 / 3.003: 0.10 and 0.11 off 11.00 and 10.96; the trigger is 10.92.
  test("reaches back: names the readings whose verdict flips and keeps what the meter showed", () => {
    const text = said(fill(meterCheckEntry, log, thursday));
    expect(text).toMatch(
      /Reaches back to \d+ readings since Mar 1, 08:00: up to 0\.13 lower once the drift is taken out, at each reading's own pH by the straight line through both buffers, evenly over time\. What the meter showed stays/,
    );
    expect(text).toContain(
      'Reading R013 of bath B-T1-0301, Mar 3, 11:20: 11.00 becomes 10.88, "near" becomes "top up".',
    );
    expect(text).toContain(
      'Reading R014 of bath B-T1-0301, Mar 3, 16:30: 10.96 becomes 10.83, "near" becomes "top up".',
    );
    expect(text).toContain("Above the buffer 10.01 that line is drawn on and uncertain");
  });

  test("agrees with what the sheet makes of the same check", async () => {
    const second = {
      id: "M002",
      when: moment("2027-03-04T08:05"),
      meter: "M-1",
      buffer1: 7,
      asFound1: 7.06,
      buffer2: 10.01,
      asFound2: 10.15,
      mv1: -9.8,
      mv2: -180.9,
    };
    const written = await demoLog("2027-03-02T17:00", { meterChecks: [first, second], readings: wednesday });
    const check = written.rows.meterChecks[1]?.cells;
    expect(check?.["verdict"]).toBe("as found out of limits");
    expect(check?.["slope"]).toBeCloseTo(96.1, 1);
    const text = said(fill(meterCheckEntry, log, thursday));
    expect(text).toContain(`Reaches back to ${String(check?.["readingsReached"])} readings`);
    const flipped = written.rows.readings.filter((row) => String(row.cells.flag ?? "").startsWith("verdict changed"));
    expect(flipped.map((row) => row.cells.id)).toEqual(["R013", "R014"]);
    for (const { cells } of flipped)
      expect(text).toContain(
        `becomes ${Number(cells.phCorrected).toFixed(2)}, "${String(cells.verdictAsRead)}" becomes "${String(cells.verdict)}"`,
      );
  }, 120_000);

  // Left 0.05 high on Monday, found 0.14 high on Thursday: 0.05 + 0.09 × 2.139 / 3.003 days is 0.11 off 11.00, and 0.05 + 0.09 × 2.354 / 3.003 is 0.12 off 10.96.
  test("takes out what the meter was left off as well, as the sheet does", async () => {
    const leftHigh = { ...first, asLeft1: 7, asLeft2: 10.06 };
    const second = {
      id: "M002",
      when: moment("2027-03-04T08:05"),
      meter: "M-1",
      buffer1: 7,
      asFound1: 7.06,
      buffer2: 10.01,
      asFound2: 10.15,
    };
    const text = said(
      fill(
        meterCheckEntry,
        await demoLog("2027-03-02T17:00", { meterChecks: [leftHigh], readings: wednesday }),
        thursday,
      ),
    );
    expect(text).toContain("up to 0.14 lower");
    expect(text).toContain("Reading R014 of bath B-T1-0301, Mar 3, 16:30: 10.96 becomes 10.82");
    const written = await demoLog("2027-03-02T17:00", { meterChecks: [leftHigh, second], readings: wednesday });
    const corrected = (id: string) => written.rows.readings.find((row) => row.cells.id === id)?.cells.phCorrected;
    expect([corrected("R013"), corrected("R014")]).toEqual([expect.closeTo(10.87, 9), expect.closeTo(10.82, 9)]);
  }, 120_000);

  test("names a baseline whose readings give another figure then, and how to write it down", () => {
    const late = withCells(log, "meterChecks", "M001", { when: moment("2027-02-26T08:00") });
    expect(said(fill(meterCheckEntry, late, thursday))).toMatch(
      /Baseline of B-T1-0301: its readings then give 11\.3\d; 11\.42 is written down\. The next step/,
    );
  });

  test("without a check before, readings stay as read", () => {
    expect(said(fill(meterCheckEntry, log, { ...thursday, meter: "M-2" }))).toContain(
      "No check of this meter before: earlier readings stay as read.",
    );
  });

  test("within limits it says so", () => {
    expect(said(fill(meterCheckEntry, log, { ...thursday, asFound1: "7.02", asFound2: "10.06" }))).toContain(
      "Within limits",
    );
  });

  // A primary carbonate standard is 10.062 at 20 °C (Buck et al., Pure Appl. Chem. 74 (2002) 2169).
  test("says what the standard buffer is at another temperature", () => {
    expect(said(fill(meterCheckEntry, log, { ...thursday, temperature: "20 C" }))).toContain(
      "A buffer of 10.01 is about 10.06 at 68 °F.",
    );
  });

  test("wants as found before as left, and two different buffers", () => {
    const filled = fill(meterCheckEntry, log, { ...thursday, asFound2: "", asLeft2: "10.01" });
    expect(filled.problems.map(({ message }) => message).join("\n")).toMatch(/As found 2 comes before as left/);
    expect(filled.meaning.rows).toEqual([]);
    expect(
      fill(meterCheckEntry, log, { ...thursday, buffer2: "7.00", asFound2: "7.06" }).problems.map(({ key }) => key),
    ).toEqual(["buffer2"]);
  });

  test("asks where the buffers look mixed up", () => {
    expect(asked(fill(meterCheckEntry, log, { ...thursday, asFound1: "10.05", asFound2: "7.02" }))).toMatch(
      /right order/,
    );
    expect(asked(fill(meterCheckEntry, log, thursday))).toBe("");
  });
});

describe("what a reading is asked about", () => {
  const cool = { ph: "10.9", temperature: "25 C", when: "2027-03-04T08:00", meter: "M-1" };

  test("a fall of one pH since the reading before", () => {
    expect(asked(fill(readingEntry, log, { ...cool, ph: "9.9" }))).toMatch(
      /pH 9\.90 is 1\.06 from the reading before, 10\.96 on Mar 3, 16:30/,
    );
    expect(asked(fill(readingEntry, log, cool))).toBe("");
  });

  test("a temperature without its scale that would be judged otherwise in °C", () => {
    const hot = { ...cool, ph: "10.58" };
    expect(asked(fill(readingEntry, log, { ...hot, temperature: "53" }))).toContain(
      "at 53 F the verdict is “top up”, at 53 C (127.4 °F) “hold”; write “53 F” or “53 C”.",
    );
    expect(asked(fill(readingEntry, log, { ...hot, temperature: "53 F" }))).toBe("");
    expect(asked(fill(readingEntry, log, { ...hot, temperature: "53 C" }))).toBe("");
  });

  test("a cold sample, whatever the verdict; a cool one is ordinary", () => {
    expect(asked(fill(readingEntry, log, { ...cool, ph: "11.3", temperature: "55" }))).toMatch(
      /^55 °F is cold for a sample\. If it was read in °C, write "55 C" \(131 °F\)\.$/,
    );
    expect(asked(fill(readingEntry, log, { ...cool, ph: "11.3", temperature: "60" }))).toBe("");
  });

  test("a sample 30 °C from the baseline's temperature", () => {
    expect(asked(fill(readingEntry, log, { ...cool, temperature: "56 C" }))).toMatch(
      /from the baseline's\. Was it typed right/,
    );
    expect(asked(fill(readingEntry, log, { ...cool, temperature: "53.1 C" }))).toBe("");
  });

  test("a meter that was not checked for longer than the shop allows, or was left out of limits", () => {
    expect(asked(fill(readingEntry, log, { ...cool, when: "2027-03-09T08:00" }, "2027-03-09T08:10"))).toMatch(
      /last checked 8 days ago, Mar 1, 08:00; the shop checks every 7/,
    );
    expect(asked(fill(readingEntry, withCells(log, "meterChecks", "M001", { left: 0.09 }), cool))).toMatch(
      /left 0\.09 pH off/,
    );
  });

  test("no meter named where the log knows several", () => {
    const two = withRows(log, "meterChecks", [{ ...first, id: "M002", meter: "M-2" }]);
    expect(asked(fill(readingEntry, two, { ...cool, meter: "" }))).toMatch(/Which meter\? The log knows M-1, M-2/);
    expect(asked(fill(readingEntry, log, { ...cool, meter: "" }))).toBe("");
  });

  test("a baseline with a meter that was never checked", () => {
    const three = {
      ph1: "11.42",
      temperature1: "25 C",
      ph2: "11.42",
      temperature2: "25 C",
      ph3: "11.42",
      temperature3: "25 C",
      when: "2027-03-04T08:00",
    };
    expect(asked(fill(baselineEntry, log, { ...three, meter: "M-9" }))).toMatch(/Meter M-9 has no check in the log/);
    expect(asked(fill(baselineEntry, log, { ...three, meter: "M-1" }))).toBe("");
  });
});
