import { acidToTarget } from "../../src/core/discharge/acid-to-target.ts";
import { phReading, system } from "../arguments/arguments.ts";
import { builder } from "../arguments/builder-argument.ts";
import { quantity } from "../arguments/quantity-argument.ts";
import { temperatureOf } from "../arguments/temperature-argument.ts";
import { defineFunction } from "../define-function.ts";
import { acid, acidInSystem, acidUnit, purity } from "./acid-arguments.ts";
import { climbsBack, neutralizingHeats } from "./acid-notes.ts";
import { totalAlkalinity } from "./bath-alkalinity.ts";

export const acidTo = defineFunction({
  id: "ACIDTO",
  category: "Discharge",
  summary:
    "Acid that brings a bath to a pH; without a titration a minimum, since soil acids do not show in the reading.",
  arguments: [
    quantity("volume", { kind: "volume", help: "volume of the bath" }),
    phReading("ph", "the bath's pH now, cooled; not within 0.1 of 12.5 or above, which is hazardous waste (D002)"),
    phReading("target_ph", "pH wanted, at the same temperature; at least 6"),
    acid,
    builder,
    temperatureOf("the bath, at most 104 °F (40 °C)", true),
    totalAlkalinity,
    purity,
    system,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: acidUnit,
    help: "acid as sold; a minimum without a titration; 0 at or below the target",
  },
  examples: [
    {
      formula: '=BATH.ACIDTO(1000,11.8944,7,"citric",{"NaOH",24;"Na2SiO3",61.03;"Na2CO3",31.8},"25 C",,,"metric")',
      cells: [
        1000,
        11.8944,
        7,
        "citric",
        [
          ["NaOH", 24],
          ["Na2SiO3", 61.03],
          ["Na2CO3", 31.8],
        ],
        "25 C",
        null,
        null,
        "metric",
      ],
      result: 1.125,
      tolerance: 0.03,
      source:
        "17.63 meq/kg of citric acid at 64.04 g/eq, a silicate bath in purified water (PHREEQC 3.8.8); 2 % of it is carbon dioxide of that water",
    },
  ],
  notes: [
    "Without a titration the result is a minimum: a used bath of the same pH holds more, often several times more, bound by soil and carbon dioxide. For an unknown builder it is the least of all four. Titrate to pH 4.5 and give the alkalinity.",
    "With a titration the result came within 10 % to pH 7 where the builder is known and 16 % where it is not, for baths computed with PHREEQC; to pH 9 it can be half off. Add in stages (ACIDSTAGES).",
    "Refuses a target under 6 (the federal floor is 5.0, and so near it a little acid moves the pH far), a bath above 104 °F (acid makes it foam and spit) and one within 0.1 of pH 12.5 or above (hazardous waste before any acid).",
    climbsBack,
    neutralizingHeats,
    "Closed to air; water taken as pure where there is no titration.",
  ],
  source:
    "Chemical equilibrium of the bath with the acid; a titration sets how much builder, partly used up, the bath holds.",
  compute: ([volume, reading, target, name, madeOf, temperature, titrated, percent], call) => {
    const bath = { baseline: reading, temperature, builder: madeOf, alkalinity: undefined };
    return acidInSystem(acidToTarget({ volume, bath, titrated }, name, target, percent), call);
  },
});
