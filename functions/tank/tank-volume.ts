import { rectangularTankVolume } from "../../src/core/tank/rectangular-tank.ts";
import { cubicMeters } from "../../src/core/units/quantity.ts";
import { system } from "../arguments/arguments.ts";
import { inSystem } from "../arguments/in-system.ts";
import { optionalQuantity, quantity } from "../arguments/quantity-argument.ts";
import { defineFunction } from "../define-function.ts";
import { bareLengthNote, checkBareLengths } from "./bare-lengths.ts";

export const tankVolume = defineFunction({
  id: "TANKVOLUME",
  category: "Tank",
  summary: "Working volume of a rectangular tank, or the volume of a change of level.",
  arguments: [
    quantity("length", { kind: "length", help: "inside length" }),
    quantity("width", { kind: "length", help: "inside width" }),
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
      formula: "=BATH.TANKVOLUME(48,24,25,3.5)",
      cells: [48, 24, 25, 3.5],
      result: 121.175,
      tolerance: 0.01,
      source: "length × width × depth / 231 − displacement, 231 cubic inches to the US gallon by definition",
    },
    {
      formula: "=BATH.TANKVOLUME(48,24,1)",
      cells: [48, 24, 1],
      result: 4.987,
      tolerance: 0.001,
      source: "one inch of level: length × width / 231",
    },
  ],
  notes: [
    "Measure inside and to the fill line: outside sizes and nominal gallons are often wrong.",
    bareLengthNote,
    "Does not know sloped floors or rounded corners; a metered fill checks the result.",
  ],
  source: "Length × width × depth − displacement.",
  compute: ([length, width, depth, displacement], call) => {
    const volume = rectangularTankVolume({ length, width, depth, displacement: displacement ?? cubicMeters(0) });
    checkBareLengths(call, ["length", "width"], { across: [length, width], volume });
    return inSystem("volume", volume, call);
  },
});
