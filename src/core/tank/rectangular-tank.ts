import { checkWithin } from "../limits/domain.ts";
import { displacedVolume, tankLength } from "../limits/domains.ts";
import type { CubicMeters, Meters } from "../units/quantity.ts";
import { cubicMeters } from "../units/quantity.ts";

export interface RectangularTank {
  readonly length: Meters;
  readonly width: Meters;
  /** Depth of liquid, or a change of level. */
  readonly depth: Meters;
  /** Volume taken up by racks, transducers and load. */
  readonly displacement: CubicMeters;
}

/**
 * Volume of liquid in an upright rectangular tank: length × width × depth − displacement.
 *
 * @throws OutOfRange for a length outside its domain, or a displacement that leaves no liquid
 */
export function rectangularTankVolume(tank: RectangularTank): CubicMeters {
  checkWithin("length", tank.length, tankLength);
  checkWithin("width", tank.width, tankLength);
  checkWithin("depth", tank.depth, tankLength);
  const whole = tank.length * tank.width * tank.depth;
  checkWithin("displacement", tank.displacement, { ...displacedVolume, high: whole, openHigh: true });
  return cubicMeters(whole - tank.displacement);
}
