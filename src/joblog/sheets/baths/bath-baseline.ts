import { trigger } from "../../../../functions/threshold/trigger.ts";
import { joined, minus } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isBlank, isNot, isOver, isUnder } from "../../formula/conditions.ts";
import {
  after,
  averageWhere,
  below,
  countWhere,
  largestWhere,
  otherThan,
  smallestWhere,
  type Where,
} from "../../formula/criteria.ts";
import type { Row } from "../../formula/log-names.ts";
import { medianOf } from "../../formula/median.ts";
import { never } from "../../formula/times.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { temperature } from "../../model/units-of.ts";
import { baselineStanding, bench } from "../../model/words.ts";

const { computed, helper } = columnsOf<"baths">();

/** Fewest readings that make a baseline (trade rule: the median of at least three). */
export const fewestBaselineReadings = 3;

/** The readings that count for this bath's baseline. */
const countedOf = ({ bath }: Row<"baths">): Where<"readings"> => ({ bath, counted: 1 });

export const bathBaseline: readonly ComputedColumn[] = [
  computed(
    {
      id: "benchState",
      label: "Bench tests",
      type: "text",
      words: Object.values(bench),
      width: 17,
      help: "Accepted once the latest test of every surface since the last concentrate passes.",
    },
    ({ bath, lastConcentrate }, { benchTests }) => {
      const since: Where<"benchTests"> = { bath, when: after(lastConcentrate) };
      const notPassed = countWhere(benchTests, { ...since, supersededAt: never, result: otherThan("pass") });
      return blankIf(
        [isBlank(bath)],
        when(equal(lastConcentrate, 0), bench.noCharge)
          .when(equal(countWhere(benchTests, since), 0), bench.untested)
          .when(isOver(notPassed, 0), bench.refused)
          .otherwise(bench.accepted),
      );
    },
  ),
  computed(
    {
      id: "baselineReadings",
      label: "Baseline readings",
      type: "whole number",
      format: "0",
      width: 9,
      help: "Readings that count: purpose baseline, with temperature, bench tests accepted, newer than the opening dose.",
    },
    (row, { readings }) => blankIf([isBlank(row.bath)], countWhere(readings, countedOf(row))),
  ),
  computed(
    { id: "baselineState", label: "Baseline stands", type: "text", width: 16, help: "How far the baseline is." },
    (row, { readings, named }) => {
      const counted = countedOf(row);
      const warmest = largestWhere(readings, "temperature", counted);
      const coldest = smallestWhere(readings, "temperature", counted);
      return blankIf(
        [isBlank(row.bath), equal(row.baselineReadings, 0)],
        when(
          isUnder(row.baselineReadings, fewestBaselineReadings),
          joined(row.baselineReadings, ` of ${fewestBaselineReadings} readings`),
        )
          .when(isOver(minus(warmest, coldest), named.temperatureGap), baselineStanding.differ)
          .otherwise(baselineStanding.set),
      );
    },
  ),
  computed(
    {
      id: "baselineTemperature",
      label: "Baseline temperature",
      type: "number",
      unit: temperature,
      format: "0.0",
      width: 12,
      help: "Mean of the samples.",
    },
    (row, { readings }) =>
      blankIf([isNot(row.baselineState, baselineStanding.set)], averageWhere(readings, "temperature", countedOf(row))),
  ),
  computed(
    {
      id: "baseline",
      label: "Baseline pH",
      type: "number",
      format: "0.00",
      width: 9,
      help: "Median of at least three readings that count, the meter's drift taken out: the number to come back to.",
    },
    (row, { readings }) =>
      blankIf(
        [isNot(row.baselineState, baselineStanding.set)],
        medianOf(row.baselineReadings, (k) =>
          largestWhere(readings, "phCorrected", { ...countedOf(row), countedBelow: below(k) }),
        ),
      ),
  ),
  computed(
    {
      id: "trigger",
      label: "Trigger pH",
      type: "number",
      format: "0.00",
      width: 8,
      help: "Baseline less the drop allowed: at or under it a top-up is due.",
    },
    ({ baseline, dropUsed }) => blankIf([isBlank(baseline)], call(trigger, { baseline, drop: dropUsed })),
  ),
];

/** What the verdicts as read were held to. */
export const baselineAsRead: ComputedColumn = helper(
  {
    id: "baselineAsRead",
    label: "Baseline as read",
    type: "number",
    format: "0.00",
    width: 9,
    help: "The median of the same readings with the meter's drift left in.",
  },
  (row, { readings }) =>
    blankIf(
      [isNot(row.baselineState, baselineStanding.set)],
      medianOf(row.baselineReadings, (k) =>
        largestWhere(readings, "ph", { ...countedOf(row), countedBelowAsRead: below(k) }),
      ),
    ),
);
