import type { UnitDefinition } from "./unit-definition.ts";

/** Fifteen figures, so that 140 °F is 60 °C to the last digit and no limit or end of a table is missed by a rounding. */
function withoutRounding(kelvin: number): number {
  return Number(kelvin.toPrecision(15));
}

/** The SI value of a number in a unit. */
export function toSi(value: number, unit: UnitDefinition): number {
  switch (unit.scale.type) {
    case "proportional":
      return value * unit.scale.factor;
    case "shifted":
      return withoutRounding((value + unit.scale.offset) * unit.scale.factor);
    case "parts":
      return 1 / (1 + value);
  }
}

/** Taking the offset away leaves rounding noise of 1e-13 where 0 °C should be: twelve decimals stay. */
const withoutNoise = (difference: number): number => Math.round(difference * 1e12) / 1e12;

/** The number in a unit of an SI value; the inverse of `toSi`. */
export function fromSi(si: number, unit: UnitDefinition): number {
  switch (unit.scale.type) {
    case "proportional":
      return si / unit.scale.factor;
    case "shifted":
      return withoutNoise(si / unit.scale.factor - unit.scale.offset);
    case "parts":
      return 1 / si - 1;
  }
}
