import { gasConstant } from "../chemistry/constants/physical-constants.ts";
import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { bathTemperature, electrodePotential, readablePh } from "../limits/domains.ts";
import type { Kelvin } from "../units/quantity.ts";
import { type BufferPotential, checkCredible } from "./credible-electrode.ts";

/** Exact, 2019 SI: Avogadro constant times elementary charge. */
const faradayConstant = 96485.33212; // C/mol

/** Nernst: RT ln 10 / F, in mV for one unit of pH. */
function nernstSlope(temperature: Kelvin): number {
  return (1000 * gasConstant * temperature * Math.LN10) / faradayConstant;
}

/** A meter shows pH where it was not switched to mV; a blank counts as 0. */
function isRatherPh({ ph, millivolts }: BufferPotential): boolean {
  return millivolts === 0 || Math.abs(millivolts - ph) <= 1;
}

/**
 * Slope of an electrode between two buffers as a share of the theoretical one, whichever sign the meter gives its
 * millivolts.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError where the buffers or the potentials are the same, or the potentials are pH
 * @throws DomainError "no-answer" where no working electrode gives such potentials
 */
export function electrodeSlope(one: BufferPotential, other: BufferPotential, temperature: Kelvin): number {
  checkWithin("buffer 1", one.ph, readablePh);
  checkWithin("mv 1", one.millivolts, electrodePotential);
  checkWithin("buffer 2", other.ph, readablePh);
  checkWithin("mv 2", other.millivolts, electrodePotential);
  checkWithin("temperature", temperature, bathTemperature);
  if (one.ph === other.ph)
    throw new DomainError("invalid", "Buffer 1 and buffer 2 have the same pH; a slope takes two different ones");
  if (one.millivolts === other.millivolts) {
    throw new DomainError(
      "invalid",
      "mV 1 and mV 2 are the same: blank cells, or an electrode that is dead or not connected",
    );
  }
  if (isRatherPh(one) && isRatherPh(other)) {
    throw new DomainError(
      "invalid",
      `mV 1 and mV 2 are ${String(one.millivolts)} and ${String(other.millivolts)}, which look like pH; switch the meter to mV and write what it shows`,
    );
  }
  const slope = Math.abs((one.millivolts - other.millivolts) / (one.ph - other.ph)) / nernstSlope(temperature);
  checkCredible(slope, one, other);
  return slope;
}
