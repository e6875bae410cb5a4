import { largest, minus, plus, times } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import {
  all,
  equal,
  is,
  isAtLeast,
  isBlank,
  isFilled,
  isNoNumber,
  isNumber,
  isOver,
} from "../../formula/conditions.ts";
import { above, after, before, from, largestWhere, sumWhere, upTo } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Row } from "../../formula/log-names.ts";
import { cellAtOrBlank, rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn, UnitOf } from "../../model/definition.ts";
import { depth, leastLevel, volume, volumeByDepth } from "../../model/units-of.ts";
import { tankRoom } from "../../model/words.ts";

const { computed, helper } = columnsOf<"additions">();

/** What the addition's tank holds at a level. */
const heldAt = (level: Expression, { tankVolume, tankDepth, levelVolume }: Row<"additions">): Expression =>
  plus(tankVolume, times(minus(level, tankDepth), levelVolume));

const atThatTime = (time: Expression) => [from(time), upTo(time)];

/** Rows of the bath since its level was read, this addition with them. */
const sinceLevel = (addition: Row<"additions">) => ({
  bath: addition.bath,
  when: [after(addition.lastLevelAt), upTo(addition.when)],
});

/** A figure of the tank that the addition's bath is in; blank where it is not known. */
function ofTank(
  id: string,
  column: "workingVolume" | "fillDepth" | "volumePerDepth",
  label: string,
  unit: UnitOf,
  format: string,
  help: string,
): ComputedColumn {
  return helper({ id, label, type: "number", unit, format, width: 9, help }, ({ tankRow }, { tanks }) =>
    cellAtOrBlank(tanks[column], tankRow),
  );
}

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
    ({ amount, heldAtLevel, movedSince, addedToLevel }) =>
      blankIf(
        [isBlank(movedSince), isNoNumber(amount)],
        when(isBlank(heldAtLevel), movedSince).otherwise(plus(heldAtLevel, addedToLevel)),
      ),
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
    ({ volumeAfter, rimVolume, tankVolume, levelVolume }, { named }) => {
      const overRim = all(isFilled(rimVolume), isOver(volumeAfter, rimVolume));
      const least = when(is(named.unitSystem, "metric"), leastLevel.metric).otherwise(leastLevel.US);
      const noticeable = times(least, levelVolume);
      return blankIf(
        [isBlank(volumeAfter)],
        when(overRim, tankRoom.overRim)
          .when(isAtLeast(minus(volumeAfter, tankVolume), noticeable), tankRoom.overLine)
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
    ({ bath, lastLevelAt, levelReadThen }, { additions }) =>
      blankIf(
        [isBlank(lastLevelAt), equal(lastLevelAt, 0)],
        largest(levelReadThen, largestWhere(additions, "levelAfter", { bath, when: atThatTime(lastLevelAt) })),
      ),
  ),
  helper(
    {
      id: "levelReadThen",
      label: "Level among Readings",
      type: "number",
      unit: depth,
      format: "0.0",
      width: 8,
      help: "The level that a reading has of that time; 0 where none has.",
    },
    ({ bath, lastLevelAt }, { readings }) =>
      blankIf(
        [isBlank(lastLevelAt), equal(lastLevelAt, 0)],
        largestWhere(readings, "level", { bath, when: atThatTime(lastLevelAt) }),
      ),
  ),
  helper(
    { id: "tankRow", label: "Tank row", type: "whole number", format: "0", width: 8, help: "Position in Tanks." },
    ({ bathRow }, { baths }) => cellAtOrBlank(baths.tankRow, bathRow),
  ),
  ofTank("tankVolume", "workingVolume", "Line holds", volume, "0.00", "What the tank holds at its fill line."),
  ofTank("tankDepth", "fillDepth", "Fill depth", depth, "0.0#", "Where the tank's fill line is."),
  ofTank("levelVolume", "volumePerDepth", "Volume by level", volumeByDepth, "0.000", "What one unit of level holds."),
  helper(
    {
      id: "rimVolume",
      label: "Rim holds",
      type: "number",
      unit: volume,
      format: "0.0",
      width: 9,
      help: "What the tank holds up to the rim; blank where its inside height is not known.",
    },
    (addition, { tanks }) => {
      const { height } = rowAt(tanks, addition.tankRow);
      return blankIf([isBlank(addition.tankVolume)], when(isNoNumber(height), "").otherwise(heldAt(height, addition)));
    },
  ),
  helper(
    {
      id: "levelUsed",
      label: "Level it goes by",
      type: "number",
      unit: depth,
      format: "0.0",
      width: 8,
      help: "After it, or else before it, or else the last one read.",
    },
    ({ levelBefore, levelAfter, lastLevel }) =>
      when(isNumber(levelAfter), levelAfter).when(isNumber(levelBefore), levelBefore).otherwise(lastLevel),
  ),
  helper(
    {
      id: "heldAtLevel",
      label: "Held at that level",
      type: "number",
      unit: volume,
      format: "0.0",
      width: 9,
      help: "What the tank holds at the level that the row goes by.",
    },
    (addition) =>
      blankIf([isNoNumber(addition.levelUsed), isBlank(addition.tankVolume)], heldAt(addition.levelUsed, addition)),
  ),
  helper(
    {
      id: "movedSince",
      label: "Moved since",
      type: "number",
      unit: volume,
      format: "0.00#",
      width: 9,
      help: "All that went in since the level was read, less what was skimmed and drained.",
    },
    (addition, { additions }) =>
      blankIf(
        [isBlank(addition.lastLevelAt), isBlank(addition.tankVolume)],
        minus(sumWhere(additions, "amount", sinceLevel(addition)), addition.takenOut),
      ),
  ),
  helper(
    {
      id: "takenOut",
      label: "Taken out since",
      type: "number",
      unit: volume,
      format: "0.00#",
      width: 9,
      help: "Skimmed and drained since the level was read, from Care.",
    },
    (addition, { care }) => blankIf([isBlank(addition.lastLevelAt)], sumWhere(care, "amount", sinceLevel(addition))),
  ),
  helper(
    {
      id: "addedToLevel",
      label: "Added to that level",
      type: "number",
      unit: volume,
      format: "0.00#",
      width: 9,
      help: "Nothing where the level was read after it, this addition where it was read before, or else all that moved since.",
    },
    ({ amount, levelBefore, levelAfter, movedSince }) =>
      when(isNumber(levelAfter), 0).when(isNumber(levelBefore), amount).otherwise(movedSince),
  ),
];
