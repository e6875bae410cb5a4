import { beforeAll, describe, expect, test } from "vitest";

import { amount, figure, percent, ph } from "../../../../src/advice/wording/figures.ts";
import { buildLog, editLog, readLog } from "../../../../src/excel/log-workbook.ts";
import type { ColumnId } from "../../../../src/joblog/formula/log-names.ts";
import type { TableId } from "../../../../src/joblog/formula/log-types.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import { layOut } from "../../../../src/joblog/layout/lay-out.ts";
import type { LogContent, RowValue } from "../../../../src/joblog/model/definition.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { jobSheet } from "../../../../src/joblog/sheets/job/job-sheet.ts";
import { shopSheet } from "../../../../src/joblog/sheets/shop/shop-sheet.ts";
import type { Draft, EntryForm } from "../../../../src/pane/record/entry-form.ts";
import type { FilledForm } from "../../../../src/pane/record/fill-form.ts";
import { additionEntry } from "../../../../src/pane/record/forms/addition/addition-entry.ts";
import { baselineEntry } from "../../../../src/pane/record/forms/baseline/baseline-entry.ts";
import { careEntry } from "../../../../src/pane/record/forms/care/care-entry.ts";
import { changeOutEntry } from "../../../../src/pane/record/forms/change-out/change-out-entry.ts";
import { chargeEntry } from "../../../../src/pane/record/forms/charge/charge-entry.ts";
import { itemEntry } from "../../../../src/pane/record/forms/item/item-entry.ts";
import { levelMakeUpEntry } from "../../../../src/pane/record/forms/level-make-up/level-make-up-entry.ts";
import { loadEntry } from "../../../../src/pane/record/forms/load/load-entry.ts";
import { meterCheckEntry } from "../../../../src/pane/record/forms/meter-check/meter-check-entry.ts";
import { readingEntry } from "../../../../src/pane/record/forms/reading/reading-entry.ts";
import { releaseEntry } from "../../../../src/pane/record/forms/release/release-entry.ts";
import { temperatureSketch } from "../../../../src/pane/try/temperature-sketch.ts";
import { topUpSketch } from "../../../../src/pane/try/top-up-sketch.ts";
import { daysUnwritten, firstTwoDays } from "../../../demo/days/demo-week.ts";
import { moment } from "../../excel/log/demo-log.ts";
import { openWorkbook } from "../../excel/log/open-workbook.ts";
import { asked, bath, fill, said } from "./entry-forms.ts";

/** Every default of the log set to something else that it allows. */
const ownDefaults: Readonly<Record<string, RowValue>> = {
  tolerance: 0.05,
  temperatureGap: 5,
  houseShare: 0.2,
  topUpGrowth: 1.5,
  topUpLimit: 0.25,
  usualDrop: 0.3,
  readingHours: 3,
  bathLife: 3,
  meterCheckDays: 2,
  meterLimit: 0.02,
  slopeLow: 97,
  slopeHigh: 103,
  weightLight: 1.5,
  weightMedium: 2.5,
  weightHeavy: 7,
  shareBasis: "basket-minutes",
  currency: "CAD",
  economicShare: 0.6,
  sewerLow: 7.5,
  sewerHigh: 8,
  permit: "P-77",
};

function until<Row extends { readonly when?: RowValue | undefined }>(
  last: string,
  rows: readonly Row[] = [],
): readonly Row[] {
  return rows.filter(({ when }) => Number(when) <= moment(last));
}

/** The invented Monday up to its bench tests; the bath leaves its drop to the shop. */
const monday: LogContent = {
  fields: { ...firstTwoDays.fields, ...ownDefaults },
  rows: {
    ...firstTwoDays.rows,
    tanks: (firstTwoDays.rows.tanks ?? []).map((tank) => ({ ...tank, dragOut: 0.2 })),
    baths: (daysUnwritten.rows.baths ?? []).map((row) => ({ ...row, dropAllowed: undefined })),
    benchTests: until("2027-03-01T09:40", firstTwoDays.rows.benchTests),
    additions: until("2027-03-01T09:40", firstTwoDays.rows.additions),
    readings: [],
  },
};

interface Recorded {
  readonly filled: FilledForm;
  readonly text: string;
  readonly before: LogSnapshot;
  readonly after: LogSnapshot;
}

async function current(): Promise<LogSnapshot> {
  const log = await readLog();
  if (log === undefined) throw new Error("The workbook holds no log.");
  return log;
}

/** Fills a form in, records what it means, and reads what the sheets make of it. */
async function record(form: EntryForm, typed: Draft, now: string): Promise<Recorded> {
  const before = await current();
  const filled = fill(form, before, { bath, when: now, ...typed }, now);
  if (filled.problems.length > 0 || filled.meaning.blocked !== undefined)
    throw new Error(`${form.title}: ${JSON.stringify([filled.problems, filled.meaning.blocked])}`);
  await editLog(filled.meaning);
  return { filled, text: said(filled), before, after: await current() };
}

/** What the sheet shows in a row, known by its first column; by the last one where no key is given. */
function shown<Table extends TableId>(
  { after }: Recorded,
  table: Table,
  column: ColumnId<Table>,
  key?: string,
): RowValue | undefined {
  const rows = after.rows[table];
  const row =
    key === undefined
      ? rows.filter(({ cells }) => Object.keys(cells).length > 1).at(-1)
      : rows.find(({ cells }) => Object.values(cells)[0] === key);
  if (row === undefined) throw new Error(`${table} has no row ${key ?? "at all"}.`);
  const { cells } = row;
  return cells[column];
}

function number<Table extends TableId>(
  recorded: Recorded,
  table: Table,
  column: ColumnId<Table>,
  key?: string,
): number {
  const value = shown(recorded, table, column, key);
  if (typeof value !== "number") throw new Error(`${table}.${column} is ${String(value)}, no number.`);
  return value;
}

const readings = (...read: readonly number[]): Draft =>
  Object.fromEntries(
    read.flatMap((value, index) => [
      [`ph${String(index + 1)}`, String(value)],
      [`temperature${String(index + 1)}`, "77"],
    ]),
  );

const diary: Record<string, Recorded> = {};

function on(name: string): Recorded {
  const found = diary[name];
  if (found === undefined) throw new Error(`Nothing was recorded as ${name}.`);
  return found;
}

beforeAll(async () => {
  openWorkbook();
  await buildLog(layOut(jobLog, { system: "US" }, monday));
  const buffers = { meter: "M-1", temperature: "77", buffer1: "7.00", buffer2: "10.01" };
  diary["first check"] = await record(
    meterCheckEntry,
    { ...buffers, asFound1: "7.00", asFound2: "10.01", mv1: "0", mv2: "-171" },
    "2027-02-27T09:00",
  );
  diary["baseline"] = await record(
    baselineEntry,
    { ...readings(11.42, 11.43, 11.41), meter: "M-1" },
    "2027-03-01T09:45",
  );
  diary["joining baseline"] = await record(
    baselineEntry,
    { ...readings(11.46, 11.47, 11.45), meter: "M-1" },
    "2027-03-01T09:55",
  );
  diary["hold"] = await record(readingEntry, { ph: "11.30", temperature: "77", meter: "M-1" }, "2027-03-01T12:00");
  diary["load"] = await record(
    loadEntry,
    { claim: "D-0427", baskets: "2", soil: "heavy", minutes: "10" },
    "2027-03-01T13:00",
  );
  diary["hot"] = await record(readingEntry, { ph: "10.60", temperature: "127.6", meter: "M-1" }, "2027-03-01T14:00");
  diary["due"] = await record(readingEntry, { ph: "11.05", temperature: "81", meter: "M-1" }, "2027-03-01T15:00");
  diary["short"] = await record(
    additionEntry,
    { amount: "0.5", purpose: "top-up", account: "claims", phBefore: "11.05", phAfter: "11.20" },
    "2027-03-01T15:10",
  );
  diary["nearly"] = await record(
    additionEntry,
    { amount: "0.3", purpose: "top-up", account: "claims", phBefore: "11.20", phAfter: "11.36" },
    "2027-03-01T15:30",
  );
  diary["corrective"] = await record(
    additionEntry,
    { amount: "0.4", purpose: "corrective", account: "shop", phBefore: "11.36", phAfter: "11.45" },
    "2027-03-01T15:50",
  );
  diary["waiting"] = await record(
    additionEntry,
    { amount: "0.2", purpose: "top-up", account: "claims", phBefore: "11.30" },
    "2027-03-01T16:00",
  );
  diary["after"] = await record(
    readingEntry,
    { purpose: "after top-up", ph: "11.38", temperature: "77", meter: "M-1" },
    "2027-03-01T16:20",
  );
  diary["late"] = await record(
    readingEntry,
    { purpose: "check", ph: "11.17", temperature: "77", meter: "M-1" },
    "2027-03-01T22:00",
  );
  diary["drain"] = await record(careEntry, { kind: "drain", amount: "0.5", destination: "drum" }, "2027-03-01T22:10");
  diary["rinse"] = await record(careEntry, { kind: "rinse check", rinsePh: "8.4" }, "2027-03-01T22:20");
  diary["make-up"] = await record(
    levelMakeUpEntry,
    { levelBefore: "23.5", levelAfter: "25", water: "RO", account: "claims" },
    "2027-03-02T07:00",
  );
  diary["check"] = await record(
    meterCheckEntry,
    { ...buffers, asFound1: "7.02", asFound2: "10.31", mv1: "0", mv2: "-171.5" },
    "2027-03-02T08:00",
  );
  diary["item"] = await record(
    itemEntry,
    {
      claim: "D-0427",
      item: "lamp",
      quantity: "1",
      route: "hand",
      outcome: "restored",
      restoreCost: "55",
      replacementValue: "100",
    },
    "2027-03-02T09:00",
  );
  diary["top-up to the limit"] = await record(
    additionEntry,
    { amount: "0.3", purpose: "top-up", account: "claims", phBefore: "11.36" },
    "2027-03-02T10:00",
  );
  diary["second bath"] = await record(
    chargeEntry,
    {
      bath: "B-T2",
      tank: "T2",
      water: "SOFT",
      concentrate: "CN-1",
      strength: "1+28",
      dropAllowed: "",
      opened: "2027-03-02T11:00",
      waterAmount: "15",
      concentrateAmount: "0.5",
      concentrateAt: "2027-03-02T11:30",
    },
    "2027-03-02T11:30",
  );
  diary["change-out"] = await record(
    changeOutEntry,
    { closeReason: "job done", closed: "2027-03-04T06:50" },
    "2027-03-04T06:50",
  );
  diary["release"] = await record(
    releaseEntry,
    {
      volume: "120",
      ph: "11.2",
      temperature: "77",
      alkalinity: "13.65 meq/L",
      acid: "citric",
      target: "7.8",
      stage1: "1",
      phAfter1: "8.2",
    },
    "2027-03-04T08:00",
  );
}, 300_000);

describe("a shop whose every default differs from the built-in one", () => {
  test("differs in every field of Job and Shop that has one", () => {
    const preset = [jobSheet, shopSheet]
      .flatMap((sheet) => sheet.fields)
      .filter(({ initial }) => initial !== undefined);
    expect(preset.length).toBeGreaterThan(14);
    for (const { id, initial, limits, choices } of preset) {
      expect(ownDefaults[id], id).toBeTypeOf(typeof initial?.US);
      expect(ownDefaults[id], id).not.toBe(initial?.US);
      expect(limits ?? choices, id).toBeDefined();
    }
  });

  test("a baseline: median, trigger and drop are those of the Baths sheet", () => {
    const recorded = on("baseline");
    expect(number(recorded, "baths", "dropUsed", bath)).toBe(0.3);
    expect(recorded.text).toContain(
      `Baseline ${ph(number(recorded, "baths", "baseline", bath))} at 77 °F: the median of 3.`,
    );
    expect(recorded.text).toContain(
      `Top-up due at ${ph(number(recorded, "baths", "trigger", bath))} or under (drop allowed 0.30).`,
    );
  });

  test("readings that join a baseline: the median is that of all that count", () => {
    const recorded = on("joining baseline");
    expect(number(recorded, "baths", "baselineReadings", bath)).toBe(6);
    expect(recorded.text).toContain(
      `Baseline ${ph(number(recorded, "baths", "baseline", bath))} at 77 °F: the median of 6, 3 of them in the log already.`,
    );
    expect(recorded.text).toContain(`Top-up due at ${ph(number(recorded, "baths", "trigger", bath))} or under`);
  });

  const words: Readonly<Record<string, RegExp>> = {
    hold: /^Hold: /m,
    near: /^Near the trigger/m,
    "top up": /^Top up: /m,
    "re-read cooled": /^Re-read cooled: /m,
  };

  test.each(["hold", "hot", "due", "late"])(
    "a reading (%s): verdict and trigger are those of the Readings sheet",
    (name) => {
      const recorded = on(name);
      const verdict = String(shown(recorded, "readings", "verdict"));
      expect(Object.keys(words)).toContain(verdict);
      for (const [word, sentence] of Object.entries(words))
        expect(sentence.test(recorded.text), `${word} while the sheet says ${verdict}`).toBe(word === verdict);
      expect(recorded.text).toContain(
        `Trigger at ${String(shown(recorded, "readings", "temperature"))} °F: ${ph(number(recorded, "readings", "trigger"))}.`,
      );
    },
  );

  test("a reading between the shop's drop and the usual one asks for a top-up: first addition and range are the sheet's", () => {
    const recorded = on("due");
    expect(shown(recorded, "readings", "verdict")).toBe("top up");
    // By the built-in drop of 0.5 it would hold.
    expect(number(recorded, "readings", "ph")).toBeGreaterThan(number(recorded, "baths", "baseline", bath) - 0.4);
    expect(recorded.text).toContain(
      `First addition: ${amount(number(recorded, "readings", "firstAddition"))} gal, mix, read again.`,
    );
    const [low, best, high] = (["topUpLow", "topUpBest", "topUpHigh"] as const).map((id) =>
      figure(number(recorded, "readings", id), 1, 1),
    );
    expect(recorded.text).toContain(
      `In all it may need ${String(low)} to ${String(high)} gal, most likely ${String(best)}.`,
    );
    expect(number(recorded, "readings", "firstAddition")).toBeLessThanOrEqual(
      0.2 * number(recorded, "baths", "openingDose", bath) + 1e-9,
    );
  });

  test.each(["short", "nearly", "corrective"])(
    "an addition (%s): recovery, further addition and share are those of the sheets",
    (name) => {
      const recorded = on(name);
      const recovery = shown(recorded, "additions", "recovery");
      expect(/^Short of the baseline/m.test(recorded.text)).toBe(recovery === "short");
      expect(/^Recovered: /m.test(recorded.text)).toBe(recovery === "recovered");
      if (recovery === "short")
        expect(recorded.text).toContain(
          `Add ${amount(number(recorded, "additions", "nextAddition"))} gal, mix, read again.`,
        );
      expect(recorded.text).toContain(
        `come to ${percent(number(recorded, "baths", "topUpShare", bath))} of the opening dose`,
      );
    },
  );

  test("a bath that the built-in tolerance would call recovered is short, and gets an amount", () => {
    expect(shown(on("nearly"), "additions", "recovery")).toBe("short");
    expect(number(on("nearly"), "additions", "nextAddition")).toBeGreaterThan(0);
  });

  test("a reading after a top-up: what it fills in gets the same word and amount from the sheet", () => {
    const recorded = on("after");
    expect(recorded.filled.meaning.fills).toEqual([{ table: "additions", key: "A007", cells: { phAfter: 11.38 } }]);
    expect(shown(recorded, "additions", "recovery")).toBe("short");
    expect(recorded.text).toContain(
      `Short of the baseline ${ph(number(recorded, "baths", "baseline", bath))}. Add ${amount(number(recorded, "additions", "nextAddition"))} gal`,
    );
  });

  test("a load counts by the shop's weights, as on the Loads sheet", () => {
    const recorded = on("load");
    expect(number(recorded, "loads", "weighted")).toBe(14);
    expect(recorded.text).toContain(
      `Counts ${figure(number(recorded, "loads", "counted"), 2)} by baskets, ${figure(number(recorded, "loads", "weighted"), 2)} by soil`,
    );
  });

  test("care: what a drain takes along and how far a rinse is above the water are the Care sheet's", () => {
    expect(on("drain").text).toContain(
      `It takes about ${amount(number(on("drain"), "care", "concentrateLost"))} gal of concentrate along.`,
    );
    expect(on("drain").text).toContain(
      `${amount(number(on("drain"), "baths", "drained", bath))} gal taken out of this bath in all.`,
    );
    expect(on("rinse").text).toContain(
      `That is ${ph(number(on("rinse"), "care", "aboveWater"))} above the bath's water.`,
    );
  });

  test("a level make-up divides as on the Additions sheet", () => {
    const recorded = on("make-up");
    const [evaporated, carriedOut, due] = (["evaporated", "carriedOut", "concentrateDue"] as const).map((id) =>
      amount(number(recorded, "additions", id)),
    );
    expect(recorded.text).toContain(
      `Lost since the last water: ${String(evaporated)} gal evaporated, ${String(carriedOut)} gal carried out as solution`,
    );
    expect(recorded.text).toContain(`${String(due)} gal (`);
    expect(recorded.text).toContain(`${figure(number(recorded, "additions", "hardnessCarried"), 1)} g of hardness`);
  });

  test("a meter check: verdict and limits are the shop's, and the readings that flip are those of the sheet", () => {
    const recorded = on("check");
    expect(shown(recorded, "meterChecks", "verdict")).toBe("as found out of limits");
    expect(recorded.text).toContain("As found out of limits (limits: 0.02 pH, slope 97 to 103%).");
    expect(recorded.text).toContain(
      `Slope ${figure(number(recorded, "meterChecks", "slope"), 1, 1)}% of the theoretical.`,
    );
    expect(recorded.text).toContain(
      `Reaches back to ${String(number(recorded, "meterChecks", "readingsReached"))} readings`,
    );
    const flips = recorded.text.split("\n").filter((line) => / becomes "/.test(line));
    const flagged = recorded.after.rows.readings.filter(({ cells }) =>
      String(cells.flag ?? "").startsWith("verdict changed"),
    );
    expect(flips.map((line) => /^Reading (\S+) of/.exec(line)?.[1])).toEqual(flagged.map(({ cells }) => cells.id));
    for (const [at, { cells }] of flagged.entries())
      expect(flips[at]).toContain(`"${String(cells.verdictAsRead)}" becomes "${String(cells.verdict)}"`);
    expect(flagged.length).toBeGreaterThan(0);
    const moved = recorded.before.rows.baths[0]?.cells.baseline;
    expect(recorded.text).toContain(
      `Baseline of ${bath}: its readings then give ${ph(number(recorded, "baths", "baselineGiven", bath))}; ${ph(Number(moved))} is written down.`,
    );
  });

  test("the first check, within 0.05 but by the shop's own 0.02, and a slope in the shop's own limits", () => {
    expect(shown(on("first check"), "meterChecks", "verdict")).toBe("slope out of limits");
    expect(on("first check").text).toMatch(/^Slope out of limits \(limits: 0\.02 pH, slope 97 to 103%\)/m);
  });

  test("an item is held to the share agreed, as on the Items sheet", () => {
    expect(shown(on("item"), "items", "economic")).toBe("within the share");
    expect(on("item").text).toContain("within the agreed 60%");
    expect(on("item").text).toContain(`Counts as ${String(shown(on("item"), "items", "standing"))}.`);
  });

  test("a charge plans the Baths sheet's dose, and a drop left blank is the shop's", () => {
    const recorded = on("second bath");
    expect(recorded.text).toContain(
      `Planned dose in all: ${amount(number(recorded, "baths", "plannedDose", "B-T2"))} gal`,
    );
    expect(number(recorded, "baths", "dropUsed", "B-T2")).toBe(0.3);
    expect(fill(chargeEntry, recorded.after, { tank: "T2", water: "SOFT" }).values["dropAllowed"]).toBe("0.30");
  });

  test("a change-out says what the Baths sheet says of top-ups and age, on the very day as well", () => {
    const recorded = on("change-out");
    expect(recorded.text).toMatch(/^Top-ups have reached the limit: consider a change-out\.$/m);
    expect(String(shown(recorded, "baths", "changeOut", bath))).toBe(
      "top-ups have reached the limit: consider a change-out",
    );
    expect(recorded.text).toContain(
      `Top-ups: ${percent(number(recorded, "baths", "topUpShare", bath))} of the opening dose; the shop's limit is 25%.`,
    );
    // Closed on the hour after three days, the limit: not yet over it.
    const tone = (closed: string): string | undefined =>
      fill(changeOutEntry, recorded.before, { bath, closeReason: "job done", closed }, closed).meaning.findings.find(
        ({ text }) => text.startsWith("Open for"),
      )?.tone;
    expect(number(recorded, "baths", "daysOpen", bath)).toBe(3);
    expect(tone("2027-03-04T06:50")).toBe("plain");
    expect(tone("2027-03-04T08:00")).toBe("watch");
  });

  test("a release is held to the shop's own limits, and its acid is the Release sheet's", () => {
    const recorded = on("release");
    const state = String(shown(recorded, "releases", "state"));
    expect(state).toBe("not released: pH above the limits");
    expect(recorded.text).toContain("Not released: pH above the limits. Limits: pH 7.5 to 8.0, P-77.");
    expect(recorded.text).toContain(`Acid needed: ${amount(number(recorded, "releases", "acidNeeded"))} lb of citric`);
  });

  test("a meter is late from the day after the Meter sheet's date on", () => {
    const { after } = on("check");
    const due = number(on("check"), "meterChecks", "due");
    expect(due).toBe(moment("2027-03-04T00:00"));
    const doubt = (when: string): string =>
      asked(
        fill(readingEntry, after, { bath, when, ph: "11.3", temperature: "77", meter: "M-1", purpose: "check" }, when),
      );
    expect(doubt("2027-03-04T23:00")).not.toContain("was last checked");
    expect(doubt("2027-03-05T07:00")).toContain("was last checked 3 days ago");
  });

  test("the sketches take the bath's drop, the shop's first addition and what it lets its meter be off", () => {
    const { after } = on("due");
    const context = { log: after, system: "US", bath } as const;
    const topUp = topUpSketch.work(topUpSketch.proposals(context), context);
    const texts = topUp.findings.map(({ text }) => text).join("\n");
    expect(texts).toContain(`First addition ${amount(0.2 * number(on("due"), "baths", "openingDose", bath))} gal`);
    expect(texts).toContain(
      `Top-up due at ${ph(number(on("due"), "baths", "trigger", bath))} or under (drop allowed 0.30).`,
    );
    expect(topUp.formula).toMatch(/,0\.2,0\.02\)$/);
    const values = { ...temperatureSketch.proposals(context), from: "81" };
    expect(temperatureSketch.work(values, context).findings.map(({ text }) => text)).toContain(
      "Against the baseline: top up. The drop allowed is 0.30.",
    );
    const noBath = { log: after, system: "US", bath: undefined } as const;
    expect(
      topUpSketch
        .work(topUpSketch.proposals(context), noBath)
        .findings.map(({ text }) => text)
        .join("\n"),
    ).toContain("drop allowed 0.30");
  });
});
