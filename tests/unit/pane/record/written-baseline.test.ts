import { beforeAll, describe, expect, test } from "vitest";

import { nextStep } from "../../../../src/advice/next-step/next-step.ts";
import { editLog, readLog, takeBack } from "../../../../src/excel/log-workbook.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { baselineEntry } from "../../../../src/pane/record/forms/baseline/baseline-entry.ts";
import { writtenBaselineEntry } from "../../../../src/pane/record/forms/baseline/written-baseline-entry.ts";
import { readingEntry } from "../../../../src/pane/record/forms/reading/reading-entry.ts";
import { daysBaseline, daysUnwritten, firstTwoDays } from "../../../demo/days/demo-week.ts";
import { demoLog, moment, openDemoLog } from "../../excel/log/demo-log.ts";
import { workedOut } from "../../joblog/evaluate/worked-out.ts";
import { asked, bath, fill, said } from "./entry-forms.ts";

const three = {
  ph1: "11.42",
  temperature1: "24.7 C",
  ph2: "11.43",
  temperature2: "25 C",
  ph3: "11.41",
  temperature3: "24.9 C",
  meter: "M-1",
  initials: "KT",
  when: "2027-03-01T09:45",
};

const rowOf = (log: LogSnapshot | undefined) => log?.rows.baths.find(({ cells }) => cells.bath === bath)?.cells;

const withBaseline = (baseline: number): Promise<LogSnapshot> =>
  workedOut({
    ...firstTwoDays,
    rows: {
      ...firstTwoDays.rows,
      baths: (firstTwoDays.rows.baths ?? []).map((row) => ({ ...row, ...daysBaseline, baseline })),
    },
  });

const stepOf = (log: LogSnapshot) => nextStep(log, bath, "US", moment("2027-03-02T17:00"));

describe("the form that takes the three readings", () => {
  test("writes the baseline down with them, says so, and is taken back with them", async () => {
    const before = await openDemoLog("2027-03-01T09:40");
    const filled = fill(baselineEntry, before, three, "2027-03-01T09:45");
    expect(said(filled)).toContain("Baseline 11.42 at 76.8 °F: the median of 3. It is written down in the bath's row.");
    expect(filled.meaning.recorded).toBe(`3 baseline readings of bath ${bath}, baseline 11.42 written down`);
    const receipt = await editLog(filled.meaning);
    const after = await readLog();
    expect(rowOf(after)).toMatchObject({
      ...daysBaseline,
      baselineTemperature: 76.76,
      baselineSetAt: moment("2027-03-01T09:45"),
    });
    expect(rowOf(after)).toMatchObject({ baselineState: "set", state: "in use" });
    await takeBack(receipt);
    const again = await readLog();
    expect(rowOf(again)?.baseline).toBeUndefined();
    expect(again).toEqual(before);
  });

  test("writes nothing down where the readings give no baseline", async () => {
    const log = await demoLog("2027-03-01T09:40");
    const far = fill(baselineEntry, log, { ...three, temperature3: "40 C" });
    expect(far.problems.map(({ key }) => key)).toContain("temperature1");
    expect(far.meaning.changes ?? []).toEqual([]);
  });
});

describe("a baseline that the readings give and nobody wrote down", () => {
  let log: LogSnapshot;

  beforeAll(async () => {
    log = await workedOut(daysUnwritten);
  });

  test("is the next step, and the form holds all of it", () => {
    expect(stepOf(log)).toMatchObject({ kind: "written baseline", sentence: "Write down the baseline 11.42." });
    const filled = fill(writtenBaselineEntry, log, { baselineSetBy: "MV" });
    expect(filled.problems).toEqual([]);
    expect(asked(filled)).toBe("");
    const cells = filled.meaning.changes?.[0]?.cells;
    expect(cells).toMatchObject({
      bath: { before: bath, after: bath },
      baseline: { before: undefined, after: 11.42 },
      baselineSetBy: { before: undefined, after: "MV" },
      baselineFrom: { before: undefined, after: "R001, R002, R003" },
    });
    expect(said(filled)).toContain("Top-up due at 10.92 or under");
  });

  test("is asked about where something else is typed", () => {
    const other = fill(writtenBaselineEntry, log, { baseline: "11.50" });
    expect(asked(other)).toContain("The readings give 11.42, and 11.50 is typed.");
    expect(fill(writtenBaselineEntry, log, { baseline: "0" }).meaning.rows).toEqual([]);
    expect(fill(writtenBaselineEntry, log, { baseline: "0" }).problems.map(({ key }) => key)).toContain("baseline");
  });
});

describe("a baseline that its readings contradict", () => {
  test("comes before any word of carrying on, and is said in the forms", async () => {
    const log = await withBaseline(11.3);
    const fault = "The baseline is written down as 11.30; its readings give 11.42.";
    const step = stepOf(log);
    expect(step.kind).toBe("written baseline");
    expect(step.sentence).toContain(fault);
    expect(step.overdue.map(({ text }) => text).join(" ")).not.toContain(fault);
    expect(said(fill(readingEntry, log, { ph: "11.2", temperature: "77" }))).toContain(fault);
  });

  test("by less than a meter repeats to is named beside the step", async () => {
    const step = stepOf(await withBaseline(11.4));
    expect(step.kind).not.toBe("written baseline");
    expect(step.overdue).toContainEqual(
      expect.objectContaining({
        text: expect.stringContaining("its readings give 11.42") as string,
        kind: "written baseline",
      }),
    );
  });
});
