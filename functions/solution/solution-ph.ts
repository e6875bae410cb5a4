import { phOf } from "../../src/core/chemistry/ph-of.ts";
import { checkWithin } from "../../src/core/limits/domain.ts";
import { bathTemperature } from "../../src/core/limits/domains.ts";
import { system } from "../arguments/arguments.ts";
import { defineFunction } from "../define-function.ts";
import { composition, solutionNotes, solutionTemperature } from "./composition-argument.ts";

export const solutionPh = defineFunction({
  id: "SOLUTIONPH",
  category: "Solution chemistry",
  summary: "pH of a solution of known composition, closed to air.",
  arguments: [composition, solutionTemperature, system],
  result: { excelType: "number", dimensionality: "scalar", unit: "pH", help: "pH at the temperature" },
  examples: [
    {
      formula: '=BATH.SOLUTIONPH({"NaHCO3",0.025;"Na2CO3",0.025})',
      cells: [
        [
          ["NaHCO3", 0.025],
          ["Na2CO3", 0.025],
        ],
      ],
      result: 10.012,
      tolerance: 0.03,
      source: "primary standard, J. Res. NBS 73A (1969): 10.012 at 25 °C",
    },
    {
      formula: '=BATH.SOLUTIONPH({"borax",0.01},"60 C")',
      cells: [[["borax", 0.01]], "60 C"],
      result: 8.962,
      tolerance: 0.03,
      source: "primary standard, NIST: 8.962 at 60 °C",
    },
  ],
  notes: solutionNotes,
  source:
    "Charge and mass balance with activity coefficients after Truesdell and Jones; its constants and how far to trust them are told at the end of the reference.",
  compute: ([dissolved, temperature]) => {
    checkWithin("temperature", temperature, bathTemperature);
    return phOf(dissolved, temperature);
  },
});
