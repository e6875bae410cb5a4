import type { Kelvin, PH } from "../units/quantity.ts";

/** No bath falls or rises by so much from one reading to the next, its samples alike (common practice, no source). */
export const farInPh = 1;

/**
 * What a degree between two samples may add to that, in pH per kelvin. No builder moves faster with temperature than
 * plain hydroxide, which goes with pKw: 14.947 at 0 °C and 13.995 at 25 °C, 0.038 a kelvin, and less when warmer
 * (IAPWS R11-07).
 */
export const mostPhByKelvin = 0.04;

export interface Sample {
  readonly ph: PH;
  /** Absent where nobody wrote it down: then it explains nothing. */
  readonly temperature: Kelvin | undefined;
}

/** Whether two samples of one bath are farther apart than the bath and their temperatures can make them. */
export function isFarFrom(sample: Sample, other: Sample): boolean {
  const apart =
    sample.temperature === undefined || other.temperature === undefined
      ? 0
      : Math.abs(sample.temperature - other.temperature);
  const hundredths = Math.round(100 * Math.abs(sample.ph - other.ph)) / 100;
  return hundredths >= farInPh + mostPhByKelvin * apart;
}
