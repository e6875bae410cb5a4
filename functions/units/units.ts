import { quantityKinds } from "../../src/core/units/quantity.ts";
import type { UnitDefinition } from "../../src/core/units/unit-definition.ts";
import { unitTable } from "../../src/core/units/unit-table.ts";
import { optionalChoice } from "../arguments/arguments.ts";
import type { CellValue } from "../define-function.ts";
import { defineFunction } from "../define-function.ts";

const headers = ["Symbol", "Also read", "Name", "Kind", "Factor to SI", "Definition"];

function rowOf(unit: UnitDefinition): CellValue[] {
  const factor = unit.scale.type === "parts" ? "" : unit.scale.factor;
  return [unit.symbol, unit.spellings.join("; "), unit.name, unit.kind, factor, unit.definition];
}

export const units = defineFunction({
  id: "UNITS",
  category: "Units and strength",
  summary:
    "Returns the table of units: symbol, other spellings, name, kind, factor to SI and where the factor comes from.",
  arguments: [optionalChoice("kind", `only this kind: ${quantityKinds.join(", ")}`, quantityKinds)],
  result: { excelType: "any", dimensionality: "matrix", help: "one header row, then one row per unit" },
  examples: [
    {
      formula: '=BATH.UNITS("temperature difference")',
      cells: ["temperature difference"],
      result: [
        headers,
        [
          "Δ°C",
          "C°; delta C; ΔC; C difference; °C difference; delta °C; ΔK; delta K",
          "Celsius degree of difference",
          "temperature difference",
          1,
          "1 K exactly",
        ],
        [
          "Δ°F",
          "F°; delta F; ΔF; F difference; °F difference; delta °F",
          "Fahrenheit degree of difference",
          "temperature difference",
          5 / 9,
          "5/9 K exactly",
        ],
      ],
      source: "one Fahrenheit degree is 5/9 of a kelvin by definition",
    },
  ],
  notes: ["Strength in parts and temperatures with their own zero need more than a factor; their definition says how."],
  source: "Exact definitions, named in the last column.",
  compute: ([kind]) => [headers, ...unitTable.filter((unit) => kind === undefined || unit.kind === kind).map(rowOf)],
});
