import { largest, plus, sum, times } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { all, equal, isBlank, isFilled, isNot, isNumber, isOver } from "../../formula/conditions.ts";
import {
  above,
  beginning,
  countWhere,
  from,
  largestWhere,
  otherThan,
  upTo,
  type Where,
} from "../../formula/criteria.ts";
import { apply, type Expression } from "../../formula/expression.ts";
import { inMilligrams } from "../../formula/in-milligrams.ts";
import { cellAtOrBlank, lineOf, positionOf, rowAt } from "../../formula/lookups.ts";
import { isAfter } from "../../formula/times.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { volume } from "../../model/units-of.ts";
import { builders, waterNotTested } from "../../model/words.ts";
import { bathBaselineHelpers } from "./bath-baseline.ts";
import { bathRoundHelpers } from "./bath-rounds.ts";

const { helper } = columnsOf<"baths">();

const [unknown] = builders;

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
  // A function that takes it for blank reckons with any usual water.
  helper(
    {
      id: "alkalinityUsed",
      label: "Alkalinity used",
      type: "text",
      width: 10,
      help: "Of the water, with its unit.",
    },
    ({ alkalinity }) => blankIf([isBlank(alkalinity)], inMilligrams(alkalinity)),
  ),
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
    ({ bath }, { readings }) => {
      const ours: Where<"readings"> = { bath, purpose: otherThan("rinse"), ph: above(0), when: above(0) };
      const latest = largestWhere(readings, "when", ours);
      // SUMPRODUCT works out whole columns in every Excel; a reading that is not the latest counts as row 0.
      const row = apply(
        "SUMPRODUCT",
        largest(
          times(
            equal(readings.bath, bath),
            isNot(readings.purpose, "rinse"),
            isNumber(readings.ph),
            equal(readings.when, latest),
            lineOf(readings.when, readings.when),
          ),
        ),
      );
      return blankIf([isBlank(bath), equal(countWhere(readings, ours), 0)], row);
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
    ({ bath, lastReadingAt, lastAddition }, { additions, readings }) => {
      const at = [from(lastReadingAt), upTo(lastReadingAt)];
      const added = (kind: "concentrate" | "water"): Expression =>
        countWhere(additions, { bath, kind, purpose: otherThan("opening"), when: at });
      const answers = countWhere(readings, { bath, purpose: "after top-up", ph: above(0), when: at });
      return blankIf(
        [isBlank(bath)],
        when(isBlank(lastReadingAt), when(isOver(lastAddition, 0), 1).otherwise(0))
          .when(isAfter(lastAddition, lastReadingAt), 1)
          .when(isOver(added("concentrate"), answers), 1)
          .when(all(isOver(added("water"), 0), equal(answers, 0)), 1)
          .otherwise(0),
      );
    },
  ),
  ...bathRoundHelpers,
];
