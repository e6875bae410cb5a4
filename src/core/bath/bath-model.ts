import type { Alkalinity, Kelvin, PH } from "../units/quantity.ts";
import type { Builder } from "../solution/builder.ts";

/** An answer with its uncertainty over what is not known about the bath. */
export interface Estimate {
  readonly low: number;
  readonly best: number;
  readonly high: number;
}

/** What is known about the chemistry of a bath. */
export interface BathChemistry {
  readonly builder: Builder;
  /** Alkalinity of the water; absent where it was not tested. */
  readonly alkalinity: Alkalinity | undefined;
}

/** How a bath lost its pH: alkali used up by acid soil, or bath carried out and replaced by water. */
export const losses = ["acid", "dilution"] as const;

export type Loss = (typeof losses)[number];

/** A bath that has fallen from its baseline; both were read at `temperature`. */
export interface FallenBath extends BathChemistry {
  readonly baseline: PH;
  readonly reading: PH;
  readonly temperature: Kelvin;
  /** Absent: not known, so both are taken into account. */
  readonly loss: Loss | undefined;
}

/** The two questions that everything about top-ups and temperature comes down to. */
export interface BathModel {
  /**
   * Concentrate that brings the bath back to its baseline, as a share of the opening dose.
   *
   * @throws DomainError, "no-answer" where the model does not reach
   */
  readonly topUpShare: (bath: FallenBath) => Estimate;
  /**
   * What the same bath reads at another temperature with a perfect meter.
   *
   * @throws DomainError, "no-answer" where the model does not reach
   */
  readonly phAt: (bath: BathChemistry, reading: PH, from: Kelvin, to: Kelvin) => Estimate;
}
