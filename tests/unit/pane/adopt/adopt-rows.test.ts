import fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";

import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import type { AdoptAnswers } from "../../../../src/pane/adopt/adopt-answers.ts";
import { adoptKinds, columnsOf, kindOf, ownKeys } from "../../../../src/pane/adopt/adopt-kinds.ts";
import { type Adoption, adoptRows } from "../../../../src/pane/adopt/adopt-rows.ts";
import { proposeColumns } from "../../../../src/pane/adopt/propose-columns.ts";
import { isAnswered, questionsOn } from "../../../../src/pane/adopt/questions.ts";
import { proposeHeadingRow, tableBelow } from "../../../../src/pane/adopt/sheet-table.ts";
import { runs } from "../../../setup/random-runs.ts";
import { demoLog, moment } from "../../excel/log/demo-log.ts";
import { blankAnswers, readingOf, sheetOf } from "./sheet-of.ts";

let log: LogSnapshot;
const now = moment("2027-03-08T12:00");
const march5 = moment("2027-03-05T00:00");

beforeAll(async () => {
  log = await demoLog("2027-03-02T23:00");
});

const headings = ["Date", "Time", "Tank", "pH", "Temp F"];
const answers: AdoptAnswers = {
  ...blankAnswers,
  columns: { when: 0, time: 1, bath: 2, ph: 3, temperature: 4 },
  same: { purpose: "check" },
  names: { bath: { t1: { use: "B-T1-0301" } } },
};

function adopt(rows: readonly (readonly unknown[])[], change: Partial<AdoptAnswers> = {}, heads = headings): Adoption {
  return adoptRows(sheetOf(heads, ...rows), { ...answers, ...change }, log, "US", now);
}

const why = (row: readonly unknown[], change: Partial<AdoptAnswers> = {}, heads = headings): string =>
  adopt([row], change, heads).listed[0]?.why.join("; ") ?? "taken";

describe("rows of a shop's own sheet", () => {
  test("become readings of the log, with numbers of its own and in its units", () => {
    const { taken, listed, before } = adopt([[march5, 0.5, "T1", 11.21, 77]]);
    expect(taken).toEqual([
      {
        number: 2,
        cells: { id: "R011", bath: "B-T1-0301", when: march5 + 0.5, purpose: "check", ph: 11.21, temperature: 77 },
      },
    ]);
    expect([listed, before]).toEqual([[], []]);
  });

  test("are read where numbers are text: a decimal comma, blanks, a unit of its own", () => {
    const [one, two, three] = adopt([
      [march5, "9:00", "T1", "11,2", "25 C"],
      [march5, "10:00", "t1", "11.3 ", " 77"],
      [march5, "11:00 AM", "T1", "11.25", "77 °F"],
    ]).taken.map(({ cells }) => cells);
    expect([one?.["ph"], one?.["temperature"]]).toEqual([11.2, 77]);
    expect([two?.["ph"], two?.["temperature"]]).toEqual([11.3, 77]);
    expect(three?.["temperature"]).toBe(77);
  });

  test.each([
    ["a blank pH, which is not 0", [march5, 0.5, "T1", "", 77], /pH as read: blank/],
    ["a pH of 0", [march5, 0.5, "T1", 0, 77], /pH as read: "0".*out of range/],
    ["a pH of 15", [march5, 0.5, "T1", 15, 77], /pH as read: "15".*Allowed: 0\.1 to 14\.5/],
    ["about 11", [march5, 0.5, "T1", "~11", 77], /"~11" is not a number/],
    ["a comma that can be either", [march5, 0.5, "T1", 11, "1,077"], /can be .*1\.077|1\.077/],
    ["an error", [march5, 0.5, "T1", "#DIV/0!", 77], /pH as read shows the error #DIV\/0!/],
    ["a date as a word", ["last Friday", 0.5, "T1", 11, 77], /the date "last Friday" cannot be read/],
    ["no time", [march5, "", "T1", 11, 77], /the time is blank/],
    ["a bath that is not in the log", [march5, 0.5, "T9", 11, 77], /Bath: "T9" is not in the log/],
    ["a time to come", [march5 + 30, 0.5, "T1", 11, 77], /still to come/],
    ["a time before the bath", [march5 - 30, 0.5, "T1", 11, 77], /before the bath B-T1-0301 was opened/],
    [
      "everything wrong at once",
      ["x", "", "T9", 15, "warm"],
      /When.*Bath.*pH as read.*Sample|Bath.*When.*pH as read.*Sample/,
    ],
  ])("are listed with the reason: %s", (_what, row, reason) => {
    expect(why(row)).toMatch(reason);
  });

  test("are listed where 3/1/2027 can be two days, and taken once the person says which", () => {
    const row = ["3/5/2027", "9:00", "T1", 11.2, 77];
    expect(why(row)).toMatch(/can be read two ways/);
    expect(adopt([row], { order: "month first" }).taken[0]?.cells.when).toBeCloseTo(march5 + 9 / 24, 9);
  });

  test("need a unit where the heading names none", () => {
    const heads = ["Date", "Time", "Tank", "pH", "Temp"];
    const row = [march5, 0.5, "T1", 11.2, 25];
    expect(why(row, {}, heads)).toMatch(/the unit of "25" is not known/);
    expect(questionsOn(sheetOf(heads, row), answers, log, "US").units.map(({ column }) => column.id)).toEqual([
      "temperature",
    ]);
    expect(adopt([row], { units: { temperature: "°C" } }, heads).taken[0]?.cells.temperature).toBe(77);
  });

  test("open the baths and claims that the person wants new, once each, at the first of their rows", () => {
    const names = { bath: { "tank two": "new" } } as const;
    const { taken, before } = adopt(
      [
        [march5 + 1, 0.5, "Tank two", 11.2, 77],
        [march5, 0.5, "Tank two", 11.4, 77],
      ],
      { names },
    );
    expect(taken).toHaveLength(2);
    expect(before).toEqual([
      {
        table: "baths",
        row: { bath: "Tank two", tank: "T1", water: "RO", concentrate: "CN-1", strength: "1+28", opened: march5 + 0.5 },
      },
    ]);
  });

  test("that are in the log already are not taken again", () => {
    const [reading] = log.rows.readings;
    const { when, ph, temperature, purpose } = reading?.cells ?? {};
    expect(
      why([Math.floor(Number(when)), Number(when) % 1, "T1", ph, temperature], { same: { purpose: String(purpose) } }),
    ).toMatch(/in the log already/);
  });

  test("of items keep their tags, none of them twice", () => {
    const heads = ["Tag", "Claim", "Description", "Qty"];
    const items: AdoptAnswers = { ...blankAnswers, table: "items", columns: proposeColumns(heads, kindOf("items")) };
    const { taken, listed } = adoptRows(
      sheetOf(heads, ["X-1", "D-0427", "plate", 4], ["X-1", "D-0427", "cup", 2], ["", "D-0427", "=1+1", "2"]),
      items,
      log,
      "US",
      now,
    );
    expect(taken.map(({ cells }) => [cells.id, cells.item, cells.quantity])).toEqual([
      ["X-1", "plate", 4],
      [expect.stringMatching(/\d$/), "=1+1", 2],
    ]);
    expect(listed).toEqual([{ number: 3, why: ["the tag X-1 is in use already"] }]);
  });
});

describe("what is proposed", () => {
  test("the row of headings below a title", () => {
    expect(proposeHeadingRow([["Tank log of spring"], [], headings, [march5, 0.5, "T1", 11.2, 77]])).toBe(2);
    expect(
      tableBelow(readingOf([["title"], headings, [], [march5, 0.5, "T1", 11.2, 77]]), 1).rows.map(
        ({ number }) => number,
      ),
    ).toEqual([4]);
  });

  test("columns by similar words", () => {
    expect(proposeColumns(headings, kindOf("readings"))).toEqual({ when: 0, time: 1, bath: 2, ph: 3, temperature: 4 });
    expect(
      proposeColumns(["When", "Bath", "Gallons added", "pH before", "pH after", "Who", "Remarks"], kindOf("additions")),
    ).toEqual({
      when: 0,
      bath: 1,
      amount: 2,
      phBefore: 3,
      phAfter: 4,
      initials: 5,
      note: 6,
    });
    expect(proposeColumns(["Date and time", "pH", "sample °C"], kindOf("readings"))).toEqual({
      when: 0,
      ph: 1,
      temperature: 2,
    });
  });

  test("what is still open is named", () => {
    const open = questionsOn(
      sheetOf(["Date", "pH"], ["3/4/2027", 11.2]),
      { ...blankAnswers, columns: { when: 0, ph: 1 } },
      log,
      "US",
    );
    expect(open.unfilled.map(({ id }) => id)).toEqual(["bath", "purpose"]);
    expect([open.order, open.timeMissing]).toEqual([{ proposed: undefined }, true]);
    expect(isAnswered(open, blankAnswers)).toBe(false);
  });
});

const cell = fc.oneof(
  fc.constantFrom(
    "",
    " ",
    0,
    7,
    11.2,
    77,
    "11,2",
    "~11",
    "11.3 ",
    "3/1/2027",
    "3/14/2027",
    "2027-03-05 09:00",
    46450.4,
    "T1",
    "B-T1-0301",
    "#N/A",
    "#REF!",
    "=1+1",
    "check",
    "C",
    true,
    false,
    Number.NaN,
    Infinity,
    1e300,
  ),
  fc.string(),
  fc.double(),
  fc.integer(),
);

test("any sheet, read in any way, throws nothing; each of its rows is taken or listed, and no taken cell is beyond the log's limits", () => {
  fc.assert(
    fc.property(
      fc.array(fc.array(cell, { maxLength: 8 }), { maxLength: 12 }),
      fc.nat(11),
      fc.constantFrom(...adoptKinds),
      fc.dictionary(
        fc.constantFrom(
          "when",
          "time",
          "unit",
          "ph2",
          "temperature2",
          "amount2",
          "bath",
          "claim",
          "ph",
          "temperature",
          "amount",
          "quantity",
          "item",
          "id",
          "minutes",
          "surface",
          "result",
        ),
        fc.nat(7),
      ),
      fc.constantFrom(undefined, "month first" as const, "day first" as const),
      fc.constantFrom("US" as const, "metric" as const, "imperial" as const),
      (values, headingRow, kind, mapped, order, system) => {
        const sheet = tableBelow(readingOf(values), Math.min(proposeHeadingRow(values) + headingRow, values.length));
        const some: AdoptAnswers = {
          ...answers,
          table: kind.table,
          columns: { ...proposeColumns(sheet.headings, kind), ...mapped },
          units: { temperature: "°C", amount: "mL", minutes: "h" },
          order,
          usualTime: "12:00",
          usualTime2: "16:00",
          asAbove: { when: true, bath: true },
          unitWords: { x: "mL" },
          same: { purpose: "check", kind: "water" },
        };
        questionsOn(sheet, some, log, system);
        const { taken, listed } = adoptRows(sheet, some, log, system, now);
        const numbers = [...taken, ...listed].map(({ number }) => number).sort((a, b) => a - b);
        // A row can hold two events: both, or one and the reason of the other.
        expect([...new Set(numbers)]).toEqual(sheet.rows.map(({ number }) => number));
        for (const { why: reasons } of listed) expect(reasons.length).toBeGreaterThan(0);
        for (const { cells } of taken) {
          expect(cells[ownKeys[kind.table]?.id ?? "id"]).toBeDefined();
          for (const { id, limits, needed } of columnsOf(kind)) {
            const value = cells[id];
            if (needed) expect(value).toBeDefined();
            if (typeof value !== "number") continue;
            expect(Number.isFinite(value)).toBe(true);
            const { low, high } = limits?.[system] ?? { low: -Infinity, high: Infinity };
            expect(value).toBeGreaterThanOrEqual(low);
            expect(value).toBeLessThanOrEqual(high);
          }
        }
      },
    ),
    runs(300),
  );
});
