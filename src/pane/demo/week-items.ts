/**
 * Invented data, as all of the demo week: 30 lines of items, listed as each claim is unpacked and closed when
 * they are done. Why a piece stays out of the bath is written when it is listed.
 */
import type { Draft } from "../record/entry-form.ts";
import { bathOne, bathTwo, typed, march, type WeekEvent } from "./week-event.ts";

type Item = readonly [claim: string, room: string, quantity: number, item: string, material: string, condition: string, where: "T1" | "T2" | "hand" | "none", outcome: "restored" | "not restorable", reason?: string, reasonText?: string, value?: number];

const items: readonly Item[] = [
  ["D-0427", "kitchen", 18, "dinner plates", "glazed ceramic", "greasy soot", "T1", "restored"],
  ["D-0427", "kitchen", 12, "glass tumblers", "glass", "dry soot", "T1", "restored"],
  ["D-0427", "kitchen", 46, "stainless cutlery set", "stainless steel", "greasy soot", "T1", "restored"],
  ["D-0427", "kitchen", 2, "cast saucepan, bare aluminum", "aluminum", "greasy soot", "hand", "restored", "AMPHOTERIC", "amphoteric metal: kept out of the alkaline bath", 38],
  ["D-0427", "kitchen", 1, "toaster", "appliance", "melted housing", "none", "not restorable", "MELT", "housing deformed; safety of a mains item cannot be shown", 41],
  ["D-0427", "kitchen", 1, "plastic colander", "polyethylene", "warped", "none", "not restorable", "MELT", "warped by heat: it no longer stands or drains", 9],
  ["D-0427", "hall", 1, "framed certificate", "paper", "smoke stain", "hand", "restored", "", "paper: dry method only"],
  ["D-0427", "hall", 1, "brass lamp base", "brass", "soot film", "hand", "restored", "", "lacquered brass and mixed solder: bench test dulled the finish"],
  ["D-0427", "kitchen", 6, "wine bottles, collector labels", "glass, paper label", "dry soot", "hand", "restored", "LABEL", "label carries the value", 420],
  ["D-0427", "kitchen", 9, "wooden spoons", "bare wood", "charred ends", "none", "not restorable", "BURN", "char through", 18],
  ["D-0427", "lounge", 4, "porcelain figures, cold-painted", "porcelain", "dry soot", "hand", "restored", "", "cold paint over glaze lifts in alkali", 160],
  ["D-0427", "lounge", 31, "vinyl records in sleeves", "vinyl/card", "smoke odor", "hand", "restored", "", "label and card sleeves"],
  ["D-0431", "garage", 38, "hand tools, chromed", "chromed steel", "heavy soot", "T1", "restored"],
  ["D-0431", "garage", 14, "die-cast toy cars, boxed", "zinc alloy", "soot", "hand", "restored", "AMPHOTERIC", "zinc alloy and printed boxes", 300],
  ["D-0431", "garage", 9, "plastic storage bins", "polypropylene", "heavy soot", "T1", "restored"],
  ["D-0431", "garage", 2, "galvanized bucket", "zinc-coated steel", "soot", "hand", "restored", "AMPHOTERIC", "zinc coat is amphoteric"],
  ["D-0431", "garage", 3, "cordless drill batteries", "lithium pack", "heat-marked", "none", "not restorable", "SAFETY", "heat-exposed cells; to hazardous-waste collection", 150],
  ["D-0431", "garage", 7, "paint tins", "paint", "swollen", "none", "not restorable", "HAZMAT", "to collection", 60],
  ["D-0431", "garage", 5, "extension leads", "PVC cable", "melted sheath", "none", "not restorable", "BURN", "burnt and melted insulation", 55],
  ["D-0431", "garage", 6, "ceramic planters", "unglazed clay", "soot soaked", "T1", "not restorable", "POROUS", "residue remains after two cycles", 48],
  ["D-0431", "garage", 4, "steel shelving", "powder-coated steel", "heavy soot", "T1", "restored"],
  ["D-0431", "garage", 3, "fishing reels", "anodized aluminum", "soot", "hand", "restored", "AMPHOTERIC", "amphoteric metal", 210],
  ["D-0436", "apartment", 30, "crockery, modern", "glazed ceramic", "light soot", "T1", "restored"],
  ["D-0436", "apartment", 5, "glass vases", "glass", "light soot", "T1", "restored"],
  ["D-0436", "apartment", 6, "old painted tin toys", "tinplate, old paint", "light soot", "T2", "restored", "", "isolated bath; lead wipe taken", 540],
  ["D-0436", "apartment", 1, "painted plaster plaque", "plaster", "soot", "none", "not restorable", "POROUS", "paint delaminated on test", 70],
  ["D-0436", "apartment", 2, "crystal decanter (leaded)", "lead crystal", "light soot", "hand", "restored", "", "leaded glass kept out of hot alkali", 180],
  ["D-0436", "apartment", 22, "plastic toys", "ABS", "light soot", "T1", "restored", "", "two reworked for film, 2027-03-05"],
  ["D-0436", "apartment", 4, "enamel pans", "vitreous enamel", "light soot", "T1", "restored"],
  ["D-0436", "apartment", 1, "clock, gilt and wood", "mixed", "soot", "hand", "restored", "", "movement and gilding: specialist"],
];

/** When a claim's pieces are listed and when they are done. */
const days: Readonly<Record<string, readonly [listed: string, done: string]>> = {
  "D-0427": [march(1, "07:40"), march(5, "16:40")],
  "D-0431": [march(2, "08:00"), march(5, "16:50")],
  "D-0436": [march(3, "11:40"), march(5, "17:00")],
};

const numbered = (index: number): string => String(index + 1).padStart(3, "0");

function routeFields(where: Item[6]): Readonly<Record<string, string>> {
  if (where === "T1") return { route: "bath", bath: bathOne };
  return where === "T2" ? { route: "bath", bath: bathTwo } : { route: where };
}

/** The form asks about tin: the toys get a bath of their own, short and watched. */
const oldToys: readonly RegExp[] = [/alkali attacks aluminum, zinc/];

export const itemEvents: readonly WeekEvent[] = items.flatMap(([claim, room, quantity, item, material, condition, where, outcome, reason, reasonText, replacementValue], index): readonly WeekEvent[] => {
  const [listed, done] = days[claim] ?? [march(1, "07:40"), march(5, "16:40")];
  const came = typed({ claim, room, item, quantity, material, condition, pre1980: where === "T2" ? "yes" : undefined, ...routeFields(where), replacementValue, photo: `P-${numbered(index)}` });
  const why = typed({ reason, reasonText });
  const became: Draft = { outcome, ...(where === "hand" ? {} : outcome === "restored" ? typed({ note: reasonText }) : why) };
  const confirms = where === "T2" ? oldToys : [];
  if (where === "none") return [{ at: listed, entry: "item", draft: { ...came, ...became }, confirms }];
  return [
    { at: listed, entry: "item", draft: where === "hand" ? { ...came, ...why } : came, confirms },
    { at: done, entry: "item", draft: { earlier: `I${numbered(index)} · ${item}`, ...became } },
  ];
});
