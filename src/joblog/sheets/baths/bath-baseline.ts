import { trigger } from "../../../../functions/threshold/trigger.ts";
import { absolute, joined, minus } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import {
  all,
  any,
  type Condition,
  equal,
  is,
  isAtLeast,
  isBlank,
  isFilled,
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
import type { Log, Row } from "../../formula/log-names.ts";
import { rowAt } from "../../formula/lookups.ts";
import { medianOf, middleRanks } from "../../formula/median.ts";
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

/** Which of the readings that count stands in the middle. */
function rank(which: "lower" | "upper", help: string): ComputedColumn {
  return helper(
    {
      id: `${which}Rank`,
      label: which === "lower" ? "Lower rank" : "Upper rank",
      type: "whole number",
      format: "0",
      width: 8,
      help,
    },
    ({ bath, baselineReadings }) => blankIf([isBlank(bath)], middleRanks(baselineReadings)[which]),
  );
}

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
    ({ bath, lastConcentrate, benchTestsSince }, { benchTests }) => {
      const notPassed = countWhere(benchTests, {
        bath,
        when: after(lastConcentrate),
        supersededAt: never,
        result: otherThan("pass"),
      });
      return blankIf(
        [isBlank(bath)],
        when(equal(lastConcentrate, 0), bench.noCharge)
          .when(equal(benchTestsSince, 0), bench.untested)
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
        [isBlank(row.temperatureSpread)],
        when(isOver(row.temperatureSpread, named.temperatureGap), "").otherwise(
          medianOf({ lower: row.lowerRank, upper: row.upperRank }, (k) =>
            largestWhere(readings, "phCorrected", { bath: row.bath, countedBelow: below(k) }),
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
      const { baseline, readingsSay, readingsDoubt, baselineOff } = row;
      return blankIf(
        [isBlank(row.bath)],
        when(isNoNumber(baseline), readingsSay)
          .when(isNoNumber(row.baselineTemperature), baselineStanding.noTemperature)
          .when(equal(row.baselineOlder, 1), baselineStanding.older)
          .when(isFilled(readingsDoubt), readingsDoubt)
          .when(isFilled(baselineOff), baselineOff)
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
        medianOf({ lower: row.lowerRank, upper: row.upperRank }, (k) =>
          largestWhere(readings, "ph", { bath: row.bath, countedBelowAsRead: below(k) }),
        ),
      ),
  ),
  helper(
    {
      id: "benchTestsSince",
      label: "Bench tests since",
      type: "whole number",
      format: "0",
      width: 8,
      help: "How many there are since the last concentrate.",
    },
    ({ bath, lastConcentrate }, { benchTests }) =>
      blankIf([isBlank(bath)], countWhere(benchTests, { bath, when: after(lastConcentrate) })),
  ),
  rank("lower", "Of the readings that give the baseline, the lower in the middle."),
  rank("upper", "Of the readings that give the baseline, the upper in the middle."),
  helper(
    {
      id: "temperatureSpread",
      label: "Temperatures apart",
      type: "number",
      unit: temperature,
      format: "0.0",
      width: 9,
      help: "From the coldest to the warmest sample of the readings that count; blank where they are too few.",
    },
    (row, { readings }) =>
      blankIf(
        [isBlank(row.bath), isUnder(row.baselineReadings, fewestBaselineReadings)],
        minus(
          largestWhere(readings, "temperature", countedOf(row)),
          smallestWhere(readings, "temperature", countedOf(row)),
        ),
      ),
  ),
  helper(
    {
      id: "baselineOlder",
      label: "Older than the dose",
      type: "whole number",
      format: "0",
      width: 8,
      help: "1 where the baseline was set before the last opening dose and too few readings have followed.",
    },
    ({ bath, baselineReadings, baselineSetAt, lastOpening }) =>
      blankIf(
        [isBlank(bath)],
        when(
          all(
            isUnder(baselineReadings, fewestBaselineReadings),
            isNumber(baselineSetAt),
            isAfter(lastOpening, baselineSetAt),
          ),
          1,
        ).otherwise(0),
      ),
  ),
  helper(
    {
      id: "readingsSay",
      label: "Readings by themselves",
      type: "text",
      width: 14,
      help: "How far the readings are that give a baseline.",
    },
    ({ bath, baselineReadings, baselineGiven }) =>
      blankIf(
        [isBlank(bath)],
        when(equal(baselineReadings, 0), "")
          .when(
            isUnder(baselineReadings, fewestBaselineReadings),
            joined(baselineReadings, ` of ${fewestBaselineReadings} readings`),
          )
          .when(isBlank(baselineGiven), baselineStanding.differ)
          .otherwise(baselineStanding.unwritten),
      ),
  ),
  helper(
    {
      id: "readingsDoubt",
      label: "Readings give none",
      type: "text",
      width: 14,
      help: "Why they give no baseline to hold what is written down against; blank where they give one.",
    },
    ({ baselineReadings, readingsSay }) =>
      when(equal(baselineReadings, 0), baselineStanding.noReadings)
        .when(any(isBlank(readingsSay), is(readingsSay, baselineStanding.unwritten)), "")
        .otherwise(readingsSay),
  ),
  helper(
    {
      id: "baselineOff",
      label: "Readings differ",
      type: "text",
      width: 14,
      help: "What its readings give where that is not what is written down; blank where it is.",
    },
    ({ baseline, baselineTemperature, baselineGiven, temperatureGiven }) =>
      blankIf(
        [isNoNumber(baseline), isNoNumber(baselineTemperature), isBlank(baselineGiven)],
        when(
          isAtLeast(absolute(minus(baselineGiven, baseline)), lastHundredth),
          joined(`${baselineStanding.otherPh} `, apply("TEXT", baselineGiven, "0.00")),
        )
          .when(
            isAtLeast(absolute(minus(temperatureGiven, baselineTemperature)), lastTenth),
            joined(`${baselineStanding.otherTemperature} `, apply("TEXT", temperatureGiven, "0.0")),
          )
          .otherwise(""),
      ),
  ),
];

/** Nothing is judged by a baseline whose temperature is not known. */
export const hasNoBaseline = ({ baseline, baselineTemperature }: Row<"baths">): Condition =>
  any(isNoNumber(baseline), isNoNumber(baselineTemperature));

/** The column of a bath's row on another sheet that holds what it is judged by. */
export const baselineColumn = {
  id: "bathBaseline",
  label: "Baseline",
  type: "number",
  format: "0.00",
  width: 8,
  help: "Of the bath; blank where its temperature is not known.",
} as const;

/** What the row of a bath is judged by; "" where there is none. */
export function baselineAt(bathRow: Expression, { baths }: Log): Expression {
  const bath = rowAt(baths, bathRow);
  return blankIf([isBlank(bathRow)], blankIf([hasNoBaseline(bath)], bath.baseline));
}

/** What verdicts as read are held to. */
export const asReadOf = ({ baseline, baselineAsRead }: Row<"baths">): Expression =>
  when(isNumber(baselineAsRead), baselineAsRead).otherwise(baseline);
