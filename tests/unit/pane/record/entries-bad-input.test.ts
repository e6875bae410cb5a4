/** What no form may take, form by form: impossible is refused at its field, unlikely is asked about. */
import { beforeAll, describe, expect, test } from "vitest";

import type { Cells } from "../../../../src/joblog/model/definition.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import type { Draft, EntryForm } from "../../../../src/pane/record/entry-form.ts";
import { additionEntry } from "../../../../src/pane/record/forms/addition/addition-entry.ts";
import { baselineEntry } from "../../../../src/pane/record/forms/baseline/baseline-entry.ts";
import { benchTestEntry } from "../../../../src/pane/record/forms/bench-test/bench-test-entry.ts";
import { careEntry } from "../../../../src/pane/record/forms/care/care-entry.ts";
import { changeOutEntry } from "../../../../src/pane/record/forms/change-out/change-out-entry.ts";
import { chargeEntry } from "../../../../src/pane/record/forms/charge/charge-entry.ts";
import { costLineEntry } from "../../../../src/pane/record/forms/cost-line/cost-line-entry.ts";
import { itemEntry } from "../../../../src/pane/record/forms/item/item-entry.ts";
import { levelMakeUpEntry } from "../../../../src/pane/record/forms/level-make-up/level-make-up-entry.ts";
import { loadEntry } from "../../../../src/pane/record/forms/load/load-entry.ts";
import { meterCheckEntry } from "../../../../src/pane/record/forms/meter-check/meter-check-entry.ts";
import { readingEntry } from "../../../../src/pane/record/forms/reading/reading-entry.ts";
import { releaseEntry } from "../../../../src/pane/record/forms/release/release-entry.ts";
import { stockMoveEntry } from "../../../../src/pane/record/forms/stock-move/stock-move-entry.ts";
import { demoLog, moment } from "../../excel/log/demo-log.ts";
import { asked, bath, fill, withCells, withRows, written } from "./entry-forms.ts";

let open: LogSnapshot;
let closed: LogSnapshot;

const checked = { id: "M001", meter: "M1", when: moment("2027-03-01T08:00"), buffer1: 7, buffer2: 10.01, left: 0 };

beforeAll(async () => {
  open = withRows(await demoLog("2027-03-02T17:00"), "meterChecks", [checked]);
  closed = withCells(open, "baths", bath, { closed: moment("2027-03-06T08:00"), state: "closed" });
}, 120_000);

const baseline: Draft = {
  ph1: "11.42",
  ph2: "11.43",
  ph3: "11.41",
  temperature1: "77",
  temperature2: "77",
  temperature3: "77",
};
const charge: Draft = { tank: "T2", water: "RO", concentrate: "CN-1", strength: "1+28" };
const makeUp: Draft = { levelBefore: "24", levelAfter: "25" };
const check: Draft = { meter: "M1", asFound1: "7.02", asFound2: "10.05" };
const release: Draft = { ph: "11.2", acid: "citric", target: "8.5", when: "2027-03-07T08:00" };
const item: Draft = { claim: "D-0427", item: "bowl", quantity: "1" };

interface Case {
  readonly form: EntryForm;
  readonly good: Draft;
  readonly when: string;
  /** The release follows the change-out; all else comes before it. */
  readonly afterClose?: boolean;
}

const forms: readonly Case[] = [
  { form: chargeEntry, good: charge, when: "opened" },
  { form: benchTestEntry, good: { "result plastic": "pass" }, when: "when" },
  { form: baselineEntry, good: baseline, when: "when" },
  { form: readingEntry, good: { ph: "11.3", temperature: "77", meter: "" }, when: "when" },
  { form: additionEntry, good: { amount: "1", phBefore: "11" }, when: "when" },
  { form: levelMakeUpEntry, good: makeUp, when: "when" },
  { form: loadEntry, good: { claim: "D-0427", baskets: "2", soil: "medium", minutes: "8" }, when: "when" },
  { form: careEntry, good: { kind: "drain", amount: "5", destination: "drum 2" }, when: "when" },
  { form: changeOutEntry, good: { closeReason: "job done" }, when: "closed" },
  { form: releaseEntry, good: release, when: "when", afterClose: true },
  { form: meterCheckEntry, good: check, when: "when" },
  { form: costLineEntry, good: { what: "labor", amount: "10" }, when: "date" },
  { form: stockMoveEntry, good: { amount: "5" }, when: "when" },
];

const named = forms.map((one) => [one.form.title, one] as const);
const ofNoOpenBath: readonly EntryForm[] = [
  chargeEntry,
  changeOutEntry,
  releaseEntry,
  meterCheckEntry,
  costLineEntry,
  stockMoveEntry,
];
const inBath = named.filter(([, { form }]) => !ofNoOpenBath.includes(form));
const logOf = ({ afterClose }: Case): LogSnapshot => (afterClose === true ? closed : open);
const problemsOf = (form: EntryForm, log: LogSnapshot, typed: Draft): readonly string[] =>
  fill(form, log, typed).problems.map(({ key }) => key);

describe("every form", () => {
  test.each(named)("%s takes a good entry", (_, one) => {
    expect(fill(one.form, logOf(one), one.good).problems).toEqual([]);
  });

  test.each(named)("%s refuses a time that is still to come", (_, one) => {
    const soon =
      ["date", "when"].includes(one.when) &&
      fill(one.form, logOf(one), one.good)
        .groups.flatMap(({ fields }) => fields)
        .find(({ key }) => key === one.when)?.column.type === "date"
        ? "2030-01-01"
        : "2030-01-01T08:00";
    const filled = fill(one.form, logOf(one), { ...one.good, [one.when]: soon });
    expect(filled.problems).toEqual(
      expect.arrayContaining([{ key: one.when, message: expect.stringMatching(/is still to come/) as unknown }]),
    );
    expect(filled.meaning.rows).toEqual([]);
  });

  test.each(inBath)("%s refuses a time before the bath was opened, and one after it was closed", (_, one) => {
    const before = fill(one.form, open, { ...one.good, [one.when]: "2027-02-01T08:00" });
    expect(before.problems).toEqual([
      { key: one.when, message: expect.stringMatching(/before the bath was opened/) as unknown },
    ]);
    const after = fill(one.form, closed, { ...one.good, [one.when]: "2027-03-07T08:00" });
    expect(after.problems).toEqual([
      { key: one.when, message: expect.stringMatching(/after the bath was closed/) as unknown },
    ]);
    expect(after.meaning.rows).toEqual([]);
  });

  test.each(named)(
    "%s writes text that looks like a formula as it was typed, for the writer to make literal",
    (_, one) => {
      const log = logOf(one);
      const hasNote = fill(one.form, log, one.good)
        .groups.flatMap(({ fields }) => fields)
        .some(({ key }) => key === "note");
      if (!hasNote) return;
      const filled = fill(one.form, log, { ...one.good, note: "=HYPERLINK(1)" });
      expect(filled.problems).toEqual([]);
      const given: readonly Cells[] = [
        ...filled.meaning.rows.map(({ row }) => row),
        ...(filled.meaning.fills ?? []).map(({ cells: own }) => own),
      ];
      const cells = given.map(({ note }) => note);
      expect(cells).toContain("=HYPERLINK(1)");
    },
  );
});

const impossible: readonly (readonly [string, EntryForm, Draft, string])[] = [
  ["reading of pH 15", readingEntry, { ph: "15" }, "ph"],
  ["reading of pH 0", readingEntry, { ph: "0" }, "ph"],
  ["baseline of pH 15", baselineEntry, { ph2: "15" }, "ph2"],
  ["top-up after pH 15", additionEntry, { phBefore: "15" }, "phBefore"],
  ["top-up to pH 15", additionEntry, { phAfter: "15" }, "phAfter"],
  ["rinse of pH 15", careEntry, { kind: "rinse check", rinsePh: "15" }, "rinsePh"],
  ["release from pH 15", releaseEntry, { ph: "15" }, "ph"],
  ["release to pH 15", releaseEntry, { target: "15" }, "target"],
  ["stage read as pH 15", releaseEntry, { stage1: "1", phAfter1: "15" }, "phAfter1"],
  ["buffer of pH 15", meterCheckEntry, { buffer2: "15" }, "buffer2"],
  ["buffer found as pH 15", meterCheckEntry, { asFound2: "15" }, "asFound2"],
  ["charge of 0 gal of concentrate", chargeEntry, { concentrateAmount: "0" }, "concentrateAmount"],
  ["charge of 0 gal of water", chargeEntry, { waterAmount: "0" }, "waterAmount"],
  ["top-up of 0 gal", additionEntry, { amount: "0" }, "amount"],
  ["level make-up of 0 gal", levelMakeUpEntry, { amount: "0" }, "amount"],
  ["drain of 0 gal", careEntry, { amount: "0" }, "amount"],
  ["release of 0 gal", releaseEntry, { volume: "0" }, "volume"],
  ["receipt of 0 gal", stockMoveEntry, { kind: "receipt", amount: "0" }, "amount"],
  ["cost of 0.00", costLineEntry, { amount: "0" }, "amount"],
  ["more drained than the tank holds", careEntry, { amount: "900" }, "amount"],
  ["more topped up than the tank holds", additionEntry, { amount: "900" }, "amount"],
  ["more water than the tank holds", levelMakeUpEntry, { amount: "900" }, "amount"],
  ["more released than the tank holds", releaseEntry, { volume: "900" }, "volume"],
  ["negative amount", additionEntry, { amount: "-1" }, "amount"],
  ["level above the rim in a reading", readingEntry, { level: "250" }, "level"],
  ["level above the rim in a baseline", baselineEntry, { level: "250" }, "level"],
  ["level above the rim in a make-up", levelMakeUpEntry, { levelAfter: "250" }, "levelAfter"],
  ["level that fell by water", levelMakeUpEntry, { levelBefore: "25", levelAfter: "24", amount: "5" }, "levelAfter"],
  ["half a piece", itemEntry, { quantity: "1.5" }, "quantity"],
  ["no piece", itemEntry, { quantity: "0" }, "quantity"],
  ["name that look-ups read as a pattern", chargeEntry, { bath: "=B1" }, "bath"],
  ["name with a mark that cannot be seen", chargeEntry, { bath: "B-T2\u200b-9" }, "bath"],
  ["name that the log has", chargeEntry, { bath: "b-t1-0301" }, "bath"],
  ["strength that Excel made a time of", chargeEntry, { strength: "1:00 AM" }, "strength"],
  ["claim that is not in the log", loadEntry, { claim: "=A1" }, "claim"],
  ["a page pasted into a note", readingEntry, { note: "x".repeat(40_000) }, "note"],
];

describe("an impossible entry is refused at its field", () => {
  test.each(impossible)("%s", (_, form, bad, key) => {
    const one = forms.find((other) => other.form === form) ?? { form, good: item, when: "" };
    const filled = fill(form, logOf(one), { ...one.good, ...bad });
    expect(filled.problems.map((problem) => problem.key)).toContain(key);
    expect(filled.meaning.rows).toEqual([]);
  });
});

const unlikely: readonly (readonly [string, EntryForm, Draft, RegExp])[] = [
  ["pH that jumped by 1", readingEntry, { ph: "10.1" }, /from the reading before/],
  ["sample 30 °C off", readingEntry, { temperature: "135" }, /from the baseline's/],
  ["meter check overdue", readingEntry, { meter: "M1", when: "2027-03-20T08:00" }, /last checked 19 days ago/],
  [
    "meter check overdue at a baseline",
    baselineEntry,
    { meter: "M1", when: "2027-03-20T08:00" },
    /last checked 19 days ago/,
  ],
  ["meter without a check", readingEntry, { meter: "M9" }, /M9 has no check/],
  ["baseline samples half a point apart", baselineEntry, { ph3: "10.41" }, /lie between 10\.41 and 11\.43/],
  ["level over the line", readingEntry, { level: "29" }, /above the fill line/],
  ["level over the line after water", levelMakeUpEntry, { levelAfter: "29" }, /above the fill line/],
  ["more at once than the opening dose", additionEntry, { amount: "9" }, /more than the whole opening dose/],
  ["top-up that raised the pH by 1", additionEntry, { phBefore: "10.2", phAfter: "11.3" }, /by one addition/],
  ["top-up that lowered the pH", additionEntry, { phBefore: "11.2", phAfter: "11.0" }, /concentrate raises it/],
  ["buffers mixed up", meterCheckEntry, { asFound1: "10.05", asFound2: "7.02" }, /in the right order/],
];

describe("an unlikely entry is asked about once", () => {
  test.each(unlikely)("%s", (_, form, odd, question) => {
    const one = forms.find((other) => other.form === form);
    const filled = fill(form, open, { ...one?.good, ...odd }, "2027-03-20T09:00");
    expect(filled.problems).toEqual([]);
    expect(asked(filled)).toMatch(question);
    expect(filled.meaning.rows).not.toEqual([]);
  });
});

describe("numbers as people write them", () => {
  test.each([
    ["reading", readingEntry, { ph: "11,32", temperature: "77,5" }, "readings", { ph: 11.32, temperature: 77.5 }],
    ["top-up", additionEntry, { amount: "1,39", phBefore: "10,83" }, "additions", { amount: 1.39, phBefore: 10.83 }],
    ["drain", careEntry, { amount: "4,5" }, "care", { amount: 4.5 }],
    [
      "meter check",
      meterCheckEntry,
      { asFound1: "7,02", asFound2: "10,05" },
      "meterChecks",
      { asFound1: 7.02, asFound2: 10.05 },
    ],
    ["cost line", costLineEntry, { amount: "12,50" }, "costLines", { amount: 12.5 }],
  ] as const)("a decimal comma is a point in a %s", (_, form, typed, table, cells) => {
    const one = forms.find((other) => other.form === form);
    const row = fill(form, open, { ...one?.good, ...typed }).meaning.rows.find((other) => other.table === table)?.row;
    expect(row).toMatchObject(cells);
  });

  test("a comma before three digits is refused with both readings", () => {
    expect(fill(additionEntry, open, { amount: "1,390" }).problems[0]?.message).toMatch(/1\.39 or 1390/);
  });

  test("a running number too long to count on from does not become the next one", () => {
    const odd = withRows(open, "readings", [
      {
        id: "R99999999999999999999",
        bath,
        when: moment("2027-03-02T16:59"),
        purpose: "check",
        ph: 11.3,
        temperature: 77,
      },
    ]);
    expect(written(fill(readingEntry, odd, { ph: "11.3", temperature: "77" }), "readings", "id")[0]?.[0]).toMatch(
      /^R\d{3}$/,
    );
    expect(problemsOf(readingEntry, odd, { ph: "11.3", temperature: "77" })).toEqual([]);
  });
});
