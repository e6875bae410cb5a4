/** Invented data, as all of the demo week: 30 readings, six of them in two baselines. Samples were noted in °C. */
import { bathOne, bathTwo, march, typed, type WeekEvent } from "./week-event.ts";

type Reading = readonly [
  at: string,
  ph: number,
  celsius: number,
  level: number,
  conductivity: number,
  titres: "" | readonly [p: number, t: number],
  initials: string,
  note?: string,
];

const meter = "M-1";

const baselines: readonly WeekEvent[] = [
  {
    at: march(1, "09:45"),
    entry: "baseline",
    bath: bathOne,
    draft: typed({
      meter,
      ph1: 11.42,
      temperature1: "24.7 C",
      ph2: 11.43,
      temperature2: "25.0 C",
      ph3: 11.41,
      temperature3: "24.9 C",
      level: "25.0",
      conductivity: 1.23,
      pTitre: 1.43,
      tTitre: 2.18,
      initials: "KT",
      note: "cooled to 25 °C; bench test passed first",
    }),
  },
  {
    at: march(3, "11:25"),
    entry: "baseline",
    bath: bathTwo,
    draft: typed({
      meter,
      ph1: 11.61,
      temperature1: "24.8 C",
      ph2: 11.57,
      temperature2: "24.8 C",
      ph3: 11.59,
      temperature3: "25.0 C",
      level: 11.9,
      conductivity: 3.05,
      pTitre: 3.63,
      tTitre: 6.63,
      initials: "MV",
      note: "cooled",
    }),
  },
];

/** The meter was found off on Thursday: what it had shown of bath two on Wednesday was put right, and so was its baseline. */
const putRight: readonly WeekEvent[] = [
  {
    at: march(4, "08:10"),
    entry: "written baseline",
    bath: bathTwo,
    draft: typed({ baselineSetBy: "KT" }),
  },
];

const inBathOne: readonly Reading[] = [
  [march(1, "14:00"), 11.33, 24.7, 24.7, 1.15, "", "KT"],
  [march(1, "16:40"), 11.31, 25, 24.7, 1.13, "", "KT"],
  [march(2, "07:50"), 11.33, 25.7, 25, 1.12, [1.21, 1.98], "MV"],
  [march(2, "11:30"), 11.29, 24, 24.9, 1.09, "", "MV"],
  [march(2, "14:05"), 10.58, 53.1, 24.8, 1.06, "", "MV", "read hot in the tank, not cooled"],
  [march(2, "15:10"), 11.25, 24.6, 24.7, 1.07, "", "KT", "14:05 again, cooled"],
  [march(2, "16:45"), 11.21, 24.3, 24.7, 1.04, "", "KT"],
  [march(3, "07:15"), 11.19, 25, 23.6, 1.08, [1.08, 2.01], "KT", "level low, lid found off; before make-up"],
  [march(3, "08:00"), 11.18, 24.8, 25, 1.01, "", "KT"],
  [march(3, "11:20"), 11, 24.6, 24.8, 0.97, "", "KT"],
  [march(3, "16:30"), 10.96, 24.6, 24.7, 0.93, [0.84, 1.72], "KT", "meter says still above the trigger"],
  [march(4, "08:15"), 10.83, 26, 24.6, 0.93, [0.83, 1.72], "KT", "first after recalibration"],
  [march(4, "08:50"), 11.13, 25.1, 24.8, 1.32, "", "KT", "not yet back"],
  [march(4, "09:15"), 11.33, 25.9, 25.1, 1.7, "", "KT"],
  [march(4, "09:40"), 11.39, 25.5, 25.2, 1.81, [1.92, 3.37], "KT", "back to about the baseline"],
  [march(4, "13:20"), 11.31, 24.7, 23.5, 1.77, "", "KT"],
  [march(4, "15:45"), 11.19, 25.2, 25, 1.59, [1.66, 3.05], "MV", "bath cloudy after make-up"],
  [march(5, "08:10"), 11.32, 24.7, 25.1, 1.85, [1.96, 3.51], "KT"],
  [march(5, "11:30"), 11.29, 25.4, 24.9, 1.84, "", "KT"],
  [march(5, "16:30"), 11.25, 24.7, 24.8, 1.81, [1.84, 3.46], "KT"],
  [march(6, "08:00"), 11.23, 24.7, 24.8, 1.82, [1.84, 3.42], "KT", "last before change-out"],
];

const inBathTwo: readonly Reading[] = [
  [march(3, "15:00"), 11.58, 24.7, 11.8, 3, "", "MV"],
  [march(4, "14:30"), 11.42, 24.9, 11.7, 2.99, "", "MV"],
  [march(5, "14:30"), 11.37, 25.4, 11.5, 3.02, [3.6, 6.74], "MV"],
];

/** The purpose is left to the form, which knows of a top-up that waits for its reading. */
const readingsOf = (bath: string, readings: readonly Reading[]): readonly WeekEvent[] =>
  readings.map(([at, ph, celsius, level, conductivity, titres, initials, note]) => {
    const [pTitre, tTitre] = titres === "" ? [] : titres;
    return {
      at,
      entry: "reading",
      bath,
      draft: typed({
        ph,
        temperature: `${String(celsius)} C`,
        meter,
        level,
        conductivity,
        pTitre,
        tTitre,
        initials,
        note,
      }),
    };
  });

export const readingEvents: readonly WeekEvent[] = [
  ...baselines,
  ...putRight,
  ...readingsOf(bathOne, inBathOne),
  ...readingsOf(bathTwo, inBathTwo),
];
