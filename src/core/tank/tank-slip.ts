import type { CubicMeters, Meters } from "../units/quantity.ts";

/** m²: the smallest bench tank has a floor of five by six inches; less is feet or meters (common practice, no source). */
const smallestFloor = 0.0193;

/** m³, a thousand US gallons: a tank of a contents shop holds less, and centimeters taken for inches soon more (common practice, no source). */
const largestTank = 3.79;

/** m³ where the system of units was named: then only millimeters taken for centimeters are left to fear (common practice, no source). */
const largestOfNamed = 37.9;

export interface MeasuredTank {
  /** Length and width, or the diameter twice. */
  readonly across: readonly [Meters, Meters];
  readonly volume: CubicMeters;
}

/** Whether lengths of which nobody said the unit make a tank that no contents shop has; undefined where it may well be one. */
export function tankSlip(
  { across: [one, other], volume }: MeasuredTank,
  isNamed: boolean,
): "small" | "large" | undefined {
  if (one * other < smallestFloor) return "small";
  return volume > (isNamed ? largestOfNamed : largestTank) ? "large" : undefined;
}
