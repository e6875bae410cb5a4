/**
 * Invented data, like all of the demo week: the whole week's loads, items, concentrate and stock lines as
 * they were noted, for the sheets that count, share and balance them.
 */
import type { LogRow } from "../../../../src/joblog/model/definition.ts";
import { day, moment } from "../../../demo/demo-week-times.ts";

const soils = { L: "light", M: "medium", H: "heavy" } as const;

type Load = readonly [id: string, offset: number, clock: string, bath: string, claim: string, baskets: number, soil: keyof typeof soils, minutes: number, rework?: "yes"];

const loads: readonly Load[] = [
  ["L001", 0, "10:05", "B-T1-0301", "D-0427", 2, "M", 8],
  ["L002", 0, "11:10", "B-T1-0301", "D-0427", 2, "M", 8],
  ["L003", 0, "13:15", "B-T1-0301", "D-0427", 2, "H", 10],
  ["L004", 0, "14:20", "B-T1-0301", "D-0427", 1, "H", 10],
  ["L005", 1, "08:30", "B-T1-0301", "D-0427", 2, "M", 8],
  ["L006", 1, "09:40", "B-T1-0301", "D-0431", 1, "L", 6],
  ["L007", 1, "12:45", "B-T1-0301", "D-0431", 2, "M", 8],
  ["L008", 1, "15:30", "B-T1-0301", "D-0427", 2, "M", 8],
  ["L009", 2, "08:30", "B-T1-0301", "D-0431", 2, "H", 10],
  ["L010", 2, "09:45", "B-T1-0301", "D-0431", 2, "H", 10],
  ["L011", 2, "13:00", "B-T1-0301", "D-0431", 2, "M", 8],
  ["L020", 2, "13:30", "B-T2-0303", "D-0436", 1, "M", 6],
  ["L012", 2, "14:10", "B-T1-0301", "D-0427", 1, "M", 8],
  ["L013", 3, "10:00", "B-T1-0301", "D-0436", 2, "M", 8],
  ["L021", 3, "10:30", "B-T2-0303", "D-0436", 1, "M", 6],
  ["L014", 3, "11:05", "B-T1-0301", "D-0436", 2, "M", 8],
  ["L015", 3, "13:40", "B-T1-0301", "D-0436", 2, "M", 8],
  ["L016", 4, "08:40", "B-T1-0301", "D-0436", 2, "L", 6],
  ["L017", 4, "09:50", "B-T1-0301", "D-0427", 2, "L", 6, "yes"],
  ["L022", 4, "10:15", "B-T2-0303", "D-0436", 1, "L", 6],
  ["L018", 4, "13:00", "B-T1-0301", "D-0431", 2, "M", 8],
  ["L019", 4, "14:10", "B-T1-0301", "D-0436", 2, "M", 8],
];

export const weekLoads: readonly LogRow[] = loads.map(([id, offset, clock, bath, claim, baskets, soil, minutes, rework]) => ({
  id, bath, claim, when: moment(offset, clock), baskets, soil: soils[soil], minutes, rework, initials: "KT",
}));

type Item = readonly [id: string, claim: string, room: string, quantity: number, item: string, material: string, condition: string, route: string, outcome: string, reason: string, reasonText: string, value?: number];

const items: readonly Item[] = [
  ["I001", "D-0427", "kitchen", 18, "dinner plates", "glazed ceramic", "greasy soot", "B-T1-0301", "restored", "", ""],
  ["I002", "D-0427", "kitchen", 12, "glass tumblers", "glass", "dry soot", "B-T1-0301", "restored", "", ""],
  ["I003", "D-0427", "kitchen", 46, "stainless cutlery set", "stainless steel", "greasy soot", "B-T1-0301", "restored", "", ""],
  ["I004", "D-0427", "kitchen", 2, "cast saucepan, bare aluminum", "aluminum", "greasy soot", "hand", "restored", "AMPHOTERIC", "amphoteric metal: kept out of the alkaline bath", 38],
  ["I005", "D-0427", "kitchen", 1, "toaster", "appliance", "melted housing", "none", "not restorable", "MELT", "housing deformed; safety of mains item cannot be shown", 41],
  ["I006", "D-0427", "kitchen", 1, "plastic colander", "polyethylene", "warped", "none", "not restorable", "MELT", "", 9],
  ["I007", "D-0427", "hall", 1, "framed certificate", "paper", "smoke stain", "hand", "restored", "", "paper: dry method only"],
  ["I008", "D-0427", "hall", 1, "brass lamp base", "brass", "soot film", "hand", "restored", "", "lacquered brass and mixed solder: bench test dulled the finish"],
  ["I009", "D-0427", "kitchen", 6, "wine bottles, collector labels", "glass, paper label", "dry soot", "hand", "restored", "LABEL", "label carries the value", 420],
  ["I010", "D-0427", "kitchen", 9, "wooden spoons", "bare wood", "charred ends", "none", "not restorable", "BURN", "char through", 18],
  ["I011", "D-0427", "lounge", 4, "porcelain figures, cold-painted", "porcelain", "dry soot", "hand", "restored", "", "cold paint over glaze lifts in alkali", 160],
  ["I012", "D-0427", "lounge", 31, "vinyl records in sleeves", "vinyl/card", "smoke odor", "hand", "restored", "", "label and card sleeves"],
  ["I013", "D-0431", "garage", 38, "hand tools, chromed", "chromed steel", "heavy soot", "B-T1-0301", "restored", "", ""],
  ["I014", "D-0431", "garage", 14, "die-cast toy cars, boxed", "zinc alloy", "soot", "hand", "restored", "AMPHOTERIC", "zinc alloy and printed boxes", 300],
  ["I015", "D-0431", "garage", 9, "plastic storage bins", "polypropylene", "heavy soot", "B-T1-0301", "restored", "", ""],
  ["I016", "D-0431", "garage", 2, "galvanized bucket", "zinc-coated steel", "soot", "hand", "restored", "AMPHOTERIC", "zinc coat is amphoteric"],
  ["I017", "D-0431", "garage", 3, "cordless drill batteries", "lithium pack", "heat-marked", "none", "not restorable", "SAFETY", "heat-exposed cells; to hazardous-waste collection", 150],
  ["I018", "D-0431", "garage", 7, "paint tins", "paint", "swollen", "none", "not restorable", "HAZMAT", "to collection", 60],
  ["I019", "D-0431", "garage", 5, "extension leads", "PVC cable", "melted sheath", "none", "not restorable", "BURN", "insulation", 55],
  ["I020", "D-0431", "garage", 6, "ceramic planters", "unglazed clay", "soot soaked", "B-T1-0301", "not restorable", "POROUS", "residue remains after two cycles", 48],
  ["I021", "D-0431", "garage", 4, "steel shelving", "powder-coated steel", "heavy soot", "B-T1-0301", "restored", "", ""],
  ["I022", "D-0431", "garage", 3, "fishing reels", "anodized aluminum", "soot", "hand", "restored", "AMPHOTERIC", "amphoteric metal", 210],
  ["I023", "D-0436", "apartment", 30, "crockery, modern", "glazed ceramic", "light soot", "B-T1-0301", "restored", "", ""],
  ["I024", "D-0436", "apartment", 5, "glass vases", "glass", "light soot", "B-T1-0301", "restored", "", ""],
  ["I025", "D-0436", "apartment", 6, "old painted tin toys", "tinplate, old paint", "light soot", "B-T2-0303", "restored", "", "isolated bath; lead wipe taken", 540],
  ["I026", "D-0436", "apartment", 1, "painted plaster plaque", "plaster", "soot", "none", "not restorable", "POROUS", "paint delaminated on test", 70],
  ["I027", "D-0436", "apartment", 2, "crystal decanter (leaded)", "lead crystal", "light soot", "hand", "restored", "", "leaded glass kept out of hot alkali", 180],
  ["I028", "D-0436", "apartment", 22, "plastic toys", "ABS", "light soot", "B-T1-0301", "restored", "", "two reworked for film 2027-03-05"],
  ["I029", "D-0436", "apartment", 4, "enamel pans", "vitreous enamel", "light soot", "B-T1-0301", "restored", "", ""],
  ["I030", "D-0436", "apartment", 1, "clock, gilt and wood", "mixed", "soot", "hand", "restored", "", "movement and gilding: specialist"],
];

export const weekItems: readonly LogRow[] = items.map(([id, claim, room, quantity, item, material, condition, where, outcome, reason, reasonText, replacementValue]) => {
  const bath = where.startsWith("B-") ? where : undefined;
  return {
    id, claim, room, quantity, item, material, condition, route: bath === undefined ? where : "bath", bath, outcome,
    reason: reason === "" ? undefined : reason, reasonText: reasonText === "" ? undefined : reasonText, replacementValue,
    pre1980: id === "I025" ? "yes" : undefined, photo: `P-${id.slice(1)}`,
  };
});

type Concentrate = readonly [id: string, offset: number, clock: string, bath: string, purpose: string, amount: number, account: string];

const concentrate: readonly Concentrate[] = [
  ["A002", 0, "07:25", "B-T1-0301", "opening", 3.275, "claims"],
  ["A003", 0, "09:15", "B-T1-0301", "opening", 0.903, "claims"],
  ["A013", 2, "10:20", "B-T2-0303", "opening", 0.975, "claims"],
  ["A014", 2, "10:55", "B-T2-0303", "opening", 0.709, "claims"],
  ["A007", 3, "08:30", "B-T1-0301", "top-up", 1.39, "claims"],
  ["A008", 3, "08:55", "B-T1-0301", "top-up", 1.39, "claims"],
  ["A009", 3, "09:20", "B-T1-0301", "top-up", 0.4, "claims"],
  ["A011", 4, "07:45", "B-T1-0301", "corrective", 0.95, "shop"],
];

export const weekConcentrate: readonly LogRow[] = concentrate.map(([id, offset, clock, bath, purpose, amount, account]) => ({
  id, bath, when: moment(offset, clock), kind: "concentrate", purpose, amount, account,
}));

/** What the week cost beside concentrate; the last two are the shop's own. */
export const weekCostLines: readonly LogRow[] = ([
  ["RO water", 3.9, "claims"], ["electricity", 8.42, "claims"], ["bath care labor, 5.5 h", 253, "claims"], ["filter bags, 2", 11.8, "claims"],
  ["neutralizing acid", 1.32, "claims"], ["sludge drum share and TCLP", 96, "claims"], ["filter bags, 2, curd", 11.8, "shop"], ["labor, 1.5 h, curd clean-up", 69, "shop"],
] as const).map(([what, amount, account], index) => ({ id: `C${String(index + 1)}`, bath: "B-T1-0301", date: day(5), what, amount, account }));

export const weekStock: readonly LogRow[] = [
  { id: "S1", when: day(-1), concentrate: "CN-1", kind: "count", amount: 22.5, note: "opening stock" },
  { id: "S2", when: day(3), concentrate: "CN-1", kind: "receipt", amount: 10, price: 28.4, document: "PO 3318", note: "2 pails" },
  { id: "S3", when: day(5), concentrate: "CN-1", kind: "count", amount: 22.308, note: "0.20 gal short: a spill that was not logged" },
];

export const weekBaths: readonly LogRow[] = [
  { bath: "B-T1-0301", tank: "T1", water: "RO", concentrate: "CN-1", opened: moment(0, "06:50"), strength: "1+28", dropAllowed: 0.5, closed: moment(5, "09:30"), closeReason: "job done" },
  { bath: "B-T2-0303", tank: "T2", water: "SOFT", concentrate: "CN-1", opened: moment(2, "10:00"), strength: "1+10", dropAllowed: 0.5 },
];

export const weekCare: readonly LogRow[] = [
  { id: "K1", bath: "B-T1-0301", when: moment(1, "09:30"), kind: "skim" },
  { id: "K2", bath: "B-T1-0301", when: moment(2, "08:20"), kind: "skim" },
  { id: "K3", bath: "B-T1-0301", when: moment(3, "09:55"), kind: "filter" },
];

export const weekClaims = ["D-0427", "D-0431", "D-0436"] as const;
