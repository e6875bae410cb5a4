import { heatingEnergy } from "../../src/core/heat/heating.ts";
import { system } from "../arguments/arguments.ts";
import { inSystem } from "../arguments/in-system.ts";
import { defineFunction } from "../define-function.ts";
import { from, heatNotes, heatSource, to, volume } from "./heated-water.ts";

export const heatEnergy = defineFunction({
  id: "HEATENERGY",
  category: "Heat",
  summary: "Energy that heats a volume of water from one temperature to another, without losses.",
  arguments: [volume, from, to, system],
  result: { excelType: "number", dimensionality: "scalar", unit: "kWh", help: "energy in the water" },
  examples: [
    {
      formula: "=BATH.HEATENERGY(300,40,120)",
      cells: [300, 40, 120],
      result: 58.7,
      tolerance: 0.06,
      source:
        "300 × 8.3454 lb × 80 °F × 1 Btu/lb °F is 200,290 Btu or 58.7 kWh; water is a thousandth lighter and easier to heat",
    },
  ],
  notes: heatNotes,
  source: `Volume × ${heatSource}.`,
  compute: ([water, start, end], call) => inSystem("energy", heatingEnergy(water, start, end), call),
});
