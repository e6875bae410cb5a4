import { DomainError } from "../domain-error.ts";
import { checkWithin } from "../domain.ts";
import { liquidVolume } from "../domains.ts";
import { volumeFraction } from "../units/quantity.ts";
import type { CubicMeters, VolumeFraction } from "../units/quantity.ts";

/**
 * Strength that a dose gives in a finished bath: dose / volume.
 *
 * @throws OutOfRange for a volume outside its domain
 * @throws DomainError when the dose is larger than the finished bath
 */
export function strengthReached(concentrate: CubicMeters, finishedBath: CubicMeters): VolumeFraction {
  checkWithin("dose", concentrate, liquidVolume);
  checkWithin("volume", finishedBath, liquidVolume);
  if (concentrate > finishedBath) throw new DomainError("invalid", "The dose is larger than the volume of the finished bath");
  return volumeFraction(concentrate / finishedBath);
}
