import { heatingEnergy, heatingTime } from "../../src/core/heat/heating.ts";
import { system } from "../arguments/arguments.ts";
import { optionalFraction } from "../arguments/fraction-argument.ts";
import { quantity } from "../arguments/quantity-argument.ts";
import { defineFunction } from "../define-function.ts";
import { from, heatNotes, heatSource, to, volume } from "./heated-water.ts";

const secondsInHour = 3600;

const efficiency = optionalFraction(
  "efficiency",
  'share of the heaters\' power that ends in the water: 0.9 or "90%"; all of it if left out',
  1,
);

export const heatTime = defineFunction({
  id: "HEATTIME",
  category: "Heat",
  summary: "Hours that heaters take to bring a volume of water from one temperature to another.",
  arguments: [
    volume,
    from,
    to,
    quantity("kilowatts", { kind: "power", help: 'power of all heaters together, or text such as "20000 Btu/h"' }),
    efficiency,
    system,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "h",
    help: "hours; divided by 24, a time that Excel adds to a clock time",
  },
  examples: [
    {
      formula: "=BATH.HEATTIME(80,60,120,5.5)",
      cells: [80, 60, 120, 5.5],
      result: 2.13,
      tolerance: 0.005,
      source: "homepower.com, Useful Conversions and Calculations: 80 gallons by 60 °F with 5.5 kW in 2.13 h",
    },
    {
      formula: '=BATH.HEATTIME(80,60,120,5.5,"50%")',
      cells: [80, 60, 120, 5.5, "50%"],
      result: 4.26,
      tolerance: 0.01,
      source: "the same with half of the power lost: twice as long",
    },
  ],
  notes: [
    "Losses grow as the bath warms, so a full tank without a lid takes longer than any one efficiency says. Write down how long yours took and take the efficiency from that.",
    ...heatNotes,
  ],
  source: `Volume × ${heatSource}; divided by power × efficiency.`,
  compute: ([water, start, end, power, share]) =>
    heatingTime(heatingEnergy(water, start, end), power, share) / secondsInHour,
});
