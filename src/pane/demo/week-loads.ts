/** Invented data, as all of the demo week: 22 loads. */
import { bathOne, bathTwo, march, typed, type WeekEvent } from "./week-event.ts";

const soils = { L: "light", M: "medium", H: "heavy" } as const;

type Load = readonly [
  at: string,
  bath: string,
  claim: string,
  baskets: number,
  soil: keyof typeof soils,
  minutes: number,
  area: number,
  initials: string,
  note?: string,
  rework?: "yes",
];

const loads: readonly Load[] = [
  [march(1, "10:05"), bathOne, "D-0427", 2, "M", 8, 19, "KT"],
  [march(1, "11:10"), bathOne, "D-0427", 2, "M", 8, 18, "KT"],
  [march(1, "13:15"), bathOne, "D-0427", 2, "H", 10, 22, "KT"],
  [march(1, "14:20"), bathOne, "D-0427", 1, "H", 10, 9, "KT"],
  [march(2, "08:30"), bathOne, "D-0427", 2, "M", 8, 15, "MV"],
  [march(2, "09:40"), bathOne, "D-0431", 1, "L", 6, 8, "MV", "first of the second claim; skimmed before"],
  [march(2, "12:45"), bathOne, "D-0431", 2, "M", 8, 19, "MV"],
  [march(2, "15:30"), bathOne, "D-0427", 2, "M", 8, 17, "KT"],
  [march(3, "08:30"), bathOne, "D-0431", 2, "H", 10, 14, "KT"],
  [march(3, "09:45"), bathOne, "D-0431", 2, "H", 10, 18, "KT"],
  [march(3, "13:00"), bathOne, "D-0431", 2, "M", 8, 16, "KT"],
  [march(3, "13:30"), bathTwo, "D-0436", 1, "M", 6, 8, "MV", "old enamel and glass by themselves; lead wipe clear"],
  [march(3, "14:10"), bathOne, "D-0427", 1, "M", 8, 11, "KT"],
  [march(4, "10:00"), bathOne, "D-0436", 2, "M", 8, 16, "KT", "third claim joins the bath"],
  [march(4, "10:30"), bathTwo, "D-0436", 1, "M", 6, 11, "MV"],
  [march(4, "11:05"), bathOne, "D-0436", 2, "M", 8, 20, "KT"],
  [march(4, "13:40"), bathOne, "D-0436", 2, "M", 8, 19, "KT"],
  [march(5, "08:40"), bathOne, "D-0436", 2, "L", 6, 16, "KT"],
  [march(5, "09:50"), bathOne, "D-0427", 2, "L", 6, 16, "KT", "film-marked pieces", "yes"],
  [march(5, "10:15"), bathTwo, "D-0436", 1, "L", 6, 7, "MV"],
  [march(5, "13:00"), bathOne, "D-0431", 2, "M", 8, 16, "KT"],
  [march(5, "14:10"), bathOne, "D-0436", 2, "M", 8, 22, "KT"],
];

export const loadEvents: readonly WeekEvent[] = loads.map(
  ([at, bath, claim, baskets, soil, minutes, area, initials, note, rework]) => ({
    at,
    entry: "load",
    bath,
    draft: typed({ claim, baskets, soil: soils[soil], minutes, area, rework, initials, note }),
  }),
);
