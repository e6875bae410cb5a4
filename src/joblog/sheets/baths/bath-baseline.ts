import { trigger } from "../../../../functions/threshold/trigger.ts";
import { absolute, joined, minus } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import {
  all,
  any,
  type Condition,
  equal,
  isAtLeast,
  isBlank,
  isNoNumber,
  isNumber,
  isOver,
  isUnder,
} from "../../formula/conditions.ts";
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
import { apply, type Expression } from "../../formula/expression.ts";
import type { Columns, Row } from "../../formula/log-names.ts";
import { medianOf } from "../../formula/median.ts";
import { isAfter, never } from "../../formula/times.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { temperature } from "../../model/units-of.ts";
import { baselineStanding, bench } from "../../model/words.ts";

const { computed, helper } = columnsOf<"baths">();

/** Fewest readings that make a baseline (trade rule: the median of at least three). */
export const fewestBaselineReadings = 3;

/** Half of the last figure that a meter and a thermometer show: what is written down may be rounded to it. */
const lastHundredth = 0.0051;
const lastTenth = 0.051;

/** The readings that count for this bath's baseline. */
const countedOf = ({ bath }: Row<"baths">): Where<"readings"> => ({ bath, counted: 1 });

const temperatureSpread = (row: Row<"baths">, readings: Columns<"readings">): Expression =>
  minus(largestWhere(readings, "temperature", countedOf(row)), smallestWhere(readings, "temperature", countedOf(row)));

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
    {
      id: "baselineGiven",
      label: "Readings give",
      type: "number",
      format: "0.00",
      width: 9,
      help: "Median of at least three readings that count, the meter's drift taken out: what the baseline is written down from.",
    },
    (row, { readings, named }) =>
      blankIf(
        [isBlank(row.bath), isUnder(row.baselineReadings, fewestBaselineReadings)],
        when(isOver(temperatureSpread(row, readings), named.temperatureGap), "").otherwise(
          medianOf(row.baselineReadings, (k) =>
            largestWhere(readings, "phCorrected", { ...countedOf(row), countedBelow: below(k) }),
          ),
        ),
      ),
  ),
  computed(
    {
      id: "baselineState",
      label: "Baseline stands",
      type: "text",
      width: 22,
      help: "How far the baseline is, and whether its readings still give it.",
    },
    (row) => {
      const { baseline, baselineReadings: count, baselineGiven: given, temperatureGiven } = row;
      const tooFew = joined(count, ` of ${fewestBaselineReadings} readings`);
      const withoutOne = when(equal(count, 0), "")
        .when(isUnder(count, fewestBaselineReadings), tooFew)
        .when(isBlank(given), baselineStanding.differ)
        .otherwise(baselineStanding.unwritten);
      const isOlder = all(isNumber(row.baselineSetAt), isAfter(row.lastOpening, row.baselineSetAt));
      return blankIf(
        [isBlank(row.bath)],
        when(isNoNumber(baseline), withoutOne)
          .when(isNoNumber(row.baselineTemperature), baselineStanding.noTemperature)
          .when(all(isUnder(count, fewestBaselineReadings), isOlder), baselineStanding.older)
          .when(equal(count, 0), baselineStanding.noReadings)
          .when(isUnder(count, fewestBaselineReadings), tooFew)
          .when(isBlank(given), baselineStanding.differ)
          .when(
            isAtLeast(absolute(minus(given, baseline)), lastHundredth),
            joined(`${baselineStanding.otherPh} `, apply("TEXT", given, "0.00")),
          )
          .when(
            isAtLeast(absolute(minus(temperatureGiven, row.baselineTemperature)), lastTenth),
            joined(`${baselineStanding.otherTemperature} `, apply("TEXT", temperatureGiven, "0.0")),
          )
          .otherwise(baselineStanding.set),
      );
    },
  ),
  computed(
    {
      id: "trigger",
      label: "Trigger pH",
      type: "number",
      format: "0.00",
      width: 8,
      help: "Baseline minus the drop allowed: at or under it a top-up is due.",
    },
    ({ baseline, dropUsed }) => blankIf([isNoNumber(baseline)], call(trigger, { baseline, drop: dropUsed })),
  ),
];

/** What is written down beside the pH. */
export const bathBaselineHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "temperatureGiven",
      label: "Temperature of those",
      type: "number",
      unit: temperature,
      format: "0.0",
      width: 9,
      help: "Mean of the samples that give the baseline.",
    },
    (row, { readings }) => blankIf([isBlank(row.baselineGiven)], averageWhere(readings, "temperature", countedOf(row))),
  ),
  helper(
    {
      id: "asReadGiven",
      label: "Readings give, as read",
      type: "number",
      format: "0.00",
      width: 9,
      help: "The median of the same readings with the meter's drift left in.",
    },
    (row, { readings }) =>
      blankIf(
        [isBlank(row.baselineGiven)],
        medianOf(row.baselineReadings, (k) =>
          largestWhere(readings, "ph", { ...countedOf(row), countedBelowAsRead: below(k) }),
        ),
      ),
  ),
];

/** Nothing is judged by a baseline whose temperature is not known. */
export const hasNoBaseline = ({ baseline, baselineTemperature }: Row<"baths">): Condition =>
  any(isNoNumber(baseline), isNoNumber(baselineTemperature));

/** What verdicts as read are held to. */
export const asReadOf = ({ baseline, baselineAsRead }: Row<"baths">): Expression =>
  when(isNumber(baselineAsRead), baselineAsRead).otherwise(baseline);
