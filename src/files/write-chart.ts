import type { Worksheet } from "@cj-tech-master/excelts";
import type { ChartPlan, ChartSeriesPlan } from "../joblog/plan.ts";
import { absoluteArea, cellAddress } from "./addresses.ts";

type FileSeries = NonNullable<Parameters<Worksheet["addChart"]>[0]["series"]>[number];

function markerOf({ mark, color }: ChartSeriesPlan): NonNullable<FileSeries["marker"]> {
  return mark === "points" ? { symbol: "circle", size: 6, fill: color } : { symbol: "none" };
}

function series(plan: ChartSeriesPlan, dataSheet: string): FileSeries {
  return {
    name: plan.label,
    xValues: absoluteArea(dataSheet, plan.x),
    values: absoluteArea(dataSheet, plan.y),
    line: plan.color,
    lineWidth: plan.mark === "points" ? 1.5 : 1.25,
    smooth: false,
    ...(plan.mark === "dashes" ? { lineDash: "dash" } : {}),
    marker: markerOf(plan),
  };
}

/**
 * A native chart that reads its cells, so that it follows the log. The data sheet must be written
 * already: the chart keeps a copy of its values for programs that only show files.
 */
export function writeChart(worksheet: Worksheet, plan: ChartPlan): void {
  const { row, column, rows, columns } = plan.area;
  worksheet.addChart(
    {
      type: "scatter",
      scatterStyle: "lineMarker",
      title: { paragraphs: [{ runs: [{ text: plan.title, properties: { size: 1200, bold: true } }] }] },
      showLegend: true,
      legendPosition: "b",
      displayBlanksAs: "gap",
      categoryAxis: { title: plan.xTitle, numFmt: "mmm d hh:mm" },
      valueAxis: { title: plan.yTitle, numFmt: "0.0" },
      series: plan.series.map((one) => series(one, plan.dataSheet)),
    },
    `${cellAddress(row, column)}:${cellAddress(row + rows - 1, column + columns - 1)}`,
  );
}
