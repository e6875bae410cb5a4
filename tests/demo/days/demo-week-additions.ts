import type { LogRow } from "../../../src/joblog/model/definition.ts";
import { demoBath, moment } from "../demo-week-times.ts";

/** Invented, as all of the demo week: what went into the bath on its first two days. */
export const demoAdditions: readonly LogRow<"additions">[] = [
  {
    id: "A001",
    bath: demoBath,
    when: moment(0, "06:50"),
    kind: "water",
    purpose: "opening",
    amount: 117,
    water: "RO",
    account: "claims",
    initials: "KT",
    note: "first fill, cold water first",
  },
  {
    id: "A002",
    bath: demoBath,
    when: moment(0, "07:25"),
    kind: "concentrate",
    purpose: "opening",
    amount: 3.275,
    account: "claims",
    minutesMixed: 10,
    initials: "KT",
    note: "for the trial at 1+36",
  },
  {
    id: "A003",
    bath: demoBath,
    when: moment(0, "09:15"),
    kind: "concentrate",
    purpose: "opening",
    amount: 0.903,
    account: "claims",
    minutesMixed: 10,
    initials: "KT",
    note: "second part, to 1+28 after the bench test",
  },
  {
    id: "A004",
    bath: demoBath,
    when: moment(1, "07:20"),
    kind: "water",
    purpose: "make-up",
    amount: 2.01,
    water: "RO",
    account: "claims",
    initials: "MV",
    note: "level made up to the line",
  },
];
