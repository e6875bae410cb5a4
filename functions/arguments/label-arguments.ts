/** The finished bath and the label's highest strength, which functions of an amount take together. */
import type { BathLimit } from "../../src/core/bath/label-limit.ts";
import type { VolumeFraction } from "../../src/core/units/quantity.ts";
import type { Argument } from "../define-function.ts";
import { optionalNumber } from "./arguments.ts";
import { optionalQuantity } from "./quantity-argument.ts";
import { isBlankOrZero, refuse, singleCell } from "./read-cell.ts";

const help = "volume of the finished bath: with it, more concentrate than water is refused; label_highest needs it";

export const labelVolume = optionalQuantity("volume", { kind: "volume", help });

const plainVolume = optionalNumber("volume", help, "same unit", 0);

/** In the unit of amounts that have none of their own; 0 and blank mean that it was not given. */
export const plainLabelVolume: Argument<number | undefined, "volume"> = {
  ...plainVolume,
  read: (input, call) => (isBlankOrZero(singleCell("volume", input)) ? undefined : plainVolume.read(input, call)),
};

/** Undefined where no volume was given. Throws where a label stands without the volume that it is held to. */
export function bathLimit(volume: number | undefined, highest: VolumeFraction | undefined): BathLimit | undefined {
  if (volume !== undefined) {
    if (volume > 0) return { volume, highest };
    refuse("volume", "must be more than 0.");
  }
  if (highest !== undefined) refuse("volume", "is blank or 0; label_highest needs it.");
  return undefined;
}

export const labelNote =
  "Give volume, and it refuses (#N/A) what comes to more concentrate than water; give label_highest too, and it refuses what makes the bath stronger than its label. All that was poured in counts, drag-out is not taken off. Otherwise it does not know the label; the label wins.";
