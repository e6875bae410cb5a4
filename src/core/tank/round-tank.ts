import { checkWithin } from "../limits/domain.ts";
import { displacedVolume, tankLength } from "../limits/domains.ts";
import type { CubicMeters, Meters } from "../units/quantity.ts";
import { cubicMeters } from "../units/quantity.ts";

export interface RoundTank {
  readonly diameter: Meters;
  /** Depth of liquid, or a change of level. */
  readonly depth: Meters;
  /** Volume taken up by racks, transducers and load. */
  readonly displacement: CubicMeters;
}

/**
 * Volume of liquid in an upright cylinder: π/4 × diameter² × depth − displacement.
 *
 * @throws OutOfRange for a length outside its domain, or a displacement that leaves no liquid
 */
export function roundTankVolume(tank: RoundTank): CubicMeters {
  checkWithin("diameter", tank.diameter, tankLength);
  checkWithin("depth", tank.depth, tankLength);
  const whole = (Math.PI / 4) * tank.diameter ** 2 * tank.depth;
  checkWithin("displacement", tank.displacement, { ...displacedVolume, high: whole, openHigh: true });
  return cubicMeters(whole - tank.displacement);
}
