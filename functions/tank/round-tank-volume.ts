import { roundTankVolume as volumeOf } from "../../src/core/tank/round-tank.ts";
import { cubicMeters } from "../../src/core/units/quantity.ts";
import { system } from "../arguments/arguments.ts";
import { inSystem } from "../arguments/in-system.ts";
import { optionalQuantity, quantity } from "../arguments/quantity-argument.ts";
import { defineFunction } from "../define-function.ts";
import { bareLengthNote, checkBareLengths } from "./bare-lengths.ts";

export const roundTankVolume = defineFunction({
  id: "ROUNDTANKVOLUME",
  category: "Tank",
  summary: "Working volume of a round tank or drum that stands upright, or the volume of a change of level.",
  arguments: [
    quantity("diameter", { kind: "length", help: "inside diameter, wall to wall" }),
    quantity("depth", { kind: "length", help: "depth of liquid to the fill line, or a change of level" }),
    optionalQuantity("displacement", {
      kind: "volume",
      help: "volume taken up by racks, transducers and load; none if left out",
    }),
    system,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "US gal (US), L (metric), imperial gal (imperial)",
    help: "volume of liquid",
  },
  examples: [
    {
      formula: "=BATH.ROUNDTANKVOLUME(24,20)",
      cells: [24, 20],
      result: 39.17,
      tolerance: 0.01,
      source: "Henley's formula book: diameter² × 0.7854 × depth / 231 US gallons",
    },
    {
      formula: '=BATH.ROUNDTANKVOLUME("16 ft","2 ft")',
      cells: ["16 ft", "2 ft"],
      result: 3008.1,
      tolerance: 0.05,
      source: "π/4 × 16² × 2 cubic feet at 1728/231 gallons each",
    },
  ],
  notes: [
    "Measure inside and to the fill line. A tape around the outside gives the circumference: divide by 3.1416 and take off two walls.",
    bareLengthNote,
    "Does not know coned or dished bottoms, nor a drum on its side; a metered fill checks the result.",
  ],
  source: "π/4 × diameter² × depth − displacement.",
  compute: ([diameter, depth, displacement], call) => {
    const volume = volumeOf({ diameter, depth, displacement: displacement ?? cubicMeters(0) });
    checkBareLengths(call, ["diameter"], { across: [diameter, diameter], volume });
    return inSystem("volume", volume, call);
  },
});
