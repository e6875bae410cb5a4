/** Invented data, as all of the demo week: counts and a receipt of concentrate. */
import { march, typed, type WeekEvent } from "./week-event.ts";

export const stockEvents: readonly WeekEvent[] = [
  {
    at: march(1, "06:30"),
    entry: "stock move",
    draft: typed({ kind: "count", when: "2027-02-28T17:00", amount: 22.5, initials: "KT", note: "opening stock" }),
  },
  {
    at: march(4, "12:00"),
    entry: "stock move",
    draft: typed({
      kind: "receipt",
      when: march(4, "12:00"),
      amount: 10,
      price: 28.4,
      document: "PO 3318",
      initials: "KT",
      note: "2 pails",
    }),
  },
  {
    at: march(6, "12:00"),
    entry: "stock move",
    draft: typed({
      kind: "count",
      when: march(6, "12:00"),
      amount: 22.308,
      initials: "KT",
      note: "0.20 gal short: a spill that was not logged",
    }),
  },
];
