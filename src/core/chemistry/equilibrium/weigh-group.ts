import type { Group, SquareSums } from "./chemical-system.ts";

/**
 * Relative amounts of the species of one group, summed; `offset` is added to every logarithm. Writes the
 * group's sums and gives back the ones that only the whole ligand needs, in `more`.
 */
export function weighGroup(group: Group, logHydrogen: number, offset: number, more: SquareSums): void {
  const base = offset + (group.cation === undefined ? 0 : group.cation.logActivity);
  let sum = 0;
  let hydrogenSum = 0;
  let chargeSum = 0;
  let slopeSum = 0;
  for (const species of group.species) {
    const weight = Math.exp(species.logShift + species.hydrogen * logHydrogen + base);
    const hydrogen = species.hydrogen * weight;
    const charge = species.halfChargeSquared * weight;
    sum += weight;
    hydrogenSum += hydrogen;
    chargeSum += charge;
    slopeSum += species.shiftSlope * weight;
    more.hydrogenSquares += species.hydrogen * hydrogen;
    more.hydrogenCharge += species.hydrogen * charge;
    more.hydrogenSlope += species.shiftSlope * hydrogen;
    more.chargeSlope += species.shiftSlope * charge;
  }
  group.sum = sum;
  group.hydrogenSum = hydrogenSum;
  group.chargeSum = chargeSum;
  group.slopeSum = slopeSum;
}

/** Begins a new sum over all groups. */
export function clearSquares(sums: SquareSums): void {
  sums.hydrogenSquares = 0;
  sums.hydrogenCharge = 0;
  sums.hydrogenSlope = 0;
  sums.chargeSlope = 0;
}
