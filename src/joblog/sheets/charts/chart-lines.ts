import { asText, largest, minus, notAvailable, plus } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isAtLeast, isBlank, isNumber } from "../../formula/conditions.ts";
import { largestWhere, smallestWhere } from "../../formula/criteria.ts";
import { apply, type Expression } from "../../formula/expression.ts";
import type { Log } from "../../formula/log-names.ts";
import { cellAt, matchIn, rowAt, thisLine } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn, TableDefinition } from "../../model/definition.ts";

const { helper } = columnsOf<"chartLines">();

/** How many baths have a chart of their own. */
export const chartedBaths = 4;

/** The bath that a chart shows, by the chart's number. */
export function chartedBath({ chartLines: lines }: Log, chart: number): Expression {
  return cellAt(lines.bath, chart);
}

function reading(id: string, label: string, help: string, extreme: typeof smallestWhere): ComputedColumn {
  return helper({ id, label, type: "date and time", width: 16, help }, ({ bath }, { readings }) => {
    const when = extreme(readings, "when", { bath });
    return blankIf([isBlank(bath)], blankIf([equal(when, 0)], when));
  });
}

/** A chart passes over #N/A, where a blank would be drawn as 0. */
function level(id: string, label: string, column: "baseline" | "trigger"): ComputedColumn {
  return helper(
    {
      id,
      label,
      type: "number",
      format: "0.00",
      width: 14,
      help: "Of the bath in this line's chart, drawn from its first reading to its last.",
    },
    ({ bath, bathRow }, { baths }) => {
      const value = rowAt(baths, bathRow)[column];
      return when(isBlank(bath), notAvailable).when(isNumber(value), value).otherwise(notAvailable);
    },
  );
}

const shown = ["chartBaseline", "chartBaselineTo", "chartTrigger", "chartTriggerTo"];

/** One line for each pH chart: its bath, and the two ends of its baseline and trigger. */
export const chartLines: TableDefinition = {
  id: "chartLines",
  name: "ChartLines",
  caption: "What the charts show",
  emptyRows: chartedBaths,
  fixedRows: true,
  columns: [
    helper(
      {
        id: "bath",
        label: "Bath",
        type: "text",
        width: 14,
        help: "First the bath chosen on the sheet Baths, or its first; then the others.",
      },
      ({ place }, { baths }) => blankIf([isBlank(place)], asText(cellAt(baths.bath, place))),
    ),
    helper(
      { id: "bathRow", label: "Bath row", type: "whole number", format: "0", width: 12, help: "Position in Baths." },
      ({ bath, place }) => blankIf([isBlank(bath)], place),
    ),
    reading("from", "First reading", "Where the lines begin.", smallestWhere),
    reading("to", "Last reading", "Where they end.", largestWhere),
    level("chartBaseline", "Baseline", "baseline"),
    level("chartBaselineTo", "Baseline to", "baseline"),
    level("chartTrigger", "Trigger", "trigger"),
    level("chartTriggerTo", "Trigger to", "trigger"),
    helper(
      { id: "line", label: "Line", type: "whole number", format: "0", width: 8, help: "Running number of the line." },
      (_, { chartLines: { line } }) => thisLine(line),
    ),
    helper(
      {
        id: "first",
        label: "First bath",
        type: "whole number",
        format: "0",
        width: 8,
        help: "Position in Baths of the bath asked for, or else of the first.",
      },
      (_, { named, baths }) => {
        const match = matchIn(named.chartBath, baths.bath);
        return when(isBlank(named.chartBath), 1).when(apply("ISNA", match), 1).otherwise(match);
      },
    ),
    helper(
      {
        id: "other",
        label: "Other baths",
        type: "whole number",
        format: "0",
        width: 8,
        help: "Which of the other baths the line shows: the newest where there are more than lines.",
      },
      ({ line }, { baths }) => minus(plus(largest(0, minus(apply("ROWS", baths.bath), chartedBaths)), line), 1),
    ),
    helper(
      {
        id: "place",
        label: "Place",
        type: "whole number",
        format: "0",
        width: 8,
        help: "The first line's bath is the one asked for; the others follow by their rows.",
      },
      ({ line, first, other }, { baths }) =>
        when(equal(line, 1), first)
          .when(isAtLeast(other, apply("ROWS", baths.bath)), "")
          .otherwise(plus(other, when(isAtLeast(other, first), 1).otherwise(0))),
    ),
  ],
  signals: shown.map((column) => ({ column, when: "not available", look: "quiet" })),
};
