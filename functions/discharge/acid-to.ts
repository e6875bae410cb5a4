import { acidToTarget } from "../../src/core/discharge/acid-to-target.ts";
import { phReading, system } from "../arguments/arguments.ts";
import { builder } from "../arguments/builder-argument.ts";
import { optionalQuantity, quantity } from "../arguments/quantity-argument.ts";
import { temperatureOf } from "../arguments/temperature-argument.ts";
import { defineFunction } from "../define-function.ts";
import { acid, acidInSystem, acidUnit } from "./acid-arguments.ts";
import { climbsBack } from "./acid-notes.ts";

export const acidTo = defineFunction({
  id: "ACIDTO",
  category: "Discharge",
  summary:
    "Acid that brings a bath to a pH; without a titration a minimum, since soil acids do not show in the reading.",
  arguments: [
    quantity("volume", { kind: "volume", help: "volume of the bath" }),
    phReading("ph", "the bath's pH now, cooled"),
    phReading("target_ph", "pH wanted, at the same temperature"),
    acid,
    builder,
    temperatureOf("the bath"),
    optionalQuantity("alkalinity_meq_L", {
      kind: "alkalinity",
      help: "alkalinity of the bath titrated to pH 4.5; left out: the result is a minimum",
      bareUnit: "meq/L",
    }),
    system,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: acidUnit,
    help: "acid as sold (see ACIDFOR); a minimum without a titration; 0 at or below the target",
  },
  examples: [
    {
      formula: '=BATH.ACIDTO(1000,11.8944,7,"citric",{"NaOH",24;"Na2SiO3",61.03;"Na2CO3",31.8},"25 C",,"metric")',
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
        "metric",
      ],
      result: 1.125,
      tolerance: 0.03,
      source:
        "17.63 meq/kg of citric acid at 64.04 g/eq, a silicate bath in purified water (PHREEQC 3.8.8); 2 % of it is carbon dioxide of that water",
    },
  ],
  notes: [
    "Without a titration the result is a minimum: a used bath of the same pH holds more, often several times more, bound by soil and carbon dioxide. For an unknown builder it is the least of all four. Titrate to pH 4.5 and give alkalinity_meq_L.",
    "With a titration the result came within 10 % to pH 7 where the builder is known and 16 % where it is not, for baths computed with PHREEQC; to pH 9 it can be half off. Add in stages (ACIDSTAGES).",
    climbsBack,
    "Closed to air; water taken as pure where there is no titration.",
  ],
  source:
    "Chemical equilibrium of the bath with the acid; a titration sets how much builder, partly used up, the bath holds.",
  compute: ([volume, reading, target, name, madeOf, temperature, titrated], call) => {
    const bath = { baseline: reading, temperature, builder: madeOf, alkalinity: undefined };
    return acidInSystem(acidToTarget({ volume, bath, titrated }, name, target), call);
  },
});
