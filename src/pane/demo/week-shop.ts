/** Invented data: Quillhaven Contents Works, its town, claims, concentrate and figures do not exist. */
import { serialOf } from "../../advice/wording/moments.ts";
import type { LogContent, LogRow } from "../../joblog/model/definition.ts";
import { bathOne } from "./week-event.ts";

const claims: readonly LogRow<"claims">[] = [
  {
    claim: "D-0427",
    loss: "kitchen fire, row house",
    insurer: "Insurer A (invented)",
    adjuster: "adjuster 1",
    arrived: serialOf("2027-02-24"),
  },
  {
    claim: "D-0431",
    loss: "garage electrical fire",
    insurer: "Insurer B (invented)",
    adjuster: "adjuster 2",
    arrived: serialOf("2027-02-25"),
  },
  {
    claim: "D-0436",
    loss: "apartment above a shop, smoke only",
    insurer: "Insurer A (invented)",
    adjuster: "adjuster 3",
    arrived: serialOf("2027-03-01"),
    note: "pre-1978 items: isolate, lead wipe",
  },
];

/** What a load carries out was measured by nobody: a guess of the shop's, for the split of a fallen level. */
const tanks: readonly LogRow<"tanks">[] = [
  {
    tank: "T1",
    length: 48,
    width: 24,
    fillDepth: 25,
    displacement: 3.5,
    heater: 6,
    dragOut: 0.2,
    note: "set to 130 °F, hinged lid in two parts",
  },
  {
    tank: "T2",
    length: 24,
    width: 16,
    fillDepth: 11.5,
    displacement: 0.6,
    heater: 1.5,
    dragOut: 0.1,
    note: "set to 122 °F, lift-off lid",
  },
];

/** No prices: this shop books its water by the week, as a cost line, so that it is not counted twice. */
const waters: readonly LogRow<"waters">[] = [
  { water: "RO", name: "RO permeate", hardness: 7, alkalinity: 5, tds: 14, ph: 6.1, tested: serialOf("2027-02-26") },
  {
    water: "SOFT",
    name: "Softened city water",
    hardness: 9,
    alkalinity: 240,
    tds: 412,
    ph: 7.6,
    tested: serialOf("2027-02-26"),
  },
  {
    water: "CITY",
    name: "Hard city water",
    hardness: 325,
    alkalinity: 240,
    tds: 405,
    ph: 7.6,
    tested: serialOf("2027-02-26"),
  },
];

const concentrates: readonly LogRow<"concentrates">[] = [
  {
    concentrate: "CN-1",
    description: "Invented alkaline liquid",
    builder: "unknown",
    labelLight: "1+36",
    labelMedium: "1+28",
    labelHeavy: "1+10",
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

const people: readonly LogRow<"people">[] = [
  { initials: "KT", name: "technician 1 (invented)" },
  { initials: "MV", name: "technician 2 (invented)" },
];

/** What the Job and Shop sheets hold before the first entry of the week, and the choices on the sheets that add up. */
export const weekShop: LogContent = {
  fields: {
    shop: "Quillhaven Contents Works",
    jobNumber: "QH-2027-09, invented data",
    started: serialOf("2027-03-01"),
    sewerLow: 6,
    sewerHigh: 10,
    permit: "QH-IU-017 (invented)",
    chartBath: bathOne,
    statementClaim: "D-0436",
  },
  rows: {
    claims,
    tanks,
    waters,
    concentrates,
    people,
    itemCounts: [
      { claim: "D-0427", received: 132 },
      { claim: "D-0431", received: 91 },
      { claim: "D-0436", received: 71 },
    ],
    stockBalance: [{ concentrate: "CN-1", leadDays: 4, safety: 5 }],
    monthEnd: [{ concentrate: "CN-1", month: serialOf("2027-03-01") }],
  },
};
