import { notAvailable, rounded } from "../../formula/arithmetic.ts";
import { when } from "../../formula/choices.ts";
import { all, type Condition, equal, is, isFilled, isNumber } from "../../formula/conditions.ts";
import { sumWhere, upTo } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Log, Row } from "../../formula/log-names.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ChartDefinition, ComputedColumn } from "../../model/definition.ts";
import { volume } from "../../model/units-of.ts";
import { chartedBath } from "../charts/chart-lines.ts";

const { helper } = columnsOf<"additions">();

/** A point of the chosen bath's chart, at this line's time; any other line gives none. */
function point(addition: Row<"additions">, log: Log, isWanted: readonly Condition[], value: Expression): Expression {
  const { bath } = addition;
  return when(
    all(isFilled(bath), equal(bath, chartedBath(log, 1)), isNumber(addition.when), ...isWanted),
    value,
  ).otherwise(notAvailable);
}

/** Helper columns that feed the charts of what went into a bath. */
export const additionChartColumns: readonly ComputedColumn[] = [
  helper(
    {
      id: "chartTotal",
      label: "Concentrate so far",
      type: "number",
      unit: volume,
      format: "0.000",
      width: 9,
      help: "Concentrate so far, of the first bath in the charts.",
    },
    (addition, log) => {
      const { kind, runningTotal } = addition;
      return point(addition, log, [is(kind, "concentrate"), isNumber(runningTotal)], runningTotal);
    },
  ),
  helper(
    {
      id: "chartCost",
      label: "Cost so far",
      type: "money",
      format: "#,##0.00",
      width: 9,
      help: "Cost so far of concentrate and water, of the first bath in the charts.",
    },
    (addition, log) => {
      const soFar = sumWhere(log.additions, "cost", { bath: addition.bath, when: upTo(addition.when) });
      return point(addition, log, [isNumber(addition.cost)], rounded(soFar, 2));
    },
  ),
];

const shared = {
  kind: "scatter",
  table: "additions",
  x: "when",
  xTitle: "Date and time",
  xFormat: "mmm d hh:mm",
} as const;

export const concentrateChart: ChartDefinition = {
  ...shared,
  id: "Bathsheet.Concentrate",
  title: "Concentrate added so far, with the opening dose",
  yFormat: "0.0#",
  series: [{ column: "chartTotal", label: "Concentrate so far", color: "#7B5EA7", mark: "points" }],
};

export const costChart: ChartDefinition = {
  ...shared,
  id: "Bathsheet.Cost",
  title: "Cost of concentrate and water so far",
  yTitle: "Cost so far",
  yFormat: "#,##0.00",
  series: [{ column: "chartCost", label: "Cost so far", color: "#8A6A1F", mark: "points" }],
};
