import { notAvailable } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import {
  all,
  any,
  equal,
  is,
  isBlank,
  isFilled,
  isNoNumber,
  isNot,
  isNumber,
  isOver,
  unequal,
} from "../../formula/conditions.ts";
import { below, countWhere, largestWhere, upTo } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Log, Row } from "../../formula/log-names.ts";
import { rowAt } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { bench } from "../../model/words.ts";
import { bathRow } from "../baths/bath-row.ts";
import { chartedBath, chartedBaths } from "../charts/chart-lines.ts";
import { chartColumn } from "../charts/ph-chart.ts";
import { isToBeChecked } from "./reading-check.ts";

const { helper } = columnsOf<"readings">();

/** A chart passes over #N/A, where a blank would be drawn as 0. */
function charted(reading: Row<"readings">, log: Log, chart: number, value: Expression): Expression {
  const isInChart = equal(reading.bath, chartedBath(log, chart));
  return when(isToBeChecked(reading), notAvailable)
    .when(all(isFilled(reading.bathRow), isInChart, isNumber(reading.when)), value)
    .otherwise(notAvailable);
}

const ifNumber = (value: Expression): Expression => when(isNumber(value), value).otherwise(notAvailable);

function chartPoints(chart: number): ComputedColumn {
  return helper(
    {
      id: chartColumn(chart),
      label: chart === 1 ? "Chart pH" : `Chart ${String(chart)} pH`,
      type: "number",
      format: "0.00",
      width: 8,
      help: "Of the bath in that chart, at the baseline's temperature.",
    },
    (reading, log) => charted(reading, log, chart, reading.chartablePh),
  );
}

/** Gives the median without array formulas. */
function countedBelow(id: string, label: string, ph: "ph" | "phCorrected"): ComputedColumn {
  return helper(
    {
      id,
      label,
      type: "whole number",
      format: "0",
      width: 9,
      help: "How many counting readings of the bath are lower: gives the median.",
    },
    (reading, { readings }) =>
      blankIf(
        [unequal(reading.counted, 1)],
        countWhere(readings, { bath: reading.bath, counted: 1, [ph]: below(reading[ph]) }),
      ),
  );
}

export const readingHelpers: readonly ComputedColumn[] = [
  bathRow,
  helper(
    {
      id: "lastConcentrate",
      label: "Concentrate before",
      type: "date and time",
      width: 16,
      help: "Last concentrate added to the bath by then; 0 if none.",
    },
    (reading, { additions }) =>
      blankIf(
        [isBlank(reading.bathRow), isNoNumber(reading.when)],
        largestWhere(additions, "when", { bath: reading.bath, kind: "concentrate", when: upTo(reading.when) }),
      ),
  ),
  helper(
    {
      id: "counted",
      label: "Counts for baseline",
      type: "whole number",
      format: "0",
      width: 9,
      help: "1 where the reading counts for the baseline.",
    },
    (reading, { baths }) => {
      const { lastOpening } = rowAt(baths, reading.bathRow);
      return blankIf(
        [isBlank(reading.bathRow), isNot(reading.purpose, "baseline")],
        when(isNot(reading.benchAtTime, bench.accepted), 0)
          .when(all(isNumber(reading.ph), isNumber(reading.temperature), isOver(reading.when, lastOpening)), 1)
          .otherwise(0),
      );
    },
  ),
  countedBelow("countedBelow", "Counted below", "phCorrected"),
  countedBelow("countedBelowAsRead", "Counted below, as read", "ph"),
  helper(
    {
      id: "chartablePh",
      label: "pH for the charts",
      type: "number",
      format: "0.00",
      width: 8,
      help: "At the baseline's temperature; left out where the sample's is missing or far from it.",
    },
    ({ bathRow, ph, purpose, phCorrected, bathBaseline, degreesApart, phAtBaseline }, { named }) =>
      when(any(isBlank(bathRow), isNoNumber(ph), is(purpose, "rinse")), notAvailable)
        .when(isBlank(bathBaseline), phCorrected)
        .when(isBlank(degreesApart), notAvailable)
        .when(isOver(degreesApart, named.temperatureGap), notAvailable)
        .otherwise(ifNumber(phAtBaseline)),
  ),
  ...Array.from({ length: chartedBaths }, (_, index) => chartPoints(index + 1)),
  helper(
    {
      id: "chartBaseline",
      label: "Chart baseline",
      type: "number",
      format: "0.00",
      width: 9,
      help: "Of the first bath in the charts.",
    },
    (reading, log) => charted(reading, log, 1, ifNumber(rowAt(log.baths, reading.bathRow).baseline)),
  ),
  helper(
    {
      id: "chartTrigger",
      label: "Chart trigger",
      type: "number",
      format: "0.00",
      width: 8,
      help: "Of the first bath in the charts, at the baseline's temperature.",
    },
    (reading, log) => charted(reading, log, 1, ifNumber(rowAt(log.baths, reading.bathRow).trigger)),
  ),
];
