import fc from "fast-check";
import { describe, expect, it } from "vitest";

import { afterEdit } from "../../scripts/build/paper-log.ts";
import { inJugs } from "../../src/advice/amounts/charge-dose.ts";
import { amount, figure, money, ph } from "../../src/advice/wording/figures.ts";
import type { TableId } from "../../src/joblog/formula/log-types.ts";
import type { Cells, LogContent, RowValue } from "../../src/joblog/model/definition.ts";
import { contentOf } from "../../src/joblog/model/log-content.ts";
import type { LogSnapshot } from "../../src/joblog/model/log-snapshot.ts";
import type { Draft, EntryForm } from "../../src/pane/record/entry-form.ts";
import { additionEntry } from "../../src/pane/record/forms/addition/addition-entry.ts";
import { baselineEntry } from "../../src/pane/record/forms/baseline/baseline-entry.ts";
import { careEntry } from "../../src/pane/record/forms/care/care-entry.ts";
import { chargeEntry } from "../../src/pane/record/forms/charge/charge-entry.ts";
import { itemEntry } from "../../src/pane/record/forms/item/item-entry.ts";
import { levelMakeUpEntry } from "../../src/pane/record/forms/level-make-up/level-make-up-entry.ts";
import { loadEntry } from "../../src/pane/record/forms/load/load-entry.ts";
import { meterCheckEntry } from "../../src/pane/record/forms/meter-check/meter-check-entry.ts";
import { readingEntry } from "../../src/pane/record/forms/reading/reading-entry.ts";
import { releaseEntry } from "../../src/pane/record/forms/release/release-entry.ts";
import { stockMoveEntry } from "../../src/pane/record/forms/stock-move/stock-move-entry.ts";
import { daysBaseline, firstTwoDays } from "../demo/days/demo-week.ts";
import { runs } from "../setup/random-runs.ts";
import { moment } from "../unit/excel/log/demo-log.ts";
import { workedOut } from "../unit/joblog/evaluate/worked-out.ts";
import { fullWeek } from "../unit/joblog/sheets/hostile-log.ts";
import { bath, fill, said } from "../unit/pane/record/entry-forms.ts";

const now = "2027-03-08T08:50";

/** The week, with a shop that uses none of the usual figures. */
const week: LogContent = {
  fields: {
    ...fullWeek.fields,
    usualDrop: 0.3,
    houseShare: 0.2,
    tolerance: 0.05,
    temperatureGap: 5,
    meterLimit: 0.04,
    weightMedium: 2.5,
    economicShare: 0.6,
  },
  rows: {
    ...fullWeek.rows,
    // Still in use: a closed bath takes no readings.
    baths: (fullWeek.rows.baths ?? []).map((row) => ({ ...row, dropAllowed: undefined, closed: undefined })),
    releases: [],
  },
};

/** The same with a top-up that nobody has read yet. */
const unread: LogContent = {
  ...week,
  rows: {
    ...week.rows,
    additions: [
      ...(week.rows.additions ?? []),
      {
        id: "A990",
        bath,
        when: moment("2027-03-08T08:20"),
        kind: "concentrate",
        purpose: "top-up",
        amount: 1.2,
        account: "claims",
        phBefore: 10.6,
      },
    ],
  },
};

/** The same with its bath closed. */
const closed: LogContent = {
  ...week,
  rows: { ...week.rows, baths: (week.rows.baths ?? []).map((row) => ({ ...row, closed: 46453, closeReason: "age" })) },
};

/** The same on its first morning, its bench tests just accepted. */
const firstMorning: LogContent = {
  ...week,
  rows: {
    ...week.rows,
    ...Object.fromEntries(
      (["benchTests", "additions", "loads", "care"] as const).map((table) => [
        table,
        (firstTwoDays.rows[table] ?? []).filter((row) => Number(row["when"]) <= moment("2027-03-01T09:40")),
      ]),
    ),
    baths: (week.rows.baths ?? []).map((row) =>
      Object.fromEntries(Object.entries(row).filter(([column]) => !Object.keys(daysBaseline).includes(column))),
    ),
    readings: [],
  },
};

type Cell = (table: TableId, column: string) => RowValue | undefined;

/** A form, drafts of it, and the sentences that follow from what the sheets show once a draft is recorded. */
interface Case {
  readonly form: EntryForm;
  readonly drafts: fc.Arbitrary<Draft>;
  readonly start?: LogContent;
  readonly says: (cell: Cell) => readonly string[];
}

const between = (low: number, high: number, digits = 2): fc.Arbitrary<string> =>
  fc
    .integer({ min: Math.round(low * 10 ** digits), max: Math.round(high * 10 ** digits) })
    .map((value) => (value / 10 ** digits).toFixed(digits));

const one = (...words: readonly string[]): fc.Arbitrary<string> => fc.constantFrom(...words);

/** A sentence with a number of the sheet; none where the cell holds no number. */
const ifNumber = (value: RowValue | undefined, sentence: (value: number) => string): readonly string[] =>
  typeof value === "number" ? [sentence(value)] : [];

const verdicts: Readonly<Record<string, string>> = {
  hold: "Hold: no top-up needed.",
  near: "Near the trigger: read again soon.",
  "top up": "Top up: at or under the trigger.",
  "above baseline": "Above the baseline: no top-up needed.",
  "re-read": ": too far from the baseline's temperature to judge.",
};

/** What the form says of a verdict in the sheet; a reading too far off is told in the sheet at which temperature to read again. */
const verdictOf = (shown: string): string =>
  (shown.startsWith("re-read") ? verdicts["re-read"] : verdicts[shown]) ?? "no such verdict";

const recoveries: Readonly<Record<string, string>> = {
  recovered: "Recovered: back within reach",
  short: "Short of the baseline",
  over: "Over the baseline",
};

const cases: Readonly<Record<string, Case>> = {
  reading: {
    form: readingEntry,
    drafts: fc.record({
      // A colder sample, and a cool one that fell by a point, is asked about before anything is said of it.
      ph: between(10.65, 11.6),
      temperature: fc.oneof(between(73, 81, 1), between(65, 140, 1)),
      purpose: one("check"),
      meter: one("M-1", ""),
      when: one(now, "2027-03-03T18:00"),
    }),
    says: (cell) => [
      verdictOf(String(cell("readings", "verdict"))),
      ...ifNumber(
        cell("readings", "trigger"),
        (trigger) => `: ${ph(trigger)}. Baseline ${ph(Number(cell("baths", "baseline")))}.`,
      ),
      ...ifNumber(
        cell("readings", "firstAddition"),
        (first) => `First addition: ${amount(first)} gal, mix, read again.`,
      ),
      ...(cell("readings", "firstAddition") === "re-read cooled" ? ["To size the top-up, cool a sample"] : []),
    ],
  },
  "reading after a top-up": {
    form: readingEntry,
    start: unread,
    drafts: fc.record({
      ph: between(10.7, 11.6),
      temperature: between(75, 79, 1),
      purpose: one("after top-up"),
      meter: one("M-1", ""),
    }),
    says: (cell) => {
      const verdict = String(cell("readings", "verdict"));
      const came = String(cell("additions", "recovery"));
      return [
        recoveries[came] ?? "no such recovery",
        ...(verdict === "top up" ? ["Top up: at or under the trigger."] : []),
        // One rule: above the trigger and short of the baseline is not back yet, on the sheet as in the form.
        verdict === "not back yet" || verdict === "top up" ? "Short of the baseline" : "",
        ...(verdict === "not back yet"
          ? ifNumber(cell("readings", "firstAddition"), (next) => ` Add ${amount(next)} gal, mix`)
          : []),
      ];
    },
  },
  addition: {
    form: additionEntry,
    drafts: fc.record({
      amount: between(0.1, 3),
      purpose: one("top-up", "corrective"),
      phBefore: between(10.6, 11.1),
      phAfter: between(11.05, 11.6),
    }),
    says: (cell) => [
      ...ifNumber(cell("additions", "cost"), (cost) => `Cost ${money(cost)}, to `),
      recoveries[String(cell("additions", "recovery"))] ?? "no such recovery",
      ...ifNumber(cell("additions", "nextAddition"), (next) => (next === 0 ? "" : ` Add ${amount(next)} gal, mix`)),
      ...(cell("additions", "room") === "fits" ? [] : ["over its fill line"]),
      ...(String(cell("additions", "nextAddition")).startsWith("hardly") ? ["The bath hardly answered."] : []),
      ` come to ${figure(100 * Number(cell("baths", "topUpShare")), 0)}% of the opening dose.`,
    ],
  },
  baseline: {
    form: baselineEntry,
    start: firstMorning,
    drafts: fc
      .array(fc.record({ ph: between(11.2, 11.5), temperature: between(75, 77, 1) }), { minLength: 3, maxLength: 3 })
      .map((samples): Draft => {
        const cells = samples.flatMap(({ ph: read, temperature }, index): (readonly [string, string])[] => [
          [`ph${String(index + 1)}`, read],
          [`temperature${String(index + 1)}`, temperature],
        ]);
        return { meter: "M-1", when: "2027-03-01T10:00", ...Object.fromEntries(cells) };
      }),
    says: (cell) => [
      ...ifNumber(
        cell("baths", "baseline"),
        (baseline) =>
          `Baseline ${ph(baseline)} at ${figure(Number(cell("baths", "baselineTemperature")), 1)} °F: the median of ${String(cell("baths", "baselineReadings"))}`,
      ),
      ...ifNumber(cell("baths", "trigger"), (trigger) => `Top-up due at ${ph(trigger)} or under (drop allowed 0.30).`),
    ],
  },
  charge: {
    form: chargeEntry,
    drafts: fc.record({
      bath: fc.constant("B-NEW"),
      tank: fc.constant("T2"),
      water: one("RO", "SOFT", "CITY"),
      concentrate: fc.constant("CN-1"),
      strength: one("1+28", "1+40", "2.5%", "1:40"),
      opened: fc.constant("2027-03-08T08:00"),
      waterAmount: fc.constant("10"),
      concentrateAmount: fc.constant(""),
    }),
    start: { ...week, rows: { ...week.rows, baths: (week.rows.baths ?? []).filter(({ tank }) => tank !== "T2") } },
    says: (cell) => [
      `Working volume ${amount(Number(cell("baths", "workingVolume")))} gal.`,
      `: ${inJugs(Number(cell("baths", "baseDose")), "US")}.`,
      ...(["hardness", "alkalinity"] as const).flatMap((kind) =>
        ifNumber(
          cell("baths", `${kind}Dose`),
          (extra) => `Extra for ${kind}: ${extra === 0 ? "none" : `${amount(extra)} gal`}.`,
        ),
      ),
      `Planned dose in all: ${inJugs(Number(cell("baths", "plannedDose")), "US")}.`,
    ],
  },
  "level make-up": {
    form: levelMakeUpEntry,
    drafts: fc.record({
      levelBefore: between(21, 24.5, 1),
      levelAfter: fc.constant("25"),
      amount: fc.constant("5"),
      water: one("RO", "SOFT", "CITY"),
    }),
    says: (cell) => [
      ...ifNumber(
        cell("additions", "evaporated"),
        (evaporated) =>
          `${amount(evaporated)} gal evaporated, ${amount(Number(cell("additions", "carriedOut")))} gal carried out`,
      ),
      ...ifNumber(cell("additions", "concentrateDue"), (due) =>
        due < 0.0005 ? "Water alone gives it back." : `${inJugs(due, "US")} of concentrate went with it`,
      ),
      ...ifNumber(cell("additions", "hardnessCarried"), (grams) => `${figure(grams, 1)} g of hardness as CaCO3`),
      ...ifNumber(cell("additions", "bicarbonateCarried"), (eq) => `${figure(eq, 3)} eq of bicarbonate`),
    ],
  },
  load: {
    form: loadEntry,
    drafts: fc.record({
      claim: one("D-0427", "D-0436"),
      baskets: between(1, 6, 0),
      soil: one("light", "medium", "heavy"),
      minutes: between(2, 20, 0),
      rework: one("no", "yes"),
    }),
    says: (cell) =>
      cell("loads", "check") === "rework: not billed twice"
        ? ["Rework: counts nothing"]
        : [
            `Counts ${figure(Number(cell("loads", "counted")), 2)} by baskets, ${figure(Number(cell("loads", "weighted")), 2)} by soil, ${figure(Number(cell("loads", "basketMinutes")), 1)} by basket-minutes.`,
          ],
  },
  care: {
    form: careEntry,
    drafts: fc.oneof(
      fc.record({ kind: fc.constant("drain"), amount: between(0.1, 20, 1), destination: fc.constant("drum") }),
      fc.record({ kind: fc.constant("rinse check"), rinsePh: between(6, 10) }),
    ),
    says: (cell) => [
      ...ifNumber(
        cell("care", "concentrateLost"),
        (lost) => `It takes about ${amount(lost)} gal of concentrate along.`,
      ),
      ...ifNumber(cell("care", "aboveWater"), (above) => `That is ${ph(above)} above the bath's water.`),
    ],
  },
  item: {
    form: itemEntry,
    drafts: fc.record({
      claim: fc.constant("D-0427"),
      item: fc.constant("lamp"),
      quantity: between(1, 9, 0),
      route: one("hand", "specialist"),
      outcome: one("", "restored", "returned uncleaned"),
      restoreCost: between(20, 90, 0),
      replacementValue: fc.constant("100"),
    }),
    says: (cell) => [
      `Counts as ${String(cell("items", "standing"))}.`,
      cell("items", "economic") === "within the share" ? ": within the agreed 60%." : ": over the agreed 60%.",
    ],
  },
  "meter check": {
    form: meterCheckEntry,
    drafts: fc.record({
      meter: fc.constant("M-1"),
      temperature: between(70, 80, 0),
      buffer1: fc.constant("7.00"),
      buffer2: fc.constant("10.01"),
      asFound1: between(6.94, 7.06),
      asFound2: between(9.7, 10.3),
      mv1: fc.constant("0"),
      mv2: between(-180, -160, 1),
      when: one(now, "2027-03-02T20:00"),
    }),
    says: (cell) => [
      ...ifNumber(cell("meterChecks", "slope"), (slope) => `Slope ${figure(slope, 1, 1)}% of the theoretical.`),
      String(cell("meterChecks", "verdict")).replace(/^./, (letter) => letter.toUpperCase()),
      `Reaches back to ${String(cell("meterChecks", "readingsReached"))} reading`,
    ],
  },
  release: {
    form: releaseEntry,
    start: closed,
    drafts: fc.record({
      volume: between(100, 121, 1),
      ph: fc.oneof(between(10, 12.4), between(12.5, 12.9)),
      temperature: between(70, 90, 0),
      alkalinity: fc.oneof(fc.constant(""), between(5, 20, 1)),
      acid: one("citric", "sodium bisulfate"),
      purity: one("", "90"),
      target: one("8.5", "7.8"),
      stage1: one("1"),
      phAfter1: fc.oneof(between(5.5, 10.5), fc.constant("")),
      analysesResult: one("", "within limits", "over a limit"),
    }),
    says: (cell) => {
      const state = String(cell("releases", "state"));
      return [
        ...ifNumber(cell("releases", "acidNeeded"), (needed) =>
          needed === 0 ? "no acid needed" : `Acid needed: ${amount(needed)} lb of `,
        ),
        ...(cell("releases", "corrosive") === "yes" ? ["it is corrosive hazardous waste, D002"] : []),
        ...(state === "limits and results entered"
          ? ["Limits and results are entered."]
          : [state.replace(/^./, (letter) => letter.toUpperCase())]),
      ];
    },
  },
  "stock move": {
    form: stockMoveEntry,
    drafts: fc.record({
      kind: one("count", "receipt", "issue"),
      concentrate: fc.constant("CN-1"),
      amount: between(0.5, 20, 1),
      price: one("", "27.8"),
      when: one("2027-03-08", "2027-03-05"),
    }),
    says: (cell) => [
      ...ifNumber(cell("stockMoves", "variance"), (off) =>
        Math.abs(off) < 0.005
          ? "As the book has it."
          : `${amount(Math.abs(off))} gal ${off < 0 ? "less" : "more"} than the book`,
      ),
      ...(cell("stockMoves", "kind") === "count"
        ? []
        : ifNumber(cell("stockMoves", "book"), (book) => `By the book ${amount(book)} gal after it.`)),
      ...ifNumber(cell("stockMoves", "value"), (value) =>
        cell("stockMoves", "kind") === "count"
          ? `Worth ${money(Math.abs(value))}, ${value < 0 ? "a loss" : "a gain"} of the shop.`
          : `Worth ${money(value)}.`,
      ),
    ],
  },
};

/** Cells of the rows that a form added, and of the bath it speaks of. */
function cellsAfter(log: LogSnapshot, keys: Readonly<Partial<Record<TableId, RowValue | undefined>>>): Cell {
  return (table, column) => {
    const row = log.rows[table].find(({ cells }) => Object.values(cells)[0] === keys[table]);
    if (row === undefined) throw new Error(`${table} has no row ${String(keys[table])}.`);
    const cells: Cells = row.cells;
    return cells[column];
  };
}

describe("what a form says is what the sheets say once it is recorded", () => {
  it.each(Object.entries(cases))("%s", async (_name, { form, drafts, start = week, says }) => {
    let recorded = 0;
    await fc.assert(
      fc.asyncProperty(drafts, async (draft) => {
        const before = await workedOut(start, "US", [start]);
        const filled = fill(form, before, { bath, when: now, ...draft }, now);
        expect(filled.meaning.blocked).toBeUndefined();
        // What a form refuses is not in the sheets.
        if (filled.problems.length > 0) return;
        const after = await workedOut(contentOf(afterEdit(before, filled.meaning)), "US", [start]);
        const added = [
          ...filled.meaning.rows.map(({ table, row }) => [table, Object.values(row)[0]] as const),
          ...(filled.meaning.fills ?? []).map(({ table, key }) => [table, key] as const),
        ];
        const text = said(filled);
        for (const sentence of says(cellsAfter(after, { baths: bath, ...Object.fromEntries([...added].reverse()) })))
          expect(text).toContain(sentence);
        recorded += 1;
      }),
      runs(2),
    );
    expect(recorded).toBeGreaterThan(0);
  });
});
