import type { Job } from "../../../src/command-line/job/job-schema.ts";

/** 4 gal and 1 gal at $25.00, and $75.00 of labor: $200.00 for 8 baskets, of which 3 are light and 5 heavy. */
export const smallJob: Job = {
  log: 1,
  system: "US",
  fields: { shop: "Small Works", jobNumber: "1", currency: "USD" },
  rows: {
    claims: [{ claim: "D-1", loss: "kitchen fire", arrived: "2027-03-01" }],
    tanks: [{ tank: "T1", length: 48, width: 24, fillDepth: 25 }],
    waters: [{ water: "RO", hardness: 7, alkalinity: 5 }],
    concentrates: [{ concentrate: "CN-1", builder: "unknown", labelMedium: "1+28" }],
    baths: [
      {
        bath: "B-1",
        tank: "T1",
        water: "RO",
        concentrate: "CN-1",
        opened: "2027-03-01T06:50",
        closed: "2027-03-02T18:00",
      },
    ],
    additions: [
      {
        id: "A1",
        bath: "B-1",
        when: "2027-03-01T07:00",
        kind: "concentrate",
        purpose: "opening",
        amount: 4,
        account: "claims",
        unitCost: 25,
      },
      {
        id: "A2",
        bath: "b-1",
        when: "2027-03-01T12:00",
        kind: "concentrate",
        purpose: "top-up",
        amount: 1,
        account: "claims",
        unitCost: 25,
      },
    ],
    costLines: [
      { id: "C1", bath: "B-1", date: "2027-04-01", what: "labor", amount: 75, account: "claims", kind: "labor" },
    ],
    shares: [{ bath: "B-1", claim: "D-1" }],
    loads: [
      { id: "L1", bath: "B-1", claim: "D-1", when: "2027-03-01T09:00", baskets: 3, soil: "light", minutes: 10 },
      { id: "L2", bath: "B-1", claim: "D-1", when: "2027-03-01T10:00", baskets: 5, soil: "heavy", minutes: 20 },
    ],
    items: [{ id: "I1", claim: "D-1", quantity: 7, item: "cups", route: "bath", outcome: "restored" }],
  },
};
