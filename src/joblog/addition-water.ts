import { mostCarriedOut } from "../core/bath/common-practice.ts";
import { computed, helper } from "./columns.ts";
import type { ComputedColumn, References } from "./definition.ts";
import { after, at, before, blankIf, litersInUnit, quoted, upTo, where } from "./formulas.ts";
import { alkaliAdded, hardnessAdded, volume } from "./units-of.ts";

const amount = { type: "number", unit: volume, format: "0.000", width: 11 } as const;

/** What the water's test says, times the liters that went in. */
function carried(r: References, column: string, perLiter: (tested: string) => string): string {
  const tested = at(r, "waters", column, r.here("waterRow"));
  const liters = `${r.here("amount")}*${litersInUnit(r)}`;
  return blankIf([`${r.here("kind")}<>"water"`, `NOT(ISNUMBER(${r.here("amount")}))`, `${r.here("waterRow")}=""`],
    `IF(NOT(ISNUMBER(${tested})),"water not tested",${liters}*${perLiter(tested)}/1000)`);
}

/** Level make-up with water: part of what is missing evaporated, part left as solution. */
function split(id: string, label: string, place: number, help: string): ComputedColumn {
  return computed({ id, label, ...amount, help }, (r) => {
    const out = `(${r.here("loadsSince")}*${r.here("dragOut")}+${r.here("drainedSince")})`;
    const parts = `BATH.MAKEUP(${r.here("levelLoss")},${r.here("loadsSince")},${r.here("dragOut")},${r.here("drainedSince")},${r.here("strength")})`;
    const instead = (word: string): string => (place === 1 ? quoted(word) : '""');
    return blankIf([`${r.here("levelLoss")}=""`, `${r.here("strength")}=""`],
      `IF(${r.here("dragOut")}="",${instead("drag-out of the tank missing")},IF(${r.here("levelLoss")}<=0,${instead("level did not fall")},` +
      `IF(${out}>${String(mostCarriedOut)}*${r.here("levelLoss")},${instead("more left than the level fell: check")},INDEX(${parts},1,${String(place)}))))`);
  });
}

export const additionWater: readonly ComputedColumn[] = [
  split("evaporated", "Evaporated", 1, "Of the water made up, what had gone as vapor: it took no concentrate along."),
  split("carriedOut", "Left as solution", 2, "Carried out by the loads since the last water, and drained: it took its concentrate along."),
  split("concentrateDue", "Concentrate with it", 3, "What the solution that left had held: goes in with the water, then mix and read."),
  computed({ id: "hardnessCarried", label: "Hardness brought", type: "number", unit: hardnessAdded, format: "0.0", width: 11, help: "That this water brought into the bath." },
    (r) => carried(r, "hardness", (tested) => tested)),
  computed({ id: "bicarbonateCarried", label: "Bicarbonate brought", type: "number", unit: alkaliAdded, format: "0.000", width: 11, help: "That this water brought: each eq uses up one of hydroxide." },
    (r) => carried(r, "alkalinity", (tested) => `BATH.UNITCONVERT(${tested},"mg/L CaCO3","meq/L")`)),
];

/** Where the bath's tank stands in Tanks; blank for a tank that is not there. Only where the bath is known. */
const tankRow = (r: References): string => at(r, "baths", "tankRow", r.here("bathRow"));

export const additionWaterHelpers: readonly ComputedColumn[] = [
  helper({ id: "waterBefore", label: "Water before", type: "date and time", width: 16, help: "When the bath was last filled or made up with water; 0 if never." },
    (r) => blankIf([`${r.here("bathRow")}=""`, `${r.here("kind")}<>"water"`, `${r.here("purpose")}<>"make-up"`, `NOT(ISNUMBER(${r.here("when")}))`],
      `MAXIFS(${r.all("additions", "when")},${where([
        [r.all("additions", "bath"), r.here("bath")],
        [r.all("additions", "kind"), quoted("water")],
        [r.all("additions", "when"), before(r.here("when"))],
      ])})`)),
  helper({ id: "levelLoss", label: "Lost since", type: "number", unit: volume, format: "0.000", width: 9, help: "Rise of the level now, and the concentrate that had held the level up since the water before." },
    (r) => blankIf([`${r.here("waterBefore")}=""`, `NOT(ISNUMBER(${r.here("levelBefore")}))`, `NOT(ISNUMBER(${r.here("levelAfter")}))`],
      `IF(${tankRow(r)}="","",(${r.here("levelAfter")}-${r.here("levelBefore")})*${at(r, "tanks", "volumePerDepth", tankRow(r))}+` +
      `SUMIFS(${r.all("additions", "amount")},${since(r, "additions")},${r.all("additions", "kind")},${quoted("concentrate")},${r.all("additions", "purpose")},${quoted("<>opening")}))`)),
  helper({ id: "dragOut", label: "Carried out by a load", type: "number", unit: volume, format: "0.00#", width: 9, help: "Of the bath's tank; blank where it is not known." },
    (r) => {
      const tank = at(r, "tanks", "dragOut", tankRow(r));
      return blankIf([`${r.here("waterBefore")}=""`], `IF(${tankRow(r)}="","",IF(SUM(${tank})>0,${tank},""))`);
    }),
  helper({ id: "loadsSince", label: "Loads since", type: "whole number", format: "0", width: 8, help: "Loads of the bath since the water before." },
    (r) => blankIf([`${r.here("waterBefore")}=""`], `COUNTIFS(${since(r, "loads")})`)),
  helper({ id: "drainedSince", label: "Drained since", type: "number", unit: volume, format: "0.00#", width: 9, help: "Skimmed and drained since the water before, from Care." },
    (r) => blankIf([`${r.here("waterBefore")}=""`], `SUMIFS(${r.all("care", "amount")},${since(r, "care")})`)),
  helper({ id: "strength", label: "Strength", type: "share", format: "0.00%", width: 8, help: "Opening dose in the working volume." },
    (r) => {
      const [dose, held] = [at(r, "baths", "openingDose", r.here("bathRow")), at(r, "baths", "workingVolume", r.here("bathRow"))];
      return blankIf([`${r.here("waterBefore")}=""`], `IF(OR(${dose}="",${held}=""),"",${dose}/${held})`);
    }),
];

/** Rows of the bath from the water before to this addition. */
function since(r: References, table: "loads" | "care" | "additions"): string {
  return where([
    [r.all(table, "bath"), r.here("bath")],
    [r.all(table, "when"), after(r.here("waterBefore"))],
    [r.all(table, "when"), upTo(r.here("when"))],
  ]);
}
