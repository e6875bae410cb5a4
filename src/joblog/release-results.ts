import { computed, helper } from "./columns.ts";
import type { ComputedColumn, References } from "./definition.ts";
import { at, blankIf, positionOf, quoted } from "./formulas.ts";
import { acidAmount } from "./units-of.ts";
import { releaseState } from "./words.ts";

const acid = { type: "number", unit: acidAmount, format: "0.000", width: 10 } as const;

/** Nothing to say without these; ACIDTO says no by itself where one is out of range. */
const known = (r: References): readonly string[] => ["volume", "ph", "target"].map((id) => `NOT(ISNUMBER(${r.here(id)}))`).concat(`${r.here("acid")}=""`);

/** ACIDTO gives the usual product; of another purity it takes as much more or less as ACIDFOR says. */
function neededAcid(r: References): string {
  const usual = `BATH.ACIDTO(${r.here("volume")},${r.here("ph")},${r.here("target")},${r.here("acid")},${r.here("builderUsed")},${r.here("temperature")},${r.here("alkalinity")},${r.named("unitSystem")})`;
  const product = (purity: string): string => `BATH.ACIDFOR(${r.here("volume")},1,${r.here("acid")},${purity},${r.named("unitSystem")})`;
  return `${usual}*${product(r.here("purity"))}/${product("")}`;
}

/** What is to be worked out before anybody pours. */
export const releasePlan: readonly ComputedColumn[] = [
  computed({ id: "acidNeeded", label: "Acid needed", ...acid, help: "From the reading to the target pH. With a titration within about 15 %, without one a minimum: add in stages and read." },
    (r) => blankIf(known(r), neededAcid(r))),
  computed({ id: "acidBasis", label: "Worked out from", type: "text", width: 15, help: "Without a titration soil acids and carbonate do not show: the acid is a minimum." },
    (r) => blankIf([`${r.here("acidNeeded")}=""`], `IF(ISNUMBER(${r.here("alkalinity")}),"titration","pH alone: a minimum")`)),
  computed({ id: "firstStage", label: "First stage", ...acid, help: "60 % of it (common practice, no source). Mix, read, then decide the next." },
    (r) => blankIf([`${r.here("acidNeeded")}=""`], `IF(${r.here("acidNeeded")}=0,0,INDEX(BATH.ACIDSTAGES(${r.here("acidNeeded")}),1,1))`)),
  computed({ id: "corrosive", label: "Corrosive waste, D002", type: "text", width: 11, help: "By the pH before any acid: 2 or less, or 12.5 or more (40 CFR 261.22). It says nothing of metals." },
    (r) => blankIf([`NOT(ISNUMBER(${r.here("ph")}))`], `IF(BATH.CORROSIVE(${r.here("ph")}),"yes","no")`)),
];

/** Where it stands; never that it may go. */
export const releaseStanding: readonly ComputedColumn[] = [
  computed({ id: "lastPh", label: "Last pH", type: "number", format: "0.00", width: 8, help: "After the latest stage, or before any acid." },
    (r) => ["phAfter3", "phAfter2", "phAfter1", "ph"].reduceRight((otherwise, id) => `IF(ISNUMBER(${r.here(id)}),${r.here(id)},${otherwise})`, '""')),
  computed({ id: "limitCheck", label: "Against the limits", type: "text", width: 10, help: "Within, below or above the limits typed here, or else the shop's own. Within is no permission." },
    (r) => blankIf([`${r.here("lastPh")}=""`, `${r.here("lowUsed")}=""`, `${r.here("highUsed")}=""`],
      `BATH.DISCHARGECHECK(${r.here("lastPh")},${r.here("lowUsed")},${r.here("highUsed")})`)),
  computed({ id: "state", label: "State", type: "text", width: 20, help: "Stays not released until limits and results are in and the last pH is within the limits. Whether it may go, the permit says." },
    (r) => {
      const lacks: readonly (readonly [test: string, word: string])[] = [
        [`OR(${r.here("lowUsed")}="",${r.here("highUsed")}="")`, releaseState.limits],
        [`${r.here("lastPh")}=""`, releaseState.ph],
        [`${r.here("limitCheck")}="below"`, releaseState.below],
        [`${r.here("limitCheck")}="above"`, releaseState.above],
        [`${r.here("analysesResult")}="over a limit"`, releaseState.over],
        [`OR(${r.here("analysesResult")}="",${r.here("analysesResult")}="awaited")`, releaseState.results],
        [`NOT(ISNUMBER(${r.here("releasedAt")}))`, releaseState.entered],
        [`OR(NOT(ISNUMBER(${r.here("releasedVolume")})),${r.here("point")}="",${r.here("initials")}="",${r.here("permitUsed")}="")`, releaseState.incomplete],
      ];
      return blankIf([`${r.here("bath")}=""`], lacks.reduceRight((otherwise, [test, word]) => `IF(${test},${quoted(word)},${otherwise})`, quoted(releaseState.released)));
    }),
];

function ownOrShops(id: string, own: string, field: string, label: string, help: string): ComputedColumn {
  return helper({ id, label, type: "number", format: "General", width: 9, help }, (r) => `IF(${r.here(own)}<>"",${r.here(own)},IF(${r.named(field)}="","",${r.named(field)}))`);
}

export const releaseHelpers: readonly ComputedColumn[] = [
  ownOrShops("lowUsed", "limitLow", "sewerLow", "Low used", "The limit typed here, or else the shop's own."),
  ownOrShops("highUsed", "limitHigh", "sewerHigh", "High used", "The limit typed here, or else the shop's own."),
  ownOrShops("permitUsed", "permit", "permit", "Permit used", "The permit typed here, or else the shop's own."),
  helper({ id: "bathRow", label: "Bath row", type: "whole number", format: "0", width: 8, help: "Position in Baths." },
    (r) => positionOf(r, r.here("bath"), "baths", "bath")),
  helper({ id: "builderUsed", label: "Builder used", type: "text", width: 11, help: "Of the bath." },
    (r) => blankIf([`${r.here("bathRow")}=""`], at(r, "baths", "builderUsed", r.here("bathRow")))),
];
