import { readFileSync } from "node:fs";

import { atomicWeights } from "../../../src/core/chemistry/chemicals/molar-mass.ts";
import * as acid from "../../../src/core/chemistry/constants/acid-constants.ts";
import type { EquilibriumConstant } from "../../../src/core/chemistry/constants/equilibrium-constant.ts";
import * as mineral from "../../../src/core/chemistry/constants/mineral-constants.ts";
import * as pair from "../../../src/core/chemistry/constants/pair-constants.ts";
import type { SpeciesDefinition } from "../../../src/core/chemistry/equilibrium/species-definition.ts";
import {
  cationFamilies,
  hydrogenIon,
  hydroxide,
  ligandFamilies,
} from "../../../src/core/chemistry/equilibrium/species-table.ts";
import { acidProducts } from "../../../src/core/discharge/acid-products.ts";
import { standardBuffers } from "../../../src/core/meter/standard-buffers.ts";

/** A constant as the code has it. */
interface ConstantInUse {
  readonly module: string;
  readonly constant: string;
  readonly part: string;
  readonly value: number;
}

type Part = readonly [part: string, value: number];

/** A term or heat capacity of 0 is one that the source does not have. */
function partsOf(constant: EquilibriumConstant): readonly Part[] {
  if (constant.type === "water") return [];
  const parts: readonly Part[] =
    constant.type === "heat"
      ? [["heat capacity", constant.heatCapacity]]
      : [
          ["constant", constant.constant],
          ["linear", constant.linear],
          ["inverse", constant.inverse],
          ["logarithm", constant.logarithm],
          ["inverse square", constant.inverseSquare],
        ];
  const always: readonly Part[] =
    constant.type === "heat"
      ? [
          ["log K", constant.logKAt25],
          ["enthalpy", constant.enthalpy],
        ]
      : [];
  return [...always, ...parts.filter(([, value]) => value !== 0)];
}

const named = (module: string, constants: Readonly<Record<string, EquilibriumConstant>>): readonly ConstantInUse[] =>
  Object.entries(constants).flatMap(([constant, equilibrium]) =>
    partsOf(equilibrium).map(([part, value]) => ({ module, constant, part, value })),
  );

/** The default of neutral species stands in activity-model.ts. */
const usualNeutral = 0.1;

function activityParts({ activity }: SpeciesDefinition): readonly Part[] {
  if (activity.type === "ion") {
    return [["ion size", activity.size], ...(activity.linear === 0 ? [] : [["linear term", activity.linear] as const])];
  }
  return activity.type === "neutral" && activity.linear !== usualNeutral ? [["linear term", activity.linear]] : [];
}

const allSpecies = [
  hydrogenIon,
  hydroxide,
  ...[...cationFamilies, ...ligandFamilies].flatMap(({ species }) => species),
];

/** The constants that the code holds as data. */
export const constantsInUse: readonly ConstantInUse[] = [
  ...named("chemistry/constants/acid-constants", acid),
  ...named("chemistry/constants/pair-constants", pair),
  ...named("chemistry/constants/mineral-constants", mineral),
  ...allSpecies.flatMap((species) =>
    activityParts(species).map(([part, value]) => ({
      module: "chemistry/equilibrium/species-table",
      constant: species.formula,
      part,
      value,
    })),
  ),
  ...Object.entries(atomicWeights).map(([constant, value]) => ({
    module: "chemistry/chemicals/molar-mass",
    constant,
    part: "atomic weight",
    value,
  })),
  ...standardBuffers.flatMap(({ name, points }) =>
    points.map(([celsius, value]) => ({
      module: "meter/standard-buffers",
      constant: name,
      part: `pH(S) at ${String(celsius)} °C`,
      value,
    })),
  ),
  ...Object.entries(acidProducts).flatMap(([constant, { usualPurity, density = [] }]) =>
    [
      ...(usualPurity === undefined ? [] : [["usual purity", usualPurity] as const]),
      ...density.map(([percent, value]) => [`density at ${String(percent)} %`, value] as const),
    ].map(([part, value]) => ({ module: "discharge/acid-products", constant, part, value })),
  ),
];

/** The files that write their constants into formulas. */
export const writtenIn = [
  "chemistry/alkalinities",
  "chemistry/constants/activity-model",
  "chemistry/constants/debye-hueckel",
  "chemistry/constants/physical-constants",
  "chemistry/constants/water-density",
  "chemistry/constants/water-ionization",
  "chemistry/constants/water-permittivity",
  "chemistry/equilibrium/activity",
  "heat/water-enthalpy",
  "limits/legal-limits",
  "meter/electrode-slope",
  "units/exact-constants",
  "water/hardness-class",
  "water/langelier-index",
  "water/softener-life",
] as const;

/** The numbers in the code of a file of src/core, without their signs. */
export function numbersIn(module: string): readonly number[] {
  const code = readFileSync(new URL(`../../../src/core/${module}.ts`, import.meta.url), "utf8")
    .replaceAll(/\/\*[\s\S]*?\*\/|\/\/.*/g, "")
    .replaceAll(/"[^"]*"|`[^`]*`/g, "");
  return [...code.matchAll(/(?<![\w.])\d+(?:\.\d+)?(?:e[+-]?\d+)?/g)].map(([digits]) => Number(digits));
}
