import type { Solution } from "../../src/core/chemistry/solve.ts";
import { solve } from "../../src/core/chemistry/solve.ts";
import { checkWithin } from "../../src/core/limits/domain.ts";
import { bathTemperature } from "../../src/core/limits/domains.ts";
import { system } from "../arguments/arguments.ts";
import type { CellMatrix } from "../define-function.ts";
import { defineFunction } from "../define-function.ts";
import { composition, solutionNotes, solutionTemperature } from "./composition-argument.ts";

const milli = 1000;

function rowsOf({ pH, ionicStrength, alkalinities, bufferIntensity, calcite, brucite }: Solution): CellMatrix {
  return [
    ["pH", pH],
    ["Ionic strength, mol/kg", ionicStrength],
    ["Alkalinity to pH 8.3, meq/kg", milli * alkalinities.phenolphthalein],
    ["Alkalinity to pH 4.5, meq/kg", milli * alkalinities.total],
    ["Buffer intensity, meq/kg per pH", milli * bufferIntensity],
    ["Saturation index of calcite", calcite.saturationIndex ?? "no calcium or no carbonate"],
    ["Saturation index of brucite", brucite.saturationIndex ?? "no magnesium"],
  ];
}

export const solution = defineFunction({
  id: "SOLUTION",
  category: "Solution chemistry",
  summary:
    "Returns a table of pH, ionic strength, alkalinity to pH 8.3 and 4.5, buffer intensity and saturation indices, with labels.",
  arguments: [composition, solutionTemperature, system],
  result: {
    excelType: "any",
    dimensionality: "matrix",
    unit: "as each label says, per kg of water",
    help: "seven rows: label, value; words where an index does not exist",
  },
  examples: [
    {
      formula: '=BATH.SOLUTION({"NaOH",0.001})',
      cells: [[["NaOH", 0.001]]],
      result: [
        ["pH", 10.98],
        ["Ionic strength, mol/kg", 0.001],
        ["Alkalinity to pH 8.3, meq/kg", 1],
        ["Alkalinity to pH 4.5, meq/kg", 1.03],
        ["Buffer intensity, meq/kg per pH", 2.3],
        ["Saturation index of calcite", "no calcium or no carbonate"],
        ["Saturation index of brucite", "no magnesium"],
      ],
      tolerance: 0.03,
      source:
        "1 meq/kg of strong base: pKw 13.995 − 3 − 0.015 (Debye–Hückel); 0.03 more to pH 4.5; ln 10 times the hydroxide",
    },
  ],
  notes: solutionNotes,
  source:
    "As SOLUTIONPH; alkalinities are the strong acid to each end point at the temperature, buffer intensity the base per unit of pH.",
  compute: ([dissolved, temperature]) => {
    checkWithin("temperature", temperature, bathTemperature);
    return rowsOf(solve(dissolved, temperature));
  },
});
