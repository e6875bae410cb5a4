import { mostCarriedOut } from "../../../core/bath/common-practice.ts";
import { chargeStrength } from "../../../core/limits/domains.ts";
import { dividedBy, largest, minus, plus, sum, times } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { isAtMost, isBlank, isFilled, isNoNumber, isNot, isOver } from "../../formula/conditions.ts";
import { after, before, countWhere, largestWhere, otherThan, sumWhere, upTo } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import { litersInUnit } from "../../formula/liters-in-unit.ts";
import type { Row } from "../../formula/log-names.ts";
import { rowAt } from "../../formula/lookups.ts";
import { milligramsPerEquivalent } from "../../formula/milligrams-per-equivalent.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { alkaliAdded, hardnessAdded, volume } from "../../model/units-of.ts";
import { moreLeft, waterNotTested } from "../../model/words.ts";

const { computed, helper } = columnsOf<"additions">();

type Addition = Row<"additions">;

const amount = { type: "number", unit: volume, format: "0.000", width: 11 } as const;

/** What a liter of the water brings, in thousandths, times the liters that went in. */
function carried({ waterLiters }: Addition, tested: Expression, perLiter: Expression): Expression {
  return blankIf(
    [isBlank(waterLiters)],
    when(isNoNumber(tested), waterNotTested).otherwise(dividedBy(times(waterLiters, perLiter), 1000)),
  );
}

/** What a fall of the level divides into. */
type Part = (addition: Addition) => Expression;

/**
 * Level make-up with water: part of what is missing evaporated, part was dragged out or drained. Adds up what MAKEUP
 * does without calling it: the loads are counted over the whole table, so every load would call it in every row.
 */
function split(id: string, label: string, part: Part, help: string): ComputedColumn {
  return computed({ id, label, ...amount, help }, (addition) => {
    const { levelLoss, strength, unsplit } = addition;
    return blankIf(
      [isBlank(levelLoss), isBlank(strength)],
      when(isFilled(unsplit), part === evaporated ? unsplit : "").otherwise(part(addition)),
    );
  });
}

const evaporated: Part = ({ levelLoss, leftSince }) => largest(0, minus(levelLoss, leftSince));
const carriedOut: Part = ({ leftSince }) => leftSince;
const concentrateDue: Part = ({ leftSince, strength }) => times(leftSince, strength);

export const additionWater: readonly ComputedColumn[] = [
  split(
    "evaporated",
    "Evaporated",
    evaporated,
    "Of the water made up, what had gone as vapor: it took no concentrate along.",
  ),
  split(
    "carriedOut",
    "Dragged out or drained",
    carriedOut,
    "Carried out by the loads since the last water, and drained: it took its concentrate along.",
  ),
  split(
    "concentrateDue",
    "Concentrate with it",
    concentrateDue,
    "What the solution that left had held: goes in with the water, then mix and read.",
  ),
  computed(
    {
      id: "hardnessCarried",
      label: "Hardness brought",
      type: "number",
      unit: hardnessAdded,
      format: "0.0",
      width: 11,
      help: "What this water brought into the bath.",
    },
    (addition, { waters }) => {
      const { hardness } = rowAt(waters, addition.waterRow);
      return carried(addition, hardness, hardness);
    },
  ),
  computed(
    {
      id: "bicarbonateCarried",
      label: "Bicarbonate brought",
      type: "number",
      unit: alkaliAdded,
      format: "0.000",
      width: 11,
      help: "What this water brought: each eq uses up one of hydroxide.",
    },
    (addition, { waters }) => {
      const { alkalinity } = rowAt(waters, addition.waterRow);
      const milliequivalents = dividedBy(times(1000, alkalinity), milligramsPerEquivalent);
      return carried(addition, alkalinity, milliequivalents);
    },
  ),
];

/** Rows of the bath from the water before to this addition. */
function since(addition: Addition) {
  return { bath: addition.bath, when: [after(addition.waterBefore), upTo(addition.when)] };
}

export const additionWaterHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "waterBefore",
      label: "Water before",
      type: "date and time",
      width: 16,
      help: "When the bath was last filled or made up with water; 0 if never.",
    },
    (addition, { additions }) => {
      const { bath, bathRow, kind, purpose } = addition;
      return blankIf(
        [isBlank(bathRow), isNot(kind, "water"), isNot(purpose, "make-up"), isNoNumber(addition.when)],
        largestWhere(additions, "when", { bath, kind: "water", when: before(addition.when) }),
      );
    },
  ),
  helper(
    {
      id: "levelLoss",
      label: "Lost since",
      type: "number",
      unit: volume,
      format: "0.000",
      width: 9,
      help: "Rise of the level now, and the concentrate that had held the level up since the water before.",
    },
    ({ waterBefore, levelBefore, levelAfter, levelVolume, concentrateSince }) =>
      blankIf(
        [isBlank(waterBefore), isNoNumber(levelBefore), isNoNumber(levelAfter), isBlank(levelVolume)],
        plus(times(minus(levelAfter, levelBefore), levelVolume), concentrateSince),
      ),
  ),
  helper(
    {
      id: "dragOut",
      label: "Drag-out",
      type: "number",
      unit: volume,
      format: "0.00#",
      width: 9,
      help: "Of the bath's tank; blank where it is not known.",
    },
    ({ waterBefore, tankRow }, { tanks }) => {
      const { dragOut } = rowAt(tanks, tankRow);
      return blankIf(
        [isBlank(waterBefore)],
        when(isBlank(tankRow), "")
          .when(isOver(sum(dragOut), 0), dragOut)
          .otherwise(""),
      );
    },
  ),
  helper(
    {
      id: "loadsSince",
      label: "Loads since",
      type: "whole number",
      format: "0",
      width: 8,
      help: "Loads of the bath since the water before.",
    },
    (addition, { loads }) => blankIf([isBlank(addition.waterBefore)], countWhere(loads, since(addition))),
  ),
  helper(
    {
      id: "drainedSince",
      label: "Drained since",
      type: "number",
      unit: volume,
      format: "0.00#",
      width: 9,
      help: "Skimmed and drained since the water before, from Care.",
    },
    (addition, { care }) => blankIf([isBlank(addition.waterBefore)], sumWhere(care, "amount", since(addition))),
  ),
  helper(
    {
      id: "strength",
      label: "Strength",
      type: "share",
      format: "0.00%",
      width: 8,
      help: "Opening dose in the volume of the fill.",
    },
    ({ waterBefore, bathRow }, { baths }) => {
      const { openingDose, filledVolume } = rowAt(baths, bathRow);
      return blankIf(
        [isBlank(waterBefore)],
        blankIf([isBlank(openingDose), isBlank(filledVolume)], dividedBy(openingDose, filledVolume)),
      );
    },
  ),
  helper(
    {
      id: "concentrateSince",
      label: "Concentrate since",
      type: "number",
      unit: volume,
      format: "0.000",
      width: 9,
      help: "Concentrate that the bath had since the water before, the opening dose left out.",
    },
    (addition, { additions }) =>
      blankIf(
        [isBlank(addition.waterBefore)],
        sumWhere(additions, "amount", { ...since(addition), kind: "concentrate", purpose: otherThan("opening") }),
      ),
  ),
  helper(
    {
      id: "leftSince",
      label: "Left since",
      type: "number",
      unit: volume,
      format: "0.00#",
      width: 9,
      help: "Carried out by the loads since the water before, and drained; blank where the tank's drag-out is not known.",
    },
    ({ loadsSince, dragOut, drainedSince }) =>
      blankIf([isBlank(dragOut)], plus(times(loadsSince, dragOut), drainedSince)),
  ),
  helper(
    {
      id: "unsplit",
      label: "Why not divided",
      type: "text",
      width: 14,
      help: "Why what is missing cannot be divided into what evaporated and what left; blank where it can.",
    },
    ({ levelLoss, dragOut, leftSince, strength }) =>
      blankIf(
        [isBlank(levelLoss), isBlank(strength)],
        when(isBlank(dragOut), "drag-out of the tank missing")
          .when(isAtMost(levelLoss, 0), "level did not fall")
          .when(isOver(leftSince, times(mostCarriedOut, levelLoss)), moreLeft)
          .when(isOver(strength, chargeStrength.high), "more concentrate than water: check")
          .otherwise(""),
      ),
  ),
  helper(
    {
      id: "waterLiters",
      label: "Liters of water",
      type: "number",
      format: "0.00#",
      width: 9,
      help: "Of water whose kind is known; blank for all else.",
    },
    (addition, log) =>
      blankIf(
        [isNot(addition.kind, "water"), isNoNumber(addition.amount), isBlank(addition.waterRow)],
        times(addition.amount, litersInUnit(log)),
      ),
  ),
];
