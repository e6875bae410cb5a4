import { DomainError } from "../domain-error.ts";
import { checkWithin } from "../domain.ts";
import { displacedVolume, tankLength } from "../domains.ts";
import { cubicMeters } from "../units/quantity.ts";
import type { CubicMeters, Meters } from "../units/quantity.ts";

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
 * @throws OutOfRange for a length outside its domain
 * @throws DomainError when the displacement leaves no liquid
 */
export function rectangularTankVolume(tank: RectangularTank): CubicMeters {
  checkWithin("length", tank.length, tankLength);
  checkWithin("width", tank.width, tankLength);
  checkWithin("depth", tank.depth, tankLength);
  checkWithin("displacement", tank.displacement, displacedVolume);
  const volume = tank.length * tank.width * tank.depth - tank.displacement;
  if (volume <= 0) throw new DomainError("invalid", "The displacement is as large as the whole tank or larger");
  return cubicMeters(volume);
}
