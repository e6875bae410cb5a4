import { tankVolume } from "../../../../functions/tank/tank-volume.ts";
import { call } from "../../formula/calls.ts";
import { blankIf } from "../../formula/choices.ts";
import { isBlank } from "../../formula/conditions.ts";
import { columnsOf, nameInput, numberInput, textInput } from "../../model/columns.ts";
import type { TableDefinition } from "../../model/definition.ts";
import { between, depth, depthLimits, power, volume, volumeByDepth, volumeLimits } from "../../model/units-of.ts";

const { computed } = columnsOf<"tanks">();

export const tanksTable: TableDefinition = {
  id: "tanks",
  name: "Tanks",
  caption: "Tanks: measure inside, to the fill line",
  emptyRows: 3,
  columns: [
    nameInput({ id: "tank", label: "Tank", width: 13, help: "Short name, as painted on the tank." }),
    numberInput({
      id: "length",
      label: "Inside length",
      unit: depth,
      limits: depthLimits,
      format: "0.0#",
      width: 11,
      required: true,
      help: "Inside, not outside.",
    }),
    numberInput({
      id: "width",
      label: "Inside width",
      unit: depth,
      limits: depthLimits,
      format: "0.0#",
      width: 11,
      required: true,
      help: "Inside, not outside.",
    }),
    numberInput({
      id: "fillDepth",
      label: "Fill depth",
      unit: depth,
      limits: depthLimits,
      format: "0.0#",
      width: 11,
      required: true,
      help: "From the floor to the fill line, not to the rim.",
    }),
    numberInput({
      id: "displacement",
      label: "Displacement",
      unit: volume,
      limits: volumeLimits,
      format: "0.0##",
      width: 13,
      help: "Volume that racks and transducers take up.",
    }),
    numberInput({
      id: "heater",
      label: "Heater",
      unit: power,
      limits: between(0, 500),
      format: "0.0#",
      width: 11,
      help: "Rated heating power.",
    }),
    numberInput({
      id: "dragOut",
      label: "Drag-out per load",
      unit: volume,
      limits: volumeLimits,
      format: "0.00#",
      width: 11,
      help: "Solution that the baskets and pieces of one load carry out; splits a drop of the level into drag-out and evaporation.",
    }),
    numberInput({
      id: "height",
      label: "Inside height",
      unit: depth,
      limits: depthLimits,
      format: "0.0#",
      width: 10,
      help: "From the floor to the rim; tells whether there is room for an addition.",
    }),
    textInput({ id: "note", label: "Note", width: 10, help: "Lid, set temperature, date measured." }),
    computed(
      {
        id: "workingVolume",
        label: "Working volume",
        type: "number",
        unit: volume,
        format: "0.00",
        width: 11,
        help: "Liquid at the fill line, less the displacement.",
      },
      ({ length, width, fillDepth, displacement }, { named: { unitSystem } }) =>
        blankIf(
          [isBlank(length), isBlank(width), isBlank(fillDepth)],
          call(tankVolume, { length, width, depth: fillDepth, displacement, system: unitSystem }),
        ),
    ),
    computed(
      {
        id: "volumePerDepth",
        label: "Volume by level",
        type: "number",
        unit: volumeByDepth,
        format: "0.000",
        width: 9,
        help: "What one unit of level holds: for make-up from the drop of the level.",
      },
      ({ length, width }, { named: { unitSystem } }) =>
        blankIf(
          [isBlank(length), isBlank(width)],
          call(tankVolume, { length, width, depth: 1, displacement: 0, system: unitSystem }),
        ),
    ),
  ],
};
