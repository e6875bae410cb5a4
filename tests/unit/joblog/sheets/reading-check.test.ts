/** Readings typed straight into the sheet, as no form asked about them. */
import { describe, expect, it, test } from "vitest";

import { nextStep } from "../../../../src/advice/next-step/next-step.ts";
import type { LogRow } from "../../../../src/joblog/model/definition.ts";
import { readingEntry } from "../../../../src/pane/record/forms/reading/reading-entry.ts";
import { demoBath as bath, moment } from "../../../demo/demo-week-times.ts";
import { fill } from "../../pane/record/entry-forms.ts";
import { workedOut } from "../evaluate/worked-out.ts";
import { fullWeek } from "./hostile-log.ts";
import { weekStarts, weekWith } from "./week-of-sheets.ts";
import { demoRowsAnd, demoWith, workedLog } from "./worked-log.ts";

const typed = (id: string, at: string, cells: LogRow<"readings">): LogRow<"readings"> => ({
  id,
  bath,
  when: moment(1, at),
  purpose: "check",
  ...cells,
});

const withReadings = (...more: readonly LogRow<"readings">[]) =>
  demoWith({ readings: demoRowsAnd("readings", ...more) });

const ph = "pH far from the reading before and from the baseline";
const cold = "cold for a sample: was it °C?";

// The reading before is pH 11.21 at 75.7 °F, the baseline 11.42 at 77 °F.
const cases: readonly (readonly [string, LogRow<"readings">, string, RegExp])[] = [
  ["a pH of 1.12", { ph: 1.12, temperature: 77 }, ph, /^check the reading$/],
  ["a pH of 1.12, the sample's temperature missing", { ph: 1.12 }, ph, /^check the reading$/],
  ["a pH of 1.12 of a hot sample", { ph: 1.12, temperature: 140 }, ph, /^check the reading$/],
  ["a pH of 13.9", { ph: 13.9, temperature: 77 }, ph, /^check the reading$/],
  ["53 for °C", { ph: 10.9, temperature: 53 }, cold, /^check the reading$/],
  ["a fall of 0.9", { ph: 10.3, temperature: 77 }, "", /^top up$/],
  ["a hot sample that reads 1.1 lower", { ph: 10.1, temperature: 140 }, "", /^(re-read|near|hold|top up)/],
  ["60 °F", { ph: 11.2, temperature: 60 }, "", /^(hold|near|re-read)/],
  ["a pH of 1.12 that somebody confirmed", { ph: 1.12, temperature: 77, confirmed: "yes" }, ph, /^top up$/],
  ["53 °F that somebody confirmed", { ph: 10.9, temperature: 53, confirmed: "yes" }, cold, /^top up$/],
  ["a pH of 1.12 of a rinse", { ph: 1.12, temperature: 77, purpose: "rinse" }, "", /^$/],
];

describe("a reading that looks like a slip", () => {
  it.each(cases)("%s", async (_, cells, check, verdict) => {
    const log = await workedLog(withReadings(typed("R090", "17:00", cells)));
    expect(log.cell("readings", "R090", "check")).toBe(check);
    expect(log.cell("readings", "R090", "verdict")).toMatch(verdict);
    const isChecked = log.cell("readings", "R090", "verdict") === "check the reading";
    for (const amount of ["firstAddition", "topUpLow", "topUpBest", "topUpHigh"] as const)
      expect(log.cell("readings", "R090", amount) === "" || !isChecked).toBe(true);
    if (isChecked) expect(log.cell("readings", "R090", "flag")).toBe("");
  });

  it("does not make the next one doubtful", async () => {
    const log = await workedLog(
      withReadings(
        typed("R090", "17:00", { ph: 1.12, temperature: 77 }),
        typed("R091", "17:30", { ph: 11.2, temperature: 77 }),
      ),
    );
    expect(log.cell("readings", "R091", "check")).toBe("");
    expect(log.cell("readings", "R091", "verdict")).toBe("hold");
  });

  it("is no lowest pH of a claim's statement", async () => {
    const readings = [...(fullWeek.rows.readings ?? []), typed("R090", "17:00", { ph: 1.12, temperature: 77 })];
    const log = await workedLog(weekWith({ statementClaim: "D-0427" }, { readings }));
    expect(log.cell("statementUse", bath, "lowest")).toBeGreaterThan(9);
    expect(log.cell("statementUse", bath, "verdicts")).toMatch(/, check the reading 1$/);
  });

  it("asks nothing of 53 in a shop of °C", async () => {
    const log = await workedLog(withReadings(typed("R090", "17:00", { ph: 11.1, temperature: 53 })), "metric");
    expect(log.cell("readings", "R090", "check")).toBe("");
  });

  it("is what Now asks to be put right, and no advice rests on it", async () => {
    const log = await workedOut(withReadings(typed("R090", "17:00", { ph: 1.12, temperature: 77 })), "US", weekStarts);
    const step = nextStep(log, bath, "US", moment(1, "17:05"));
    expect(step).toMatchObject({
      kind: "reading",
      sentence: `Check the last reading, pH 1.12 at 77.0 °F: ${ph}.`,
      urgent: true,
    });
  });
});

test("the form asks about what the sheet would ask about, and what it then records the sheet takes as read", async () => {
  const log = await workedOut(withReadings(), "US", weekStarts);
  for (const [what, cells, check] of cases.filter(
    ([, { confirmed, purpose }]) => (confirmed ?? purpose) === undefined,
  )) {
    const draft = {
      ph: String(cells.ph),
      ...(cells.temperature === undefined ? {} : { temperature: String(cells.temperature) }),
      when: "2027-03-02T17:00",
    };
    const filled = fill(readingEntry, log, draft);
    const slips = (filled.meaning.doubts ?? []).filter((doubt) => /reading before|°C|77 F/.test(doubt));
    expect([what, slips.length > 0]).toEqual([what, check !== ""]);
    const recorded = filled.meaning.rows.map(({ row }) => ("confirmed" in row ? row.confirmed : undefined));
    if (recorded.length > 0) expect([what, recorded]).toEqual([what, [check === "" ? undefined : "yes"]]);
  }
});

test("a temperature typed with its unit is asked about neither in the form nor on the sheet", async () => {
  const log = await workedOut(withReadings(), "US", weekStarts);
  const filled = fill(readingEntry, log, { ph: "11.2", temperature: "53 F", when: "2027-03-02T17:00" });
  expect(filled.meaning.doubts).toEqual([]);
  expect(filled.meaning.rows).toMatchObject([{ row: { temperature: 53, confirmed: "yes" } }]);
});
