import { parseNumber } from "../../src/core/units/parse-number.ts";
import type { CubicMeters } from "../../src/core/units/quantity.ts";
import type { Argument, CallContext, CellValue } from "../define-function.ts";
import { quantity } from "./quantity-argument.ts";
import { refuse, singleCell } from "./read-cell.ts";
import { inWords } from "./wording.ts";

/** A volume of a function whose bare numbers may be in any unit, as long as it is one. */
export interface LikeVolume {
  readonly name: string;
  readonly volume: CubicMeters;
  /** Written without a unit. */
  readonly bare: boolean;
}

export const likeUnit = "any one unit, or text with a unit";

/** Reads one cell; in a message a bare number stays bare, since nobody said its unit. */
export function likeVolumeFrom(name: string, help: string): (cell: CellValue, call: CallContext) => LikeVolume {
  const one = quantity(name, { kind: "volume", help });
  return (cell, call) => {
    const volume = one.read(cell, call);
    const bare = parseNumber(String(cell)).read === "number";
    const unit = call.given.get(name);
    if (bare && unit !== undefined) call.given.set(name, { ...unit, symbol: "" });
    return { name, volume, bare };
  };
}

/** A required volume that must be like its neighbors: see `checkAlike`. */
export function likeVolume<const Name extends string>(name: Name, help: string): Argument<LikeVolume, Name> {
  const read = likeVolumeFrom(name, help);
  return {
    name,
    help,
    unit: likeUnit,
    excelType: "any",
    dimensionality: "scalar",
    optional: false,
    read: (input, call) => read(singleCell(name, input), call),
  };
}

/** Refuses a bare number beside a text with a unit: 120 beside "3 L" may be liters or gallons. */
export function checkAlike(given: readonly LikeVolume[]): void {
  const bare = given.find((each) => each.bare);
  const withUnit = given.find((each) => !each.bare);
  if (bare === undefined || withUnit === undefined) return;
  if (bare.name === withUnit.name) refuse(bare.name, "is a bare number and another has a unit; write all of one kind.");
  refuse(
    bare.name,
    `has no unit and ${inWords(withUnit.name).toLowerCase()} has one; write a unit with both, or with none.`,
  );
}
