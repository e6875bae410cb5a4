import { computed, helper } from "./columns.ts";
import type { ComputedColumn } from "./definition.ts";
import { at, blankIf, positionOf } from "./formulas.ts";
import { volume } from "./units-of.ts";

export const careResults: readonly ComputedColumn[] = [
  computed({ id: "concentrateLost", label: "Concentrate lost", type: "number", unit: volume, format: "0.000", width: 11, help: "What the solution taken out had held, at the strength of the opening dose." },
    (r) => {
      const [dose, held] = [at(r, "baths", "openingDose", r.here("bathRow")), at(r, "baths", "workingVolume", r.here("bathRow"))];
      return blankIf([`${r.here("bathRow")}=""`, `NOT(ISNUMBER(${r.here("amount")}))`], `IF(OR(${dose}="",${held}=""),"",${r.here("amount")}*${dose}/${held})`);
    }),
  computed({ id: "aboveWater", label: "Rinse above the water, pH", type: "number", format: "+0.00;-0.00;0.00", width: 11, help: "Rinse less the pH of the bath's water: how much alkali the rinse holds. When to dump it is the shop's own rule." },
    (r) => {
      const water = at(r, "baths", "waterRow", r.here("bathRow"));
      const supply = at(r, "waters", "ph", water);
      return blankIf([`${r.here("bathRow")}=""`, `NOT(ISNUMBER(${r.here("rinsePh")}))`], `IF(${water}="","",IF(NOT(ISNUMBER(${supply})),"",ROUND(${r.here("rinsePh")}-${supply},2)))`);
    }),
  helper({ id: "bathRow", label: "Bath row", type: "whole number", format: "0", width: 8, help: "Position in Baths." },
    (r) => positionOf(r, r.here("bath"), "baths", "bath")),
];
