/** The finished bath and the label's highest strength, which functions of an amount take together. */
import type { LabelLimit } from "../../src/core/bath/label-limit.ts";
import type { VolumeFraction } from "../../src/core/units/quantity.ts";
import { optionalNumber } from "./arguments.ts";
import { optionalQuantity } from "./quantity-argument.ts";
import { refuse } from "./read-cell.ts";

const help = "volume of the finished bath; needed with label_highest alone";

export const labelVolume = optionalQuantity("volume", { kind: "volume", help });

/** In the unit of amounts that have none of their own; 0 and blank mean that it was not given. */
export const plainLabelVolume = optionalNumber("volume", help, "same unit", 0);

/** Undefined where no label was given. Throws where a label stands without the volume that it is held to. */
export function labelLimit(volume: number | undefined, highest: VolumeFraction | undefined): LabelLimit | undefined {
  if (highest === undefined) return undefined;
  if (volume === undefined || volume === 0) refuse("volume", "is blank or 0; label_highest needs it.");
  return { volume, highest };
}

export const labelNote =
  "Give volume and label_highest, and it refuses (#N/A) what makes the bath stronger than its label: all that was poured in counts, drag-out is not taken off. Otherwise it does not know the label; the label wins.";
