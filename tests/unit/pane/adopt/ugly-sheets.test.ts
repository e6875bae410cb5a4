/** Sheets as shops keep them, invented, from the first row down: what is proposed, what is asked, what each row becomes. */
import { beforeAll, describe, expect, test } from "vitest";

import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import type { AdoptAnswers } from "../../../../src/pane/adopt/adopt-answers.ts";
import { type AdoptTable, kindOf } from "../../../../src/pane/adopt/adopt-kinds.ts";
import { type Adoption, adoptRows } from "../../../../src/pane/adopt/adopt-rows.ts";
import type { DoubtAnswers } from "../../../../src/pane/adopt/doubt-kinds.ts";
import { proposeColumns } from "../../../../src/pane/adopt/propose-columns.ts";
import { type Questions, questionsOn } from "../../../../src/pane/adopt/questions.ts";
import { proposeHeadingRow, type SheetTable, tableBelow } from "../../../../src/pane/adopt/sheet-table.ts";
import { demoLog, moment } from "../../excel/log/demo-log.ts";
import { blankAnswers, readingOf } from "./sheet-of.ts";

let log: LogSnapshot;
const now = moment("2027-03-08T12:00");
const march2 = moment("2027-03-02T00:00");
const march3 = march2 + 1;

beforeAll(async () => {
  log = await demoLog("2027-03-02T23:00");
});

interface Adopting {
  readonly sheet: SheetTable;
  readonly open: Questions;
  readonly answers: AdoptAnswers;
  readonly result: Adoption;
}

/** As the pane goes about it: headings found, columns proposed, then what the person changes. */
function adopt(
  values: readonly (readonly unknown[])[],
  table: AdoptTable,
  change: Partial<AdoptAnswers> = {},
  doubts: DoubtAnswers = {},
): Adopting {
  const sheet = tableBelow(readingOf(values), proposeHeadingRow(values));
  const answers: AdoptAnswers = {
    ...blankAnswers,
    table,
    columns: proposeColumns(sheet.headings, kindOf(table)),
    same: table === "readings" ? { purpose: "check", bath: "B-T1-0301" } : {},
    names: { bath: { t1: { use: "B-T1-0301" }, "tank 1": { use: "B-T1-0301" } } },
    ...change,
  };
  const open = questionsOn(sheet, answers, log, "US");
  return { sheet, open, answers, result: adoptRows(sheet, answers, log, "US", now, doubts) };
}

/** "2: taken" or "2: why not", in the order of the sheet. */
const fates = ({ result }: Adopting): readonly string[] =>
  [
    ...result.taken.map(({ number }) => [number, "taken"] as const),
    ...result.listed.map(({ number, why }) => [number, why.join("; ")] as const),
  ]
    .sort(([a], [b]) => a - b)
    .map(([number, fate]) => `${String(number)}: ${fate}`);

const cellsOf = ({ result }: Adopting, ...ids: readonly string[]): readonly (readonly unknown[])[] =>
  result.taken.map(({ cells }) => ids.map((id) => cells[id]));

const clock = (serial: unknown): string => {
  const minutes = Math.round((Number(serial) % 1) * 1440);
  return `${String(Math.floor(minutes / 60))}:${String(minutes % 60).padStart(2, "0")}`;
};

const readings = ["Date", "Time", "Tank", "pH", "Temp F"];

describe("readings", () => {
  test("under a title and a row of groups, with pH as people scribble it", () => {
    const written = ["11,2", "~11.2", "n/a", ">11", "11.2*", "11.2/11.3", 112, "-", "#N/A", "1l.2", "", 0, "11.3 "];
    const sheet = adopt(
      [
        ["Tank room, spring"],
        ["", "", "Sample", "", ""],
        readings,
        ...written.map((ph, index) => [march2, 0.9 + index / 1440, "T1", ph, 77]),
      ],
      "readings",
    );
    expect(sheet.sheet.headings).toEqual(readings);
    expect(fates(sheet)).toEqual([
      "4: taken",
      expect.stringMatching(/^5: pH as read: "~11\.2" is not a number/),
      expect.stringMatching(/^6: pH as read: "n\/a" is not a number/),
      expect.stringMatching(/^7: pH as read: ">11" is not a number/),
      expect.stringMatching(/^8: pH as read: "11\.2\*" is not a number/),
      expect.stringMatching(/^9: pH as read: "11\.2\/11\.3" is not a number/),
      expect.stringMatching(/^10: pH as read: "112" is out of range/),
      expect.stringMatching(/^11: pH as read: "-" is not a number/),
      "12: pH as read shows the error #N/A",
      expect.stringMatching(/^13: pH as read: "1l\.2" is not a number/),
      "14: pH as read: blank",
      expect.stringMatching(/^15: pH as read: "0" is out of range/),
      "16: taken",
    ]);
    expect(cellsOf(sheet, "ph")).toEqual([[11.2], [11.3]]);
  });

  test("with days that other days prove to stand first", () => {
    const values = [readings, ["1/3/2027", "22:00", "T1", 11.2, 77], ["13/2/2027", "9:00", "T1", 11.2, 77]];
    const sheet = adopt(values, "readings");
    expect(sheet.open.order).toEqual({ proposed: "day first" });
    expect(fates(sheet)[0]).toMatch(/can be read two ways/);
    const settled = adopt(values, "readings", { order: "day first" });
    expect(cellsOf(settled, "when")).toEqual([[moment("2027-03-01T22:00")]]);
    expect(fates(settled)[1]).toMatch(/before the bath B-T1-0301 was opened/);
  });

  test("with the date and the tank written once for several rows, or merged", () => {
    const values = [readings, [march2, 0.9, "T1", 11.2, 77], ["", 0.92, "", 11.21, 77], ["", 0.94, "", 11.19, 77]];
    const sheet = adopt(values, "readings", { same: { purpose: "check" } });
    expect(sheet.open.blanks).toEqual([
      { id: "when", heading: "Date", blanks: 2 },
      { id: "bath", heading: "Tank", blanks: 2 },
    ]);
    expect(fates(sheet)).toEqual(["2: taken", "3: Bath: blank; When: blank", "4: Bath: blank; When: blank"]);
    const filled = adopt(values, "readings", { same: { purpose: "check" }, asAbove: { when: true, bath: true } });
    expect(cellsOf(filled, "bath").flat()).toEqual(["B-T1-0301", "B-T1-0301", "B-T1-0301"]);
    expect(cellsOf(filled, "when").flat()).toEqual([march2 + 0.9, march2 + 0.92, march2 + 0.94]);
  });

  test("with a line of averages below dates that are filled down: it is asked about", () => {
    const values = [readings, [march2, 0.9, "T1", 11.2, 77], ["", "22:50", "Average", 11.2, 77]];
    const answers = {
      asAbove: { when: true },
      names: { bath: { t1: { use: "B-T1-0301" }, average: { use: "B-T1-0301" } } },
    };
    expect(fates(adopt(values, "readings", answers))).toEqual([
      "2: taken",
      '3: asked: "Average": is it a row of its own?',
    ]);
  });

  test("with a pH of the morning and one of the afternoon, and the units in a row beneath", () => {
    const sheet = adopt(
      [
        ["Date", "pH AM", "pH PM", "Temp AM", "Temp PM"],
        ["", "", "", "(°F)", "(°F)"],
        [march2, 11.2, 11.1, 77, 78],
        [march3, 11.2, "", 77, ""],
        [march3 + 1, "", 11.15, "", 77],
        [march3 + 2, "", "", "", ""],
      ],
      "readings",
      { usualTime: "21:30", usualTime2: "22:40" },
    );
    expect(sheet.sheet.headings.slice(3)).toEqual(["Temp AM, °F", "Temp PM, °F"]);
    expect([sheet.open.timeMissing, sheet.open.secondTimeMissing]).toEqual([true, true]);
    expect(cellsOf(sheet, "when", "ph", "temperature").map(([when, ...rest]) => [clock(when), ...rest])).toEqual([
      ["21:30", 11.2, 77],
      ["22:40", 11.1, 78],
      ["21:30", 11.2, 77],
      ["22:40", 11.15, 77],
    ]);
    expect(fates(sheet).at(-1)).toBe("6: pH as read: blank");
  });

  test("with a second pH that cannot be read: the first is taken, the second listed by its heading", () => {
    const sheet = adopt(
      [
        ["Date", "pH AM", "pH PM"],
        [march2, 11.2, "~11"],
      ],
      "readings",
      {
        usualTime: "21:30",
        usualTime2: "22:40",
      },
    );
    expect(fates(sheet)).toEqual(["2: taken", expect.stringMatching(/^2: "pH PM": pH as read: "~11" is not a number/)]);
  });

  test("with no time for the second pH: it stays out", () => {
    const sheet = adopt(
      [
        ["Date", "pH AM", "pH PM"],
        [march2, 11.2, 11.1],
      ],
      "readings",
      { usualTime: "21:30" },
    );
    expect(fates(sheet)).toEqual(["2: taken", '2: "pH PM": When: the time is blank']);
  });

  test("with the units in a second row of headings", () => {
    const sheet = adopt(
      [
        ["Date", "Time", "pH", "Temp"],
        ["mm/dd", "hh:mm", "", "°C"],
        [march2, 0.9, 11.2, 25],
      ],
      "readings",
    );
    expect(sheet.open.units).toEqual([]);
    expect(cellsOf(sheet, "temperature")).toEqual([[77]]);
    expect(sheet.result.taken.map(({ number }) => number)).toEqual([3]);
  });

  test("with a unit of temperature in each row", () => {
    const values = [
      ["Date", "Time", "pH", "Temp", "Unit"],
      [march2, 0.9, 11.2, 25, "C"],
      [march2, 0.92, 11.2, 77, "°F"],
      [march2, 0.94, 11.2, 77, ""],
    ];
    const sheet = adopt(values, "readings");
    expect(cellsOf(sheet, "temperature")).toEqual([[77], [77]]);
    expect(fates(sheet)[2]).toMatch(/the unit of "77" is not known/);
  });

  test("with times as people write them, and those with a point asked about", () => {
    const values = [
      ["Date", "Time", "pH", "Temp F"],
      ...[21.3, "22h30", 2150, "noon", "10 pm", "9"].map((time) => [march2, time, 11.2, 77]),
    ];
    const sheet = adopt(values, "readings");
    expect(sheet.open.dotted).toBe("21.3");
    expect(fates(sheet)).toEqual([
      '2: When: the time "21.3" can be read two ways',
      "3: taken",
      "4: taken",
      "5: taken",
      "6: taken",
      '7: When: the time "9" cannot be read',
    ]);
    const clocks = (dotTime: "clock" | "hours"): readonly string[] =>
      cellsOf(adopt(values, "readings", { dotTime }), "when").map(([when]) => clock(when));
    expect(clocks("clock")).toEqual(["21:30", "22:30", "21:50", "12:00", "22:00"]);
    expect(clocks("hours")[0]).toBe("21:18");
  });

  test("in degrees Celsius under a heading of Fahrenheit, and a row pasted twice", () => {
    const row = [march2, 0.9, "T1", 11.2, 53];
    const sheet = adopt([readings, row, row], "readings");
    expect(fates(sheet)).toEqual([
      expect.stringMatching(/^2: asked: 53 °F is cold for a sample/),
      expect.stringMatching(/^3: asked: 53 °F is cold for a sample.*asked: the same as row 2/),
    ]);
  });

  test("typed hot against a cold baseline, and in a serial date that lost its year", () => {
    const sheet = adopt([readings, [march2, 0.9, "T1", 10.6, 140], [61, 0.9, "T1", 11.2, 77]], "readings");
    expect(fates(sheet)).toEqual([
      expect.stringMatching(/asked: The sample, 140 °F, is 63\.2 °F from the baseline's/),
      expect.stringMatching(/before the year 2000/),
    ]);
  });
});

const additions = ["Date", "Time", "Tank", "Amount", "Unit"];

describe("additions", () => {
  test("with the unit in each row: an ounce that may be a weight is asked about", () => {
    const values = [
      additions,
      [march2, 0.9, "T1", 0.5, "gal"],
      [march2, 0.91, "T1", 6.4, "oz"],
      [march2, 0.92, "T1", 6.4, "fl oz"],
      [march2, 0.93, "T1", 7, ""],
    ];
    const same = { purpose: "top-up", kind: "concentrate" };
    const sheet = adopt(values, "additions", { same });
    expect(sheet.open.unitWords.map(({ text }) => text)).toEqual(["oz"]);
    expect(fates(sheet)).toEqual([
      "2: taken",
      '3: Amount: the unit "oz" of "6.4" is not known',
      "4: taken",
      '5: Amount: the unit of "7" is not known',
    ]);
    // 128 US fluid ounces are a US gallon: 6.4 of them are 0.05.
    expect(cellsOf(adopt(values, "additions", { same, unitWords: { oz: "US fl oz" } }), "amount")).toEqual([
      [0.5],
      [0.05],
      [0.05],
    ]);
  });

  test("with concentrate and water side by side", () => {
    const sheet = adopt(
      [
        ["Date", "Time", "Tank", "Concentrate (gal)", "Water added (gal)", "pH before", "Who"],
        [march2, 0.9, "T1", 0.5, "", 11, "A"],
        [march2, 0.91, "T1", "", 2, 11, "A"],
        [march2, 0.92, "T1", 0.25, 1, 11, "A"],
        [march2, 0.93, "T1", 0, 0, 11, "A"],
      ],
      "additions",
      { same: { purpose: "top-up" } },
    );
    expect(sheet.open.unfilled).toEqual([]);
    expect(cellsOf(sheet, "kind", "purpose", "amount", "phBefore")).toEqual([
      ["concentrate", "top-up", 0.5, 11],
      ["water", "make-up", 2, undefined],
      ["concentrate", "top-up", 0.25, 11],
      ["water", "make-up", 1, undefined],
    ]);
    expect(fates(sheet).at(-1)).toBe("5: Amount: 0 is nothing to record. Allowed: more than 0.");
  });

  test("in fluid ounces under a heading of gallons", () => {
    const sheet = adopt(
      [
        ["Date", "Time", "Tank", "Amount gal"],
        [march2, 0.9, "T1", 178],
      ],
      "additions",
      {
        same: { purpose: "top-up", kind: "concentrate" },
      },
    );
    expect(fates(sheet)).toEqual(["2: Amount: 178 gal is more than the tank holds, 121.2 gal at its fill line."]);
  });

  test("in gallons of another country, by their heading", () => {
    const sheet = adopt(
      [
        ["Date", "Time", "Tank", "Amount (imp gal)"],
        [march2, 0.9, "T1", 0.5],
      ],
      "additions",
      {
        same: { purpose: "top-up", kind: "concentrate" },
      },
    );
    // 4.54609 L and 3.785411784 L, by definition.
    expect(Number(cellsOf(sheet, "amount")[0]?.[0])).toBeCloseTo((0.5 * 4.54609) / 3.785411784, 8);
  });
});

describe("loads and pieces", () => {
  const loads = ["Date", "Time", "Tank", "Claim", "Baskets", "Soil", "Minutes"];

  test("with words beside the numbers", () => {
    const sheet = adopt(
      [
        loads,
        [march2, 0.9, "T1", "D-0427", "2 baskets", "heavy", "8 min"],
        [march2, 0.91, "T1", "D-0427", "2+1", "heavy", "8 min"],
        [march2, 0.92, "T1", "D-0427", 2, "heavy", "0.5 h"],
        [march2, 0.93, "T1", "427", 2, "heavy", 8],
      ],
      "loads",
    );
    expect(cellsOf(sheet, "baskets", "minutes")).toEqual([
      [2, 8],
      [2, 30],
    ]);
    expect(fates(sheet)[1]).toMatch(/^3: Baskets: "2\+1" is not a number/);
    expect(fates(sheet)[3]).toBe('5: Claim: "427" is not in the log');
  });

  test("with the claim written once for its baskets", () => {
    const values = [loads, [march2, 0.9, "T1", "D-0427", 2, "heavy", 8], [march2, 0.91, "T1", "", 1, "heavy", 8]];
    expect(fates(adopt(values, "loads"))).toEqual(["2: taken", "3: Claim: blank"]);
    expect(cellsOf(adopt(values, "loads", { asAbove: { claim: true } }), "claim")).toEqual([["D-0427"], ["D-0427"]]);
  });

  test.each<[readonly string[], Readonly<Record<string, number>>]>([
    [["Item", "Qty", "Room"], { item: 0, quantity: 1, room: 2 }],
    [["No.", "Item", "Qty"], { id: 0, item: 1, quantity: 2 }],
    [
      ["Item Description", "Qty", "RCV total", "Status", "Serial", "Unit"],
      { item: 0, quantity: 1, replacementValue: 2, outcome: 3, note: 4 },
    ],
    [
      ["Item #", "Description", "QTY", "RCV", "RCV Total", "Unit Cost"],
      { id: 0, item: 1, quantity: 2, replacementValue: 4 },
    ],
    [["Item", "Description", "Claim"], { id: 0, item: 1, claim: 2 }],
    [["Tag", "What", "Replacement Cost"], { id: 0, item: 1, replacementValue: 2 }],
  ])("under the headings of an inventory: %j", (headings, columns) => {
    expect(proposeColumns(headings, kindOf("items"))).toEqual(columns);
  });

  test("with money in dollars, in euros, and below 0", () => {
    const sheet = adopt(
      [
        ["No.", "Item", "Qty", "Claim", "RCV total"],
        ["1", "plate", 4, "D-0427", "$ 1,250.00"],
        ["2", "vase", 1, "D-0427", "12,50 €"],
        ["3", "cup", 2, "D-0427", "(4.00)"],
        ["4", "dish", "3 pcs", "D-0427", "18 USD"],
      ],
      "items",
    );
    expect(cellsOf(sheet, "id", "quantity", "replacementValue")).toEqual([
      ["1", 4, 1250],
      ["4", 3, 18],
    ]);
    expect(fates(sheet).slice(1, 3)).toEqual([
      '3: Replacement value: "12,50 €" is in €, and the log is kept in USD. Convert it first.',
      expect.stringMatching(/^4: Replacement value: "\(4\.00\)" is out of range/),
    ]);
  });
});

test("bench tests with ratios that became times of day", () => {
  const sheet = adopt(
    [
      ["Date", "Time", "Bath", "Surface", "Dilution", "Result"],
      [march2, 0.9, "T1", "metal", 100 / 1440, "pass"],
      [march2, 0.91, "T1", "metal", 0.025, "pass"],
      [march2, 0.92, "T1", "metal", 40, "pass"],
      [march2, 0.93, "T1", "metal", "1+40", "pass"],
    ],
    "benchTests",
  );
  expect(fates(sheet)).toEqual([
    expect.stringMatching(/^2: Strength.*time of day that Excel makes of 1:40; write “1\+40”, or “6\.94444%”/),
    expect.stringMatching(/^3: asked: 0\.025 is taken as 2\.5%.*2\.44%/),
    expect.stringMatching(/^4: Strength.*a bare number is the share/),
    "5: taken",
  ]);
});

describe("the bookkeeper's own sheets", () => {
  test("claims, each once", () => {
    const sheet = adopt(
      [
        ["Claim", "Insurer", "Adjuster", "Date of loss", "Received", "Insured"],
        ["D-0500", "Fjord", "A. Birch", "2/14/2027", march2, "R. Pine"],
        ["d-0427", "Fjord", "", "", "", ""],
        ["D-0500", "Fjord", "", "", "", ""],
        ["D-0501", "Fjord", "", "", now + 30, ""],
      ],
      "claims",
      { order: "month first" },
    );
    expect(sheet.result.taken).toEqual([
      {
        number: 2,
        cells: {
          claim: "D-0500",
          insurer: "Fjord",
          adjuster: "A. Birch",
          lossDate: moment("2027-02-14T00:00"),
          arrived: march2,
          owner: "R. Pine",
        },
      },
    ]);
    expect(fates(sheet).slice(1)).toEqual([
      "3: the claim d-0427 is in use already",
      "4: the claim D-0500 is in use already",
      "5: the date is still to come",
    ]);
    expect(sheet.result.before).toEqual([]);
  });

  test("cost lines, with kind, account and one claim alone", () => {
    const sheet = adopt(
      [
        ["Date", "Invoice", "Description", "Cost", "Kind", "Charge to", "Bath", "Claim"],
        [march2, "A-1", "Labor", "$120.00", "labor", "claims", "T1", ""],
        [march2, "A-1", "Labor", "$20.00", "labor", "claims", "T1", ""],
        [march2, "A-2", "Dump fee", "(12.50)", "disposal", "shop", "", ""],
        [march2, "A-3", "Fee", "€ 5", "other", "claims", "T1", ""],
        [march2, "A-4", "Fee", 5, "other", "claims", "", ""],
        [march2, "A-5", "Fee", 0, "other", "claims", "T1", ""],
        [march2, "A-6", "Fee", 7, "other", "claims", "", "D-0427"],
      ],
      "costLines",
    );
    expect(cellsOf(sheet, "id", "amount", "account", "kind", "claim")).toEqual([
      ["C005", 120, "claims", "labor", undefined],
      ["C006", -12.5, "shop", "disposal", undefined],
      ["C007", 7, "claims", "other", "D-0427"],
    ]);
    expect(fates(sheet).filter((fate) => !fate.endsWith("taken"))).toEqual([
      "3: asked: Document A-1 is on line 2 of this sheet already. Is this another cost of it?",
      '5: Amount: "€ 5" is in €, and the log is kept in USD. Convert it first.',
      expect.stringMatching(/^6: asked: 5\.00 on the claims' account, and neither bath nor claim/),
      "7: Amount: 0.00 is no cost. A credit is negative.",
    ]);
  });

  test("stock, with its balance opened", () => {
    const sheet = adopt(
      [
        ["Date", "Product", "Type", "Qty", "Unit", "Price", "Invoice"],
        [march2, "CN-1", "receipt", 4, "gal", "$33.90", "7"],
        [march2, "CN-1", "count", 0, "gal", "", ""],
        [march2, "CN-1", "issue", 0, "gal", "", ""],
        [march2, "CN-7", "issue", 1, "gal", "", ""],
      ],
      "stockMoves",
    );
    expect(cellsOf(sheet, "id", "when", "kind", "amount", "price")).toEqual([
      ["S001", march2, "receipt", 4, 33.9],
      ["S002", march2, "count", 0, undefined],
    ]);
    expect(fates(sheet).slice(2)).toEqual([
      "4: Amount: 0 moves nothing. Only a count can be 0.",
      '5: Concentrate: "CN-7" is not in the log',
    ]);
    expect(sheet.result.before).toEqual([{ table: "stockBalance", row: { concentrate: "CN-1" } }]);
  });

  test("meter checks, with buffers the wrong way round asked about", () => {
    const sheet = adopt(
      [
        ["Date", "Time", "Meter", "Buffer 1", "As found 1", "Buffer 2", "As found 2"],
        [march2, 0.9, "M1", 7, 7.05, 10.01, 9.97],
        [march2, 0.91, "M1", 7, 9.97, 10.01, 7.05],
        [march2, 0.92, "M1", 7, 7.05, 7, 7.05],
        [march2, 0.93, "M1", 7, "", 10.01, ""],
      ],
      "meterChecks",
    );
    expect(fates(sheet)).toEqual([
      "2: taken",
      expect.stringMatching(/^3: asked: 9\.97 in the buffer 7\.00 is off by 2\.97 pH/),
      expect.stringMatching(/^4: Buffer 2: 7\.00 is the same as buffer 1/),
      "5: As found 1: blank; As found 2: blank",
    ]);
  });

  test("baths, against their label and their own dates", () => {
    const sheet = adopt(
      [
        ["Fill", "Tank", "Water", "Concentrate", "Opened", "Strength", "Closed"],
        ["F1", "T1", "RO", "CN-1", march2 + 0.5, "1+28", march3 + 0.5],
        ["F2", "T1", "RO", "CN-1", march3 + 0.5, "1+28", march2 + 0.5],
        ["F3", "T1", "RO", "CN-1", march3 + 0.5, 100 / 1440, ""],
        ["F4", "T1", "RO", "CN-1", march3 + 0.5, "1+2", ""],
        ["f1", "T1", "RO", "CN-1", march3 + 0.5, "1+28", ""],
      ],
      "baths",
    );
    expect(fates(sheet)).toEqual([
      "2: taken",
      "3: Closed: before the bath was opened. Check both.",
      expect.stringMatching(/^4: Strength wanted: .*1:40/),
      expect.stringMatching(/^5: asked: 1\+2 is stronger than the label's highest/),
      "6: the bath f1 is in use already",
    ]);
    expect(sheet.result.taken[0]?.cells).toEqual({
      bath: "F1",
      tank: "T1",
      water: "RO",
      concentrate: "CN-1",
      opened: march2 + 0.5,
      strength: "1+28",
      closed: march3 + 0.5,
    });
  });
});
