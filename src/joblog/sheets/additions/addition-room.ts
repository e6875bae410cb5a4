import { largest, minus, plus, times } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, is, isAtLeast, isBlank, isNoNumber, isNumber, isOver } from "../../formula/conditions.ts";
import { above, after, before, from, largestWhere, sumWhere, upTo } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Log, Row } from "../../formula/log-names.ts";
import { rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { depth, leastLevel, volume } from "../../model/units-of.ts";
import { tankRoom } from "../../model/words.ts";

const { computed, helper } = columnsOf<"additions">();

const tankOf = (addition: Row<"additions">, { baths, tanks }: Log): Row<"tanks"> =>
  rowAt(tanks, rowAt(baths, addition.bathRow).tankRow);

/** What a tank holds at a level. */
const heldAt = (level: Expression, tank: Row<"tanks">): Expression =>
  plus(tank.workingVolume, times(minus(level, tank.fillDepth), tank.volumePerDepth));

/** Whether an addition finds room, by the levels and amounts that the log holds. */
export const additionRoom: readonly ComputedColumn[] = [
  computed(
    {
      id: "volumeAfter",
      label: "In the tank after it",
      type: "number",
      unit: volume,
      format: "0.0",
      width: 10,
      help: "By the level typed here, or else by the last level read and all that went in and was drained since. What evaporated and was carried out since then is not taken off.",
    },
    (addition, log) => {
      const { bath, amount, levelBefore, levelAfter, lastLevel, lastLevelAt } = addition;
      const { tankRow } = rowAt(log.baths, addition.bathRow);
      const tank = tankOf(addition, log);
      const since = { bath, when: [after(lastLevelAt), upTo(addition.when)] };
      const moved = minus(sumWhere(log.additions, "amount", since), sumWhere(log.care, "amount", since));
      return blankIf(
        [isBlank(lastLevelAt), isNoNumber(amount)],
        when(isBlank(tankRow), "")
          .when(isBlank(tank.workingVolume), "")
          .when(isNumber(levelAfter), heldAt(levelAfter, tank))
          .when(isNumber(levelBefore), plus(heldAt(levelBefore, tank), amount))
          .when(equal(lastLevelAt, 0), moved)
          .otherwise(plus(heldAt(lastLevel, tank), moved)),
      );
    },
  ),
  computed(
    {
      id: "room",
      label: "Room in the tank",
      type: "text",
      words: Object.values(tankRoom),
      width: 15,
      help: "Against the volume at the fill line and, where the Job sheet has the tank's inside height, at the rim.",
    },
    (addition, log) => {
      const { volumeAfter } = addition;
      const tank = tankOf(addition, log);
      const overRim = when(isNoNumber(tank.height), false).otherwise(isOver(volumeAfter, heldAt(tank.height, tank)));
      const least = when(is(log.named.unitSystem, "metric"), leastLevel.metric).otherwise(leastLevel.US);
      const noticeable = times(least, tank.volumePerDepth);
      return blankIf(
        [isBlank(volumeAfter)],
        when(overRim, tankRoom.overRim)
          .when(isAtLeast(minus(volumeAfter, tank.workingVolume), noticeable), tankRoom.overLine)
          .otherwise(tankRoom.fits),
      );
    },
  ),
];

export const additionRoomHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "lastLevelAt",
      label: "Level read",
      type: "date and time",
      width: 16,
      help: "When the bath's level was last read before, or made up to; 0 if never.",
    },
    (addition, { additions, readings }) => {
      const { bath } = addition;
      const earlier = { bath, when: before(addition.when) };
      return blankIf(
        [isBlank(addition.bathRow), isNoNumber(addition.when)],
        largest(
          largestWhere(readings, "when", { ...earlier, level: above(0) }),
          largestWhere(additions, "when", { ...earlier, levelAfter: above(0) }),
        ),
      );
    },
  ),
  helper(
    {
      id: "lastLevel",
      label: "Level then",
      type: "number",
      unit: depth,
      format: "0.0",
      width: 8,
      help: "The level that was read then.",
    },
    ({ bath, lastLevelAt }, { additions, readings }) => {
      const then = { bath, when: [from(lastLevelAt), upTo(lastLevelAt)] };
      return blankIf(
        [isBlank(lastLevelAt), equal(lastLevelAt, 0)],
        largest(largestWhere(readings, "level", then), largestWhere(additions, "levelAfter", then)),
      );
    },
  ),
];
