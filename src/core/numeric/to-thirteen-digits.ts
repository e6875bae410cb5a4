const figures = 13;

/** Powers of ten that a double holds exactly, so that dividing by one gives the nearest double. */
const exactPowers = Array.from({ length: 23 }, (_, exponent) => Number(`1e${String(exponent)}`));

/**
 * A number without the last two or three figures of a double, which are rounding noise: 55, not
 * 55.00000000000003. Printing and reading the number does the same at several times the cost.
 */
export function toThirteenDigits(value: number): number {
  const power = exactPowers[figures - 1 - Math.floor(Math.log10(Math.abs(value)))];
  return power === undefined ? Number(value.toPrecision(figures)) : Math.round(value * power) / power;
}
