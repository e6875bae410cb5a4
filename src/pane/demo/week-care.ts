/** Invented data, as all of the demo week: meter checks and what was done for the bath. */
import { bathOne, march, typed, type WeekEvent } from "./week-event.ts";

type MeterCheck = readonly [at: string, asFound1: string, mv1: number, asFound2: number, mv2: number, note: string];

const checks: readonly MeterCheck[] = [
  [march(1, "08:00"), "7.01", -4.1, 10.02, -178.4, "weekly calibration"],
  [march(4, "08:05"), "7.06", -9.8, 10.15, -180.9, "bulb cleaned, recalibrated"],
  [march(5, "07:30"), "7.00", -9.6, 10.02, -181.2, "check only"],
];

type Care = readonly [at: string, kind: string, fields: Readonly<Record<string, string | number>>];

const drum = "sludge drum";

const care: readonly Care[] = [
  [march(1, "09:20"), "degas", { minutes: 12, result: "at 128 °F, before the first load", initials: "KT" }],
  [march(2, "09:30"), "skim", { amount: 0.2, result: "oily scum, before the first load of D-0431", initials: "MV" }],
  [march(3, "08:20"), "skim", { amount: 0.2, initials: "KT" }],
  [march(4, "09:55"), "filter", { result: "bag changed before the third claim", initials: "KT" }],
  [
    march(4, "13:00"),
    "drain",
    {
      amount: 7.5,
      destination: drum,
      result: "sludge, from the bottom valve; heaters and ultrasound off",
      initials: "KT",
    },
  ],
  [march(5, "07:20"), "skim", { result: "curd after the hard water", initials: "KT" }],
  [march(5, "07:20"), "filter", { result: "curd after the hard water: two bags; RO tank restored", initials: "KT" }],
  [
    march(6, "08:30"),
    "drain",
    { amount: 3, destination: drum, result: "sludge; sample sent for TCLP metals", initials: "KT" },
  ],
];

type RinseCheck = readonly [at: string, ph: number, conductivity: number, done?: string];

const rinses: readonly RinseCheck[] = [
  [march(1, "11:40"), 8.7, 0.09],
  [march(1, "15:50"), 9.39, 0.1],
  [march(2, "11:40"), 8.81, 0.12],
  [march(2, "15:50"), 9.61, 0.15, "dump and refill"],
  [march(3, "11:40"), 8.85, 0.15],
  [march(3, "15:50"), 9.76, 0.2],
  [march(4, "11:40"), 9.19, 0.18],
  [march(4, "15:50"), 9.71, 0.24, "dump and refill"],
  [march(5, "11:40"), 9.36, 0.21],
  [march(5, "15:50"), 9.83, 0.28],
];

export const careEvents: readonly WeekEvent[] = [
  ...checks.map(([at, asFound1, mv1, asFound2, mv2, note]): WeekEvent => ({
    at,
    entry: "meter check",
    draft: typed({
      meter: "M-1",
      temperature: "25.0 C",
      buffer1: "7.00",
      asFound1,
      mv1,
      buffer2: "10.01",
      asFound2,
      mv2,
      asLeft1: "7.00",
      asLeft2: "10.01",
      initials: "KT",
      note,
    }),
  })),
  ...care.map(([at, kind, fields]): WeekEvent => ({
    at,
    entry: "care",
    bath: bathOne,
    draft: typed({ kind, ...fields }),
  })),
  ...rinses.map(([at, rinsePh, rinseConductivity, result]): WeekEvent => ({
    at,
    entry: "care",
    bath: bathOne,
    draft: typed({ kind: "rinse check", rinsePh, rinseConductivity, result, note: "RINSE-1" }),
  })),
];
