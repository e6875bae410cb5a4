import { alignedList } from "../list-arguments.ts";
import { DomainError } from "../../src/core/domain-error.ts";
import { parseNumber } from "../../src/core/units/parse-number.ts";
import { quantity } from "../quantity-argument.ts";
import { refuse } from "../read-cell.ts";
import { writtenNone } from "./value-argument.ts";
import type { Argument } from "../define-function.ts";
import type { BlendedWater } from "../../src/core/water/blend.ts";
import type { CubicMeters } from "../../src/core/units/quantity.ts";

interface GivenVolume {
  readonly volume: CubicMeters;
  /** Written without a unit. */
  readonly bare: boolean;
}

const help = "volume of each, in the same order: bare numbers in any one unit, or texts with a unit";
const one = quantity("volumes", { kind: "volume", help });

/** One column or row of volumes, all bare numbers or all with a unit. */
export const volumes: Argument<readonly (GivenVolume | undefined)[]> = alignedList("volumes", {
  help,
  unit: "any one unit",
  read: (cell, call) => ({ volume: one.read(cell, call), bare: parseNumber(String(cell)).read === "number" }),
});

function noNumber(index: number): string {
  return `has no number in cell ${index + 1} of its range`;
}

/** The rows that have both a value and a volume; a row with one of the two is refused. */
export function watersOf(values: readonly (number | undefined)[], given: readonly (GivenVolume | undefined)[]): readonly BlendedWater[] {
  if (values.length !== given.length) {
    throw new DomainError("invalid", `Values and volumes have ${values.length} and ${given.length} cells; they must have the same number.`);
  }
  const used = given.filter((each) => each !== undefined);
  if (used.some(({ bare }) => bare) && used.some(({ bare }) => !bare)) refuse("volumes", "mixes bare numbers with texts that have a unit; write all of one kind.");
  const waters = values.flatMap((value, index) => {
    const volume = given[index]?.volume;
    if (value === undefined && volume === undefined) return [];
    if (value === undefined) return refuse("values", `${noNumber(index)}, where there is a volume. ${writtenNone}`);
    if (volume === undefined) return refuse("volumes", `${noNumber(index)}, where there is a value. Write the volume, or blank out both.`);
    return [{ value, volume }];
  });
  return waters.length > 0 ? waters : refuse("values", "holds no number.");
}
