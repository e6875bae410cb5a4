import { computed } from "./columns.ts";
import type { ComputedColumn } from "./definition.ts";
import { at, atOrBlank, blankIf, quoted } from "./formulas.ts";
import { hardness, volume } from "./units-of.ts";

const amount = { type: "number", unit: volume, format: "0.000", width: 11 } as const;

/** From tank, water and concentrate to the opening dose planned and poured. */
export const bathDose: readonly ComputedColumn[] = [
  computed({ id: "workingVolume", label: "Working volume", ...amount, format: "0.00", help: "Of the tank, at the fill line." },
    (r) => atOrBlank(r, "tanks", "workingVolume", r.here("tankRow"))),
  computed({ id: "hardness", label: "Hardness", type: "number", unit: hardness, format: "0", width: 11, help: "Of the water of the fill." },
    (r) => atOrBlank(r, "waters", "hardness", r.here("waterRow"))),
  computed({ id: "alkalinity", label: "Alkalinity", type: "number", unit: hardness, format: "0", width: 11, help: "Of the water of the fill." },
    (r) => atOrBlank(r, "waters", "alkalinity", r.here("waterRow"))),
  computed({ id: "baseDose", label: "Base dose", ...amount, help: "Concentrate for the strength wanted, before the water is looked at." },
    (r) => blankIf([`${r.here("workingVolume")}=""`, `${r.here("strength")}=""`],
      `BATH.DOSE(${r.here("workingVolume")},${r.here("strength")},${r.named("unitSystem")})`)),
  computed({ id: "hardnessDose", label: "Extra for hardness", ...amount, width: 13, help: "Concentrate that hardness above the label's takes up." },
    (r) => {
      const capacity = at(r, "concentrates", "capacity", r.here("concentrateRow"));
      const label = at(r, "concentrates", "labelHardness", r.here("concentrateRow"));
      return blankIf([`${r.here("workingVolume")}=""`, `${r.here("waterRow")}=""`, `${r.here("concentrateRow")}=""`],
        `IF(${r.here("hardness")}="","water not tested",IF(${r.here("hardness")}=0,0,IF(OR(${capacity}="",${capacity}=0),"capacity not known",` +
        `BATH.HARDNESSDOSE(${r.here("workingVolume")},${r.here("hardness")},${capacity},${label},${r.named("unitSystem")}))))`);
    }),
  computed({ id: "alkalinityDose", label: "Extra for alkalinity", ...amount, width: 13, help: "Concentrate that the water's bicarbonate uses up." },
    (r) => {
      const strength = at(r, "concentrates", "alkalinityStrength", r.here("concentrateRow"));
      return blankIf([`${r.here("workingVolume")}=""`, `${r.here("waterRow")}=""`, `${r.here("concentrateRow")}=""`],
        `IF(${r.here("alkalinity")}="","water not tested",IF(${r.here("alkalinity")}=0,0,IF(OR(${strength}="",${strength}=0),"strength not known",` +
        `BATH.ALKALINITYDOSE(${r.here("workingVolume")},${r.here("alkalinity")},${strength},${r.named("unitSystem")}))))`);
    }),
  computed({ id: "plannedDose", label: "Planned dose", ...amount, help: "Base dose and those extras that could be worked out; where an extra is in words, it is not in here." },
    (r) => blankIf([`${r.here("baseDose")}=""`], `SUM(${r.here("baseDose")},${r.here("hardnessDose")},${r.here("alkalinityDose")})`)),
  computed({ id: "openingDose", label: "Opening dose added", ...amount, help: "Concentrate logged under Additions as opening." },
    (r) => {
      const sum = `SUMIFS(${r.all("additions", "amount")},${r.all("additions", "bath")},${r.here("bath")},${r.all("additions", "kind")},${quoted("concentrate")},${r.all("additions", "purpose")},${quoted("opening")})`;
      return blankIf([`${r.here("bath")}=""`], `IF(${sum}=0,"",${sum})`);
    }),
  computed({ id: "strengthReached", label: "Strength reached", type: "text", width: 10, help: "Opening dose in the working volume, as 1+N." },
    (r) => blankIf([`${r.here("openingDose")}=""`, `${r.here("workingVolume")}=""`],
      `"1+"&ROUND(BATH.STRENGTHOF(${r.here("openingDose")},${r.here("workingVolume")},"parts"),1)`)),
];
