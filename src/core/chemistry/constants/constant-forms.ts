import type { EquilibriumConstant } from "./equilibrium-constant.ts";

/** For a reaction whose heat capacity is unknown or does not matter. */
export function fromEnthalpy(logKAt25: number, enthalpy: number, source: string): EquilibriumConstant {
  return { type: "heat", logKAt25, enthalpy, heatCapacity: 0, source };
}

/** The formation of an acid from its anion, from the published figures of its dissociation. */
export function fromDissociation(
  pKAt25: number,
  enthalpy: number,
  heatCapacity: number,
  source: string,
): EquilibriumConstant {
  return { type: "heat", logKAt25: pKAt25, enthalpy: -enthalpy, heatCapacity: -heatCapacity, source };
}

type Terms = readonly [constant: number, linear: number, inverse: number, logarithm: number, inverseSquare: number];

/** log K = constant + linear T + inverse / T + logarithm log T + inverse square / T², with T in kelvin, as tables of PHREEQC have it. */
export function fromFunction(terms: Terms, source: string): EquilibriumConstant {
  const [constant, linear, inverse, logarithm, inverseSquare] = terms;
  return { type: "function", constant, linear, inverse, logarithm, inverseSquare, source };
}
