import type { LogRow } from "../../../src/joblog/model/definition.ts";
import { demoBath, moment } from "../demo-week-times.ts";

/** The samples were noted in °C; a log in US units holds °F, to a tenth. */
function fahrenheit(celsius: number): number {
  return Math.round(((celsius * 9) / 5) * 10 + 320) / 10;
}

interface Sample {
  readonly id: string;
  readonly day: 0 | 1;
  readonly clock: string;
  readonly ph: number;
  readonly celsius: number;
  readonly level: number;
  readonly conductivity: number;
  readonly initials: "KT" | "MV";
  readonly purpose?: "baseline";
  readonly titres?: readonly [p: number, t: number];
  readonly note?: string;
}

/** Invented, as all of the demo week. R008 was read hot, in the tank; R009 is its repeat, cooled. */
const samples: readonly Sample[] = [
  {
    id: "R001",
    day: 0,
    clock: "09:45",
    ph: 11.42,
    celsius: 24.7,
    level: 25,
    conductivity: 1.23,
    initials: "KT",
    purpose: "baseline",
    titres: [1.43, 2.18],
    note: "cooled to 25 °C",
  },
  {
    id: "R002",
    day: 0,
    clock: "09:45",
    ph: 11.43,
    celsius: 25,
    level: 25,
    conductivity: 1.23,
    initials: "KT",
    purpose: "baseline",
    note: "cooled to 25 °C",
  },
  {
    id: "R003",
    day: 0,
    clock: "09:45",
    ph: 11.41,
    celsius: 24.9,
    level: 25,
    conductivity: 1.23,
    initials: "KT",
    purpose: "baseline",
    note: "cooled to 25 °C",
  },
  { id: "R004", day: 0, clock: "14:00", ph: 11.33, celsius: 24.7, level: 24.7, conductivity: 1.15, initials: "KT" },
  { id: "R005", day: 0, clock: "16:40", ph: 11.31, celsius: 25, level: 24.7, conductivity: 1.13, initials: "KT" },
  {
    id: "R006",
    day: 1,
    clock: "07:50",
    ph: 11.33,
    celsius: 25.7,
    level: 25,
    conductivity: 1.12,
    initials: "MV",
    titres: [1.21, 1.98],
  },
  { id: "R007", day: 1, clock: "11:30", ph: 11.29, celsius: 24, level: 24.9, conductivity: 1.09, initials: "MV" },
  {
    id: "R008",
    day: 1,
    clock: "14:05",
    ph: 10.58,
    celsius: 53.1,
    level: 24.8,
    conductivity: 1.06,
    initials: "MV",
    note: "read hot in the tank, not cooled",
  },
  {
    id: "R009",
    day: 1,
    clock: "15:10",
    ph: 11.25,
    celsius: 24.6,
    level: 24.7,
    conductivity: 1.07,
    initials: "KT",
    note: "14:05 again, cooled",
  },
  { id: "R010", day: 1, clock: "16:45", ph: 11.21, celsius: 24.3, level: 24.7, conductivity: 1.04, initials: "KT" },
];

export const demoReadings: readonly LogRow<"readings">[] = samples.map(
  ({ id, day, clock, ph, celsius, level, conductivity, initials, purpose, titres, note }) => ({
    id,
    bath: demoBath,
    when: moment(day, clock),
    purpose: purpose ?? "check",
    ph,
    temperature: fahrenheit(celsius),
    meter: "M-1",
    level,
    conductivity,
    pTitre: titres?.[0],
    tTitre: titres?.[1],
    initials,
    note,
  }),
);
