import { largest, plus, sum, times } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { all, equal, isBlank, isFilled, isNot, isNumber, isOver } from "../../formula/conditions.ts";
import { above, beginning, countWhere, from, largestWhere, otherThan, upTo } from "../../formula/criteria.ts";
import { apply, type Expression } from "../../formula/expression.ts";
import { cellAtOrBlank, lineOf, positionOf, rowAt } from "../../formula/lookups.ts";
import { isAfter } from "../../formula/times.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { volume } from "../../model/units-of.ts";
import { builders, waterNotTested } from "../../model/words.ts";
import { bathBaselineHelpers } from "./bath-baseline.ts";
import { bathDoseHelpers } from "./bath-dose.ts";
import { bathRoundHelpers } from "./bath-rounds.ts";

const { helper } = columnsOf<"baths">();

const [unknown] = builders;

const thatMinute = (time: Expression) => [from(time), upTo(time)];

function addedThen(id: string, label: string, kind: "concentrate" | "water"): ComputedColumn {
  return helper(
    {
      id,
      label,
      type: "whole number",
      format: "0",
      width: 8,
      help: `Additions of ${kind} at the minute of the last reading, opening ones left out.`,
    },
    ({ bath, lastReadingAt }, { additions }) =>
      blankIf(
        [isBlank(lastReadingAt)],
        countWhere(additions, { bath, kind, purpose: otherThan("opening"), when: thatMinute(lastReadingAt) }),
      ),
  );
}

/** Positions and times that the formulas of this sheet and of the others look up. */
export const bathHelpers: readonly ComputedColumn[] = [
  helper(
    { id: "tankRow", label: "Tank row", type: "whole number", format: "0", width: 8, help: "Position in Tanks." },
    ({ tank }, { tanks }) => positionOf(tank, tanks.tank),
  ),
  helper(
    { id: "waterRow", label: "Water row", type: "whole number", format: "0", width: 8, help: "Position in Waters." },
    ({ water }, { waters }) => positionOf(water, waters.water),
  ),
  helper(
    {
      id: "concentrateRow",
      label: "Concentrate row",
      type: "whole number",
      format: "0",
      width: 11,
      help: "Position in Concentrates.",
    },
    ({ concentrate }, { concentrates }) => positionOf(concentrate, concentrates.concentrate),
  ),
  helper(
    {
      id: "labelHighest",
      label: "Label's highest",
      type: "share",
      format: "0.00%",
      width: 9,
      help: "The strongest that the concentrate's label names, of the finished bath.",
    },
    ({ concentrateRow }, { concentrates }) => cellAtOrBlank(concentrates.labelHighest, concentrateRow),
  ),
  helper(
    {
      id: "builderUsed",
      label: "Builder used",
      type: "text",
      words: builders,
      width: 11,
      help: "The bath's own, or else the concentrate's.",
    },
    ({ bath, builder, concentrateRow }, { concentrates }) => {
      const ofConcentrate = rowAt(concentrates, concentrateRow).builder;
      return blankIf(
        [isBlank(bath)],
        when(isFilled(builder), builder)
          .when(isBlank(concentrateRow), unknown)
          .when(isBlank(ofConcentrate), unknown)
          .otherwise(ofConcentrate),
      );
    },
  ),
  helper(
    {
      id: "watersUntested",
      label: "Waters not tested",
      type: "whole number",
      format: "0",
      width: 9,
      help: "How many additions of water brought nobody knows what.",
    },
    ({ bath }, { additions }) =>
      blankIf([isBlank(bath)], countWhere(additions, { bath, bicarbonateCarried: beginning(waterNotTested) })),
  ),
  helper(
    {
      id: "solutionLeft",
      label: "Solution that left",
      type: "number",
      unit: volume,
      format: "0.00",
      width: 9,
      help: "Drained and skimmed, and carried out by the loads where the tank's drag-out is known.",
    },
    ({ bath, drained, loads, tankRow }, { tanks }) =>
      blankIf(
        [isBlank(bath)],
        plus(drained, when(isBlank(tankRow), 0).otherwise(times(loads, sum(rowAt(tanks, tankRow).dragOut)))),
      ),
  ),
  helper(
    {
      id: "dropUsed",
      label: "Drop used",
      type: "number",
      format: "0.00",
      width: 8,
      help: "The bath's own drop allowed, or else the shop's usual one.",
    },
    ({ bath, dropAllowed }, { named }) =>
      blankIf([isBlank(bath)], when(isNumber(dropAllowed), dropAllowed).otherwise(named.usualDrop)),
  ),
  ...bathBaselineHelpers,
  ...bathDoseHelpers,
  helper(
    {
      id: "lastOpening",
      label: "Last opening dose",
      type: "date and time",
      width: 16,
      help: "Baseline readings before it do not count.",
    },
    ({ bath }, { additions }) =>
      blankIf([isBlank(bath)], largestWhere(additions, "when", { bath, kind: "concentrate", purpose: "opening" })),
  ),
  helper(
    {
      id: "lastConcentrate",
      label: "Last concentrate",
      type: "date and time",
      width: 16,
      help: "Bench tests before it no longer stand.",
    },
    ({ bath }, { additions }) =>
      blankIf([isBlank(bath)], largestWhere(additions, "when", { bath, kind: "concentrate" })),
  ),
  helper(
    { id: "lastAddition", label: "Last addition", type: "date and time", width: 16, help: "Of concentrate or water." },
    ({ bath }, { additions }) => blankIf([isBlank(bath)], largestWhere(additions, "when", { bath })),
  ),
  helper(
    {
      id: "lastReadingRow",
      label: "Last reading row",
      type: "whole number",
      format: "0",
      width: 9,
      help: "Position in Readings; of readings at the same minute the lowest row.",
    },
    ({ bath, latestRead }, { readings }) =>
      blankIf(
        [isBlank(latestRead)],
        // SUMPRODUCT works out whole columns in every Excel; a reading that is not the latest counts as row 0.
        apply(
          "SUMPRODUCT",
          largest(
            times(
              equal(readings.bath, bath),
              isNot(readings.purpose, "rinse"),
              isNumber(readings.ph),
              equal(readings.when, latestRead),
              lineOf(readings.when, readings.when),
            ),
          ),
        ),
      ),
  ),
  helper(
    {
      id: "latestRead",
      label: "Latest reading",
      type: "date and time",
      width: 16,
      help: "When the bath was last read; readings of a rinse are left out.",
    },
    ({ bath }, { readings }) => {
      const latest = largestWhere(readings, "when", {
        bath,
        purpose: otherThan("rinse"),
        ph: above(0),
        when: above(0),
      });
      return blankIf([isBlank(bath)], blankIf([equal(latest, 0)], latest));
    },
  ),
  helper(
    {
      id: "unread",
      label: "Not read yet",
      type: "whole number",
      format: "0",
      width: 8,
      help:
        "1 where no reading has followed what went in last. At the same minute only a reading after a top-up counts " +
        "as taken after, one for each addition of concentrate.",
    },
    ({ bath, lastReadingAt, lastAddition, concentrateThen, waterThen, readThen }) =>
      blankIf(
        [isBlank(bath)],
        when(isBlank(lastReadingAt), when(isOver(lastAddition, 0), 1).otherwise(0))
          .when(isAfter(lastAddition, lastReadingAt), 1)
          .when(isOver(concentrateThen, readThen), 1)
          .when(all(isOver(waterThen, 0), equal(readThen, 0)), 1)
          .otherwise(0),
      ),
  ),
  addedThen("concentrateThen", "Concentrate then", "concentrate"),
  addedThen("waterThen", "Water then", "water"),
  helper(
    {
      id: "readThen",
      label: "Read after it then",
      type: "whole number",
      format: "0",
      width: 8,
      help: "Readings after a top-up at the minute of the last reading.",
    },
    ({ bath, lastReadingAt }, { readings }) =>
      blankIf(
        [isBlank(lastReadingAt)],
        countWhere(readings, { bath, purpose: "after top-up", ph: above(0), when: thatMinute(lastReadingAt) }),
      ),
  ),
  ...bathRoundHelpers,
];
