import { DomainError } from "../../src/core/limits/domain-error.ts";
import type { BlendedWater } from "../../src/core/water/blend.ts";
import type { LikeVolume } from "../arguments/like-volumes.ts";
import { checkAlike, likeUnit, likeVolumeFrom } from "../arguments/like-volumes.ts";
import { alignedList } from "../arguments/list-arguments.ts";
import { refuse } from "../arguments/read-cell.ts";
import { oneOfThe } from "../arguments/wording.ts";
import type { Argument } from "../define-function.ts";
import { writtenNone } from "./value-argument.ts";

const help = "volume of each, in the same order: bare numbers in any one unit, or texts with a unit";

/** One column or row of volumes, all bare numbers or all with a unit. */
export const volumes: Argument<readonly (LikeVolume | undefined)[], "volumes"> = alignedList("volumes", {
  help,
  unit: likeUnit,
  read: likeVolumeFrom(oneOfThe("volumes"), help),
});

function noNumber(index: number): string {
  return `have no number in cell ${index + 1} of its range`;
}

/** The rows that have both a value and a volume; a row with one of the two is refused. */
export function watersOf(
  values: readonly (number | undefined)[],
  given: readonly (LikeVolume | undefined)[],
): readonly BlendedWater[] {
  if (values.length !== given.length) {
    throw new DomainError(
      "invalid",
      `Values and volumes have ${values.length} and ${given.length} cells; they must have the same number.`,
    );
  }
  checkAlike(given.filter((each) => each !== undefined));
  const waters = values.flatMap((value, index) => {
    const volume = given[index]?.volume;
    if (value === undefined && volume === undefined) return [];
    if (value === undefined) return refuse("values", `${noNumber(index)}, where there is a volume. ${writtenNone}`);
    if (volume === undefined)
      return refuse("volumes", `${noNumber(index)}, where there is a value. Write the volume, or blank out both.`);
    return [{ value, volume }];
  });
  return waters.length > 0 ? waters : refuse("values", "hold no number.");
}
