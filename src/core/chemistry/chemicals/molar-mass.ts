/** IUPAC abridged atomic weights, g/mol; Prohaska et al., Pure Appl. Chem. 94 (2022) 573, to five figures. */
export const atomicWeights: Readonly<Record<string, number>> = {
  H: 1.008,
  B: 10.81,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  Na: 22.99,
  Mg: 24.305,
  Si: 28.085,
  P: 30.974,
  S: 32.06,
  Cl: 35.45,
  K: 39.098,
  Ca: 40.078,
};

const part = /\(([^()]*)\)(\d*)|([A-Z][a-z]?)(\d*)/g;

/** g/mol of a formula such as Ca(OH)2; one level of brackets. */
export function molarMass(formula: string): number {
  let mass = 0;
  for (const [, inner, innerCount, element, count] of formula.matchAll(part)) {
    const times = Number((inner === undefined ? count : innerCount) || 1);
    mass += times * (inner === undefined ? (atomicWeights[element ?? ""] ?? Number.NaN) : molarMass(inner));
  }
  return mass;
}
