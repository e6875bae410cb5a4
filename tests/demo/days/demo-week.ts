/**
 * Invented data: Quillhaven Contents Works, its town, claims, concentrate and readings do not exist.
 * The first two days of the made-up week as rows of a log, for tests of single sheets and forms.
 */
import type { LogContent, LogRow } from "../../../src/joblog/model/definition.ts";
import { day, demoBath, moment } from "../demo-week-times.ts";
import { demoAdditions } from "./demo-week-additions.ts";
import { demoBenchTests } from "./demo-week-bench-tests.ts";
import { demoReadings } from "./demo-week-readings.ts";

const claims: readonly LogRow<"claims">[] = [
  {
    claim: "D-0427",
    loss: "kitchen fire, row house",
    insurer: "Insurer A (invented)",
    adjuster: "adjuster 1",
    arrived: day(-5),
  },
  {
    claim: "D-0431",
    loss: "garage electrical fire",
    insurer: "Insurer B (invented)",
    adjuster: "adjuster 2",
    arrived: day(-4),
  },
  {
    claim: "D-0436",
    loss: "apartment above a shop, smoke only",
    insurer: "Insurer A (invented)",
    adjuster: "adjuster 3",
    arrived: day(0),
    note: "pre-1978 items: isolate, lead wipe",
  },
];

const tanks: readonly LogRow<"tanks">[] = [
  {
    tank: "T1",
    length: 48,
    width: 24,
    fillDepth: 25,
    displacement: 3.5,
    heater: 6,
    note: "set to 130 °F, hinged lid in two parts",
  },
  {
    tank: "T2",
    length: 24,
    width: 16,
    fillDepth: 11.5,
    displacement: 0.6,
    heater: 1.5,
    note: "set to 122 °F, lift-off lid",
  },
];

const waters: readonly LogRow<"waters">[] = [
  { water: "RO", name: "RO permeate", hardness: 7, alkalinity: 5, tds: 14, ph: 6.1, tested: day(-3), price: 0.031 },
  {
    water: "SOFT",
    name: "Softened city water",
    hardness: 9,
    alkalinity: 240,
    tds: 412,
    ph: 7.6,
    tested: day(-3),
    price: 0.009,
  },
  {
    water: "CITY",
    name: "Hard city water",
    hardness: 325,
    alkalinity: 240,
    tds: 405,
    ph: 7.6,
    tested: day(-3),
    price: 0.009,
  },
];

const concentrates: readonly LogRow<"concentrates">[] = [
  {
    concentrate: "CN-1",
    description: "Invented alkaline liquid",
    builder: "unknown",
    labelLight: "1+36",
    labelMedium: "1+28",
    labelHeavy: "1+18",
    labelHardness: 60,
    density: 1.04,
    capacity: 2.4,
    alkalinityStrength: 0.254,
    packVolume: 5,
    packPrice: 139,
    lot: "QH-2702",
    sdsOnFile: "yes",
  },
];

/** What the pane writes into the bath's row with the three readings of the first morning. */
export const daysBaseline: LogRow<"baths"> = {
  baseline: 11.42,
  baselineTemperature: 76.77,
  baselineSetAt: moment(0, "09:45"),
  baselineSetBy: "KT",
  baselineFrom: "R001, R002, R003",
  baselineAsRead: 11.42,
};

const baths: readonly LogRow<"baths">[] = [
  {
    bath: demoBath,
    tank: "T1",
    water: "RO",
    concentrate: "CN-1",
    opened: moment(0, "06:50"),
    strength: "1+28",
    dropAllowed: 0.5,
    note: "trial at 1+36 failed the bench test",
    ...daysBaseline,
  },
];

/** Concentrate and water are priced from the additions; these are what else the two days cost. */
const costLines: readonly LogRow<"costLines">[] = [
  {
    id: "C001",
    bath: demoBath,
    date: day(0),
    what: "Electricity, heat-up and hold, 21.8 kWh",
    document: "meter 0301",
    amount: 3.1,
    account: "claims",
  },
  {
    id: "C002",
    bath: demoBath,
    date: day(0),
    what: "Bath care labor, 1.5 h",
    document: "time sheet KT",
    amount: 69,
    account: "claims",
  },
  {
    id: "C003",
    bath: demoBath,
    date: day(1),
    what: "Electricity, hold, 9.2 kWh",
    document: "meter 0302",
    amount: 1.31,
    account: "claims",
  },
  {
    id: "C004",
    bath: demoBath,
    date: day(1),
    what: "Bath care labor, 1 h",
    document: "time sheet MV",
    amount: 46,
    account: "claims",
  },
];

const shares: readonly LogRow<"shares">[] = [
  { bath: demoBath, claim: "D-0427", units: 11 },
  { bath: demoBath, claim: "D-0431", units: 3 },
];

/** Monday 1 and Tuesday 2 March 2027, in US units. */
/** Cells left blank. */
function blank(cells: LogRow<"baths">): LogRow<"baths"> {
  return Object.fromEntries(Object.keys(cells).map((column) => [column, undefined]));
}

export const firstTwoDays: LogContent = {
  fields: {
    shop: "Quillhaven Contents Works",
    jobNumber: "QH-2027-09, invented data",
    started: day(0),
    chartBath: demoBath,
    shareBasis: "baskets",
  },
  rows: {
    claims,
    tanks,
    waters,
    concentrates,
    baths,
    benchTests: demoBenchTests,
    readings: demoReadings,
    additions: demoAdditions,
    costLines,
    shares,
  },
};

const { rows } = firstTwoDays;

/** The same where nobody wrote the baseline down. */
export const daysUnwritten: LogContent = {
  ...firstTwoDays,
  rows: { ...rows, baths: baths.map((bath) => ({ ...bath, ...blank(daysBaseline) })) },
};
