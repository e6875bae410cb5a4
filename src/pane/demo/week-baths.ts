/** Invented data, as all of the demo week: fills, concentrate, water, and the end of the bath in T1. */
import { bathOne, bathTwo, march, typed, type WeekEvent } from "./week-event.ts";

const charges: readonly WeekEvent[] = [
  {
    at: march(1, "07:25"),
    entry: "charge",
    draft: typed({
      tank: "T1",
      water: "RO",
      concentrate: "CN-1",
      strength: "1+28",
      opened: march(1, "06:50"),
      bath: bathOne,
      waterAmount: 117,
      concentrateAmount: 3.275,
      concentrateAt: march(1, "07:25"),
      initials: "KT",
      note: "cold water first; first part for a trial at 1+36",
    }),
  },
  {
    at: march(3, "10:20"),
    entry: "charge",
    draft: typed({
      tank: "T2",
      water: "SOFT",
      concentrate: "CN-1",
      strength: "1+18",
      opened: march(3, "10:00"),
      bath: bathTwo,
      waterAmount: 17.54,
      concentrateAmount: 0.975,
      concentrateAt: march(3, "10:20"),
      initials: "MV",
      note: "bath of its own for old enamel and glass, wiped first",
    }),
  },
];

type Addition = readonly [at: string, bath: string, purpose: string, amount: number, initials: string, note: string];

const additions: readonly Addition[] = [
  [march(1, "09:15"), bathOne, "opening", 0.903, "KT", "second part, to 1+28 after the bench test"],
  [
    march(3, "10:55"),
    bathTwo,
    "opening",
    0.709,
    "MV",
    "second part, to about 1+10: softened water keeps its bicarbonate",
  ],
  [march(4, "08:30"), bathOne, "top-up", 1.39, "KT", "a third of the opening dose"],
  [march(4, "08:55"), bathOne, "top-up", 1.39, "KT", "another third"],
  [march(4, "09:20"), bathOne, "top-up", 0.4, "KT", "trim"],
  [march(5, "07:45"), bathOne, "corrective", 0.95, "KT", "after the hard water; not billable"],
];

type MakeUp = readonly [
  at: string,
  amount: number,
  water: string,
  before: number,
  initials: string,
  note: string,
  confirms?: readonly RegExp[],
];

const makeUps: readonly MakeUp[] = [
  [march(2, "07:20"), 2.01, "RO", 24.6, "MV", "to the line"],
  [march(3, "07:30"), 7.16, "RO", 23.6, "KT", "lid was off overnight with the heater on: water only"],
  [
    march(4, "15:20"),
    8.05,
    "CITY",
    23.4,
    "MV",
    "RO tank was dry; topped from the wall hose",
    [/CITY is not the water of the fill/],
  ],
];

/** The 20 % solution is booked by the dry acid in it. */
const release: readonly WeekEvent[] = [
  {
    at: march(6, "09:20"),
    entry: "change-out",
    bath: bathOne,
    draft: typed({ closeReason: "job done", closed: march(6, "09:20") }),
  },
  {
    at: march(6, "11:30"),
    entry: "release",
    bath: bathOne,
    draft: typed({
      when: march(6, "09:30"),
      volume: 120.1,
      ph: 11.22,
      temperature: "24.5 C",
      alkalinity: 683,
      acid: "citric",
      target: 8.5,
      stage1: "0.128 kg",
      phAfter1: 10.1,
      stage2: "0.064 kg",
      phAfter2: 9.2,
      stage3: "0.026 kg",
      phAfter3: 8.4,
      note: "20 % solution, heaters and ultrasound off; slowly into the cooled, mixing bath; held for the metals in the water",
    }),
  },
  {
    at: march(9, "14:20"),
    entry: "release",
    bath: bathOne,
    draft: typed({
      analyses:
        "neutralized water: lead 0.08 mg/L (permit 0.5), zinc 0.4 (permit 2.0), lab report on file; sludge apart, in its drum: lead by TCLP 0.8 mg/L",
      analysesResult: "within limits",
      releasedAt: march(9, "14:10"),
      releasedVolume: 117.1,
      point: "sanitary sewer connection SC-2",
      initials: "KT",
    }),
  },
];

export const bathEvents: readonly WeekEvent[] = [
  ...charges,
  ...additions.map(([at, bath, purpose, amount, initials, note]): WeekEvent => ({
    at,
    entry: "addition",
    bath,
    draft: typed({ purpose, amount, minutesMixed: 10, initials, note }),
  })),
  ...makeUps.map(([at, amount, water, levelBefore, initials, note, confirms = []]): WeekEvent => ({
    at,
    entry: "level make-up",
    bath: bathOne,
    draft: typed({ levelBefore, levelAfter: "25.0", amount, water, initials, note }),
    confirms,
  })),
  ...release,
];
