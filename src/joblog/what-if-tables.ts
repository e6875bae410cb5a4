import { computed, numberInput, textInput } from "./columns.ts";
import type { ComputedColumn, References, TableDefinition } from "./definition.ts";
import { at, blankIf } from "./formulas.ts";
import { between, hardness, temperature, temperatureLimits, volume } from "./units-of.ts";

const amount = { type: "number", unit: volume, format: "0.000", width: 19 } as const;

function doseAt(id: string, label: string, times: string): ComputedColumn {
  return computed({ id, label, ...amount, help: "Concentrate for a finished bath of that volume." },
    (r) => blankIf([`${r.here("strength")}=""`, `${r.named("whatIfVolume")}=""`], `BATH.DOSE(${times}*${r.named("whatIfVolume")},${r.here("strength")},${r.named("unitSystem")})`));
}

const doses: TableDefinition = {
  id: "whatIfDoses",
  name: "WhatIfDoses",
  caption: "Doses: strengths by volumes",
  emptyRows: 5,
  start: () => ["1+20", "1+28", "1+40", "1+64", "2.5%"].map((strength) => ({ strength })),
  columns: [
    textInput({ id: "strength", label: "Strength", width: 20, help: "Written 1+40, 1 in 40, 2.5% or 3 fl oz/gal." }),
    doseAt("half", "Half the volume", "0.5"),
    doseAt("full", "The volume", "1"),
    doseAt("oneAndHalf", "One and a half", "1.5"),
    doseAt("twice", "Twice the volume", "2"),
  ],
};

const baselineMissing = (r: References): string => `${r.named("baselineTried")}=""`;

const card: TableDefinition = {
  id: "whatIfCard",
  name: "WhatIfCard",
  caption: "Card for the tank: a top-up is due at or under this pH",
  emptyRows: 9,
  start: (system) => (system === "US" ? [68, 77, 86, 95, 104, 113, 122, 131, 140] : [20, 25, 30, 35, 40, 45, 50, 55, 60]).map((one) => ({ temperature: one })),
  columns: [
    numberInput({ id: "temperature", label: "Sample", unit: temperature, limits: temperatureLimits, format: "0", width: 20, help: "Temperature of the sample when it is read." }),
    computed({ id: "baselineThere", label: "The baseline reads", type: "number", format: "0.00", width: 19, help: "The fresh bath at that temperature, with a perfect meter." },
      (r) => blankIf([baselineMissing(r), `NOT(ISNUMBER(${r.here("temperature")}))`],
        `BATH.PHAT(${r.named("baselineTried")},${r.named("temperatureTried")},${r.here("temperature")},${r.named("builderTried")},${r.named("alkalinityTried")},${r.named("unitSystem")})`)),
    computed({ id: "trigger", label: "Top up at", type: "number", format: "0.00", width: 19, help: "Best figure; near it, cool the sample and read again." },
      (r) => blankIf([baselineMissing(r), `NOT(ISNUMBER(${r.here("temperature")}))`],
        `BATH.TRIGGER(${r.named("baselineTried")},${r.named("dropTried")},${r.named("temperatureTried")},${r.here("temperature")},${r.named("builderTried")},${r.named("alkalinityTried")},${r.named("unitSystem")})`)),
  ],
};

function topUp(id: string, label: string, place: number, help: string): ComputedColumn {
  return computed({ id, label, ...amount, help }, (r) => blankIf([`${r.here("reading")}=""`, `${r.named("openingTried")}=""`],
    `INDEX(BATH.TOPUPRANGE(${r.named("openingTried")},${r.named("baselineTried")},${r.here("reading")},${r.named("builderTried")},${r.named("temperatureTried")},${r.named("alkalinityTried")},${r.named("houseShare")},${r.named("unitSystem")}),1,${String(place)})`));
}

const topUps: TableDefinition = {
  id: "whatIfTopUps",
  name: "WhatIfTopUps",
  caption: "Top-ups: from a fall of the pH back to the baseline",
  emptyRows: 7,
  start: () => [0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1].map((fall) => ({ fall })),
  columns: [
    numberInput({ id: "fall", label: "Under the baseline, pH", limits: between(0, 5), format: "0.00", width: 20, help: "At the baseline's temperature." }),
    computed({ id: "reading", label: "Reads", type: "number", format: "0.00", width: 19, help: "The baseline less the fall." },
      (r) => blankIf([baselineMissing(r), `NOT(ISNUMBER(${r.here("fall")}))`], `ROUND(${r.named("baselineTried")}-${r.here("fall")},2)`)),
    topUp("low", "Low", 1, "Lowest likely top-up."),
    topUp("best", "Best", 2, "Best estimate."),
    topUp("high", "High", 3, "Highest likely top-up."),
    topUp("first", "First addition", 4, "Add this, mix, read again."),
  ],
};

function extra(id: string, label: string, test: "hardness" | "alkalinity", help: string): ComputedColumn {
  return computed({ id, label, ...amount, help }, (r) => {
    const concentrate = (column: string): string => at(r, "concentrates", column, `MATCH(${r.named("whatIfConcentrate")},${r.all("concentrates", "concentrate")},0)`);
    const figure = concentrate(test === "hardness" ? "capacity" : "alkalinityStrength");
    const dose = test === "hardness"
      ? `BATH.HARDNESSDOSE(${r.named("whatIfVolume")},${r.here(test)},${figure},${concentrate("labelHardness")},${r.named("unitSystem")})`
      : `BATH.ALKALINITYDOSE(${r.named("whatIfVolume")},${r.here(test)},${figure},${r.named("unitSystem")})`;
    return blankIf([`${r.here("water")}=""`, `NOT(ISNUMBER(${r.here(test)}))`],
      `IF(${r.named("whatIfConcentrate")}="","choose a concentrate",IF(${r.here(test)}=0,0,IF(OR(${figure}="",${figure}=0),"not known",${dose})))`);
  });
}

const labLimits = between(0, 5000);

const waters: TableDefinition = {
  id: "whatIfWaters",
  name: "WhatIfWaters",
  caption: "Waters: what hardness and alkalinity cost in concentrate (invented examples: type your own)",
  emptyRows: 4,
  start: () => [{ water: "RO", hardness: 5, alkalinity: 5 }, { water: "softened", hardness: 10, alkalinity: 200 }, { water: "hard", hardness: 300, alkalinity: 200 }],
  columns: [
    textInput({ id: "water", label: "Water", width: 20, help: "Any name." }),
    numberInput({ id: "hardness", label: "Hardness", unit: hardness, limits: labLimits, format: "0", width: 19, help: "Softening takes it away." }),
    numberInput({ id: "alkalinity", label: "Alkalinity", unit: hardness, limits: labLimits, format: "0", width: 19, help: "Softening leaves it." }),
    extra("forHardness", "Extra for hardness", "hardness", "Above what the label's strength allows for."),
    extra("forAlkalinity", "Extra for alkalinity", "alkalinity", "What the bicarbonate uses up."),
    computed({ id: "together", label: "Extra together", ...amount, help: "On top of the dose of the label." },
      (r) => blankIf([`COUNT(${r.here("forHardness")},${r.here("forAlkalinity")})=0`], `SUM(${r.here("forHardness")},${r.here("forAlkalinity")})`)),
  ],
};

export const whatIfTables: readonly TableDefinition[] = [card, topUps, doses, waters];
