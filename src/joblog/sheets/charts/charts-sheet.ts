import { joined } from "../../formula/arithmetic.ts";
import { when } from "../../formula/choices.ts";
import { isBlank, isNumber } from "../../formula/conditions.ts";
import { apply, type Expression, type Value } from "../../formula/expression.ts";
import type { Log } from "../../formula/log-names.ts";
import { rowAt } from "../../formula/lookups.ts";
import type { FieldDefinition, SheetDefinition } from "../../model/definition.ts";
import { concentrateChart, costChart } from "../additions/addition-charts.ts";
import { chartedBath, chartLines } from "./chart-lines.ts";
import { phChart } from "./ph-chart.ts";

/** Which bath a chart shows, or that there is none; a chart's own title cannot follow a cell in every program. */
function heading(
  id: string,
  name: string,
  ordinal: string,
  chart: number,
  words: (log: Log) => Value,
): FieldDefinition {
  return {
    id,
    name,
    label: `Over the chart of the ${ordinal} bath`,
    type: "text",
    help: "Says which bath the chart under it shows.",
    formula: (log) =>
      when(isBlank(chartedBath(log, chart)), `No ${ordinal} bath yet: the chart is empty`).otherwise(
        joined("Bath ", chartedBath(log, chart), words(log)),
      ),
  };
}

const phText = (ph: Expression): Expression => apply("TEXT", ph, "0.00");

function phHeading(id: string, name: string, ordinal: string, chart: number): FieldDefinition {
  return heading(id, name, ordinal, chart, (log) => {
    const { chartBaseline, chartTrigger } = rowAt(log.chartLines, chart);
    const both = joined(": baseline ", phText(chartBaseline), ", trigger ", phText(chartTrigger));
    return when(isNumber(chartBaseline), both).otherwise(": no baseline yet");
  });
}

export const chartsSheet: SheetDefinition = {
  id: "charts",
  name: "Charts",
  title: "Charts",
  purpose:
    "The pH of up to four baths against their baselines, and what went into the first of them. Another bath comes first where the sheet Baths says so.",
  caution:
    "A chart helps to see; it decides nothing. Samples read hot are left out, and soap from soil holds a pH up: the verdict on Readings and the bench test count.",
  fields: [
    phHeading("chartFirst", "Chart.First", "first", 1),
    phHeading("chartSecond", "Chart.Second", "second", 2),
    heading("chartConcentrate", "Chart.Concentrate", "first", 1, () => ": concentrate added"),
    heading("chartCost", "Chart.Cost", "first", 1, () => ": cost of concentrate and water"),
    phHeading("chartThird", "Chart.Third", "third", 3),
    phHeading("chartFourth", "Chart.Fourth", "fourth", 4),
  ],
  tables: [chartLines],
  charts: [phChart(1), phChart(2), concentrateChart, costChart, phChart(3), phChart(4)],
  arrangement: "charts",
  tabColor: "#35698C",
  pagesWide: 1,
  orientation: "landscape",
};
