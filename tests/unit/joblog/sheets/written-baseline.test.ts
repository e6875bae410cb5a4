import { describe, expect, it } from "vitest";

import type { CellInput, WorksheetFunction } from "../../../../functions/define-function.ts";
import { evaluate } from "../../../../functions/evaluate.ts";
import { makeUp } from "../../../../functions/top-up/make-up.ts";
import { nextAdd } from "../../../../functions/top-up/next-add.ts";
import { topUpRange } from "../../../../functions/top-up/top-up-range.ts";
import type { LogRow } from "../../../../src/joblog/model/definition.ts";
import { daysBaseline, daysUnwritten, firstTwoDays } from "../../../demo/days/demo-week.ts";
import { demoBath as bath, moment } from "../../../demo/demo-week-times.ts";
import { asTyped, demoRowsAnd, demoWith, type WorkedLog, workedLog } from "./worked-log.ts";

const { readings = [], baths = [], benchTests = [] } = firstTwoDays.rows;

const writtenDown = (cells: LogRow<"baths"> = {}): readonly LogRow<"baths">[] =>
  baths.map((row) => ({ ...row, ...daysBaseline, ...cells }));

const stands = (log: WorkedLog): readonly unknown[] =>
  (["baselineState", "state"] as const).map((column) => log.cell("baths", bath, column));

const answer = (of: WorksheetFunction, ...cells: readonly CellInput[]): unknown => evaluate(of, cells);

/** The three baseline readings of the demo days with one of them noted otherwise. */
const noted = (cells: LogRow<"readings">): readonly LogRow<"readings">[] =>
  readings.map((row, index) => (index === 0 ? { ...row, ...cells } : row));

describe("a baseline that nobody wrote down", () => {
  it("is shown as what the readings give, asks to be written down, and judges nothing", async () => {
    const log = await asTyped(daysUnwritten);
    expect(log.cell("baths", bath, "baselineGiven")).toBeCloseTo(11.42, 9);
    expect(stands(log)).toEqual(["to be written down", "baseline"]);
    expect(log.cell("baths", bath, "trigger")).toBe("");
    expect(log.cell("readings", "R004", "verdict")).toBe("no baseline yet");
    expect(log.cell("readings", "R004", "topUpBest")).toBe("");
  });
});

describe("a baseline written down", () => {
  it("stands where its readings give it, to the last figure that is shown", async () => {
    expect(stands(await asTyped(demoWith({ baths: writtenDown() })))).toEqual(["set", "in use"]);
    expect(
      stands(await asTyped(demoWith({ baths: writtenDown({ baseline: 11.425, baselineTemperature: 76.8 }) }))),
    ).toEqual(["set", "in use"]);
  });

  it.each<{ readonly what: string; readonly rows: Parameters<typeof demoWith>[0]; readonly says: string }>([
    { what: "a pH noted otherwise", rows: { readings: noted({ ph: 11.5 }) }, says: "readings give 11.43" },
    {
      what: "another baseline typed over it",
      rows: { baths: writtenDown({ baseline: 11.52 }) },
      says: "readings give 11.42",
    },
    {
      what: "a temperature noted otherwise",
      rows: { readings: noted({ temperature: 78.5 }) },
      says: "readings were at 77.4",
    },
    {
      what: "a temperature far from the others",
      rows: { readings: noted({ temperature: 110 }) },
      says: "temperatures differ",
    },
    { what: "one reading taken away", rows: { readings: readings.slice(1) }, says: "2 of 3 readings" },
    { what: "no reading at all", rows: { readings: [] }, says: "no readings give it" },
    {
      what: "a bench test that had not passed",
      rows: { benchTests: benchTests.map((test) => ({ ...test, result: "fail" })) },
      says: "no readings give it",
    },
    {
      what: "no temperature",
      rows: { baths: writtenDown({ baselineTemperature: undefined }) },
      says: "its temperature is missing",
    },
  ])("says what contradicts it: $what", async ({ rows, says }) => {
    const log = await asTyped(demoWith({ baths: writtenDown(), ...rows }));
    expect(log.cell("baths", bath, "baselineState")).toBe(says);
  });

  it("without its temperature judges nothing", async () => {
    const log = await asTyped(demoWith({ baths: writtenDown({ baselineTemperature: undefined }) }));
    expect(log.cell("readings", "R004", "verdict")).toBe("no baseline yet");
    expect(log.cell("baths", bath, "state")).toBe("baseline");
  });

  it("is of another bath once more went in as opening, until it is taken again", async () => {
    const opening = {
      id: "A009",
      bath,
      when: moment(1, "18:00"),
      kind: "concentrate",
      purpose: "opening",
      amount: 0.5,
      account: "claims",
    };
    const log = await asTyped(demoWith({ baths: writtenDown(), additions: demoRowsAnd("additions", opening) }));
    expect(stands(log)).toEqual(["older than the opening dose", "bench test"]);
  });

  it("judges as read by itself where nobody noted what the meter had shown", async () => {
    const log = await asTyped(demoWith({ baths: writtenDown({ baselineAsRead: undefined }) }));
    expect(log.cell("readings", "R005", "verdictAsRead")).toBe(log.cell("readings", "R005", "verdict"));
  });
});

describe("figures that are put together in two cells, so that an entry elsewhere leaves the first alone", () => {
  const due = {
    id: "R015",
    bath,
    when: moment(3, "08:15"),
    purpose: "check",
    ph: 10.83,
    temperature: 78.8,
    meter: "M-1",
  };
  const short = {
    id: "A007",
    bath,
    when: moment(3, "08:30"),
    kind: "concentrate",
    purpose: "top-up",
    amount: 1.39,
    account: "claims",
    phBefore: 10.83,
    phAfter: 11.28,
  };

  it("a top-up is what TOPUPRANGE says of the opening dose", async () => {
    const log = await workedLog(demoWith({ readings: demoRowsAnd("readings", due) }));
    const of = (column: "builderUsed" | "alkalinityUsed" | "openingDose" | "baseline"): CellInput =>
      log.cell("baths", bath, column) as CellInput;
    const row = answer(
      topUpRange,
      of("openingDose"),
      of("baseline"),
      10.83,
      of("builderUsed"),
      78.8,
      of("alkalinityUsed"),
      log.field("houseShare") as CellInput,
      log.field("meterLimit") as CellInput,
      null,
      null,
      "US",
    );
    const shown = (["topUpLow", "topUpBest", "topUpHigh", "firstAddition"] as const).map((column) =>
      Number(log.cell("readings", "R015", column)),
    );
    expect([shown.map((value) => value.toFixed(9))]).toEqual(
      (row as number[][]).map((line) => line.map((value) => value.toFixed(9))),
    );
  });

  it.each([11.28, 11.13])("a further addition after %d is what NEXTADD says with the opening dose", async (phAfter) => {
    const log = await workedLog(
      demoWith({ readings: demoRowsAnd("readings", due), additions: demoRowsAnd("additions", { ...short, phAfter }) }),
    );
    const next = answer(
      nextAdd,
      1.39,
      10.83,
      phAfter,
      log.cell("baths", bath, "baseline") as CellInput,
      log.cell("baths", bath, "builderUsed") as CellInput,
      log.cell("baths", bath, "baselineTemperature") as CellInput,
      log.cell("baths", bath, "alkalinityUsed") as CellInput,
      log.field("tolerance") as CellInput,
      log.cell("baths", bath, "openingDose") as CellInput,
      log.field("houseShare") as CellInput,
      log.field("meterLimit") as CellInput,
      null,
      null,
      "US",
    );
    expect(log.cell("additions", "A007", "nextAddition")).toBeCloseTo(Number(next), 9);
  });

  it.each([0, 6, 24])("a make-up after %d loads is what MAKEUP says", async (count) => {
    const water = {
      id: "A008",
      bath,
      when: moment(1, "18:00"),
      kind: "water",
      purpose: "make-up",
      amount: 4,
      water: "RO",
      account: "claims",
      levelBefore: 24.1,
      levelAfter: 25,
    };
    const loads = Array.from({ length: count }, (_, index) => ({
      id: `L${String(index)}`,
      bath,
      claim: "D-0427",
      when: moment(1, "16:00"),
      baskets: 1,
    }));
    const tanks = (firstTwoDays.rows.tanks ?? []).map((tank) => ({ ...tank, dragOut: 0.2 }));
    const log = await workedLog(demoWith({ additions: demoRowsAnd("additions", water), loads, tanks }));
    const [levelLoss, strength] = (["levelLoss", "strength"] as const).map((column) =>
      Number(log.cell("additions", "A008", column)),
    );
    const shown = (["evaporated", "carriedOut", "concentrateDue"] as const).map((column) =>
      Number(log.cell("additions", "A008", column)).toFixed(9),
    );
    const [parts] = answer(makeUp, levelLoss ?? 0, count, 0.2, 0, strength ?? 0) as number[][];
    expect(levelLoss).toBeGreaterThan(0);
    expect(shown).toEqual(parts?.map((part) => part.toFixed(9)));
  });
});
