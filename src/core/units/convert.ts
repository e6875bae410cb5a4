import type { UnitDefinition } from "./unit-definition.ts";

/**
 * Twelve decimals stay, fifteen figures of a kelvin: 0 °C for 32 °F and 60 °C for 140 °F to the last digit, so that
 * no limit or end of a table is missed by a rounding.
 */
const withoutNoise = (degrees: number): number => Math.round(degrees * 1e12) / 1e12;

/** The SI value of a number in a unit. */
export function toSi(value: number, unit: UnitDefinition): number {
  switch (unit.scale.type) {
    case "proportional":
      return value * unit.scale.factor;
    case "shifted":
      return withoutNoise((value + unit.scale.offset) * unit.scale.factor);
    case "parts":
      return 1 / (1 + value);
  }
}

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
