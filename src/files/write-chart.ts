import type { Worksheet } from "@cj-tech-master/excelts";

import { absoluteArea, cellAddress } from "../joblog/layout/addresses.ts";
import type { ChartPlan, ChartSeriesPlan } from "../joblog/model/plan.ts";

type FileChart = Parameters<Worksheet["addChart"]>[0];

type FileSeries = NonNullable<FileChart["series"]>[number];

function markerOf({ mark, color }: ChartSeriesPlan): NonNullable<FileSeries["marker"]> {
  return mark === "points" ? { symbol: "circle", size: 6, fill: color } : { symbol: "none" };
}

function series(plan: ChartSeriesPlan): FileSeries {
  return {
    name: plan.label,
    xValues: absoluteArea(plan.dataSheet, plan.x),
    values: absoluteArea(plan.dataSheet, plan.y),
    line: plan.color,
    lineWidth: plan.mark === "points" ? 1.5 : 1.25,
    smooth: false,
    ...(plan.mark === "dashes" ? { lineDash: "dash" } : {}),
    marker: markerOf(plan),
  };
}

function bars(plan: ChartSeriesPlan): FileSeries {
  return {
    name: plan.label,
    categories: absoluteArea(plan.dataSheet, plan.x),
    values: absoluteArea(plan.dataSheet, plan.y),
    fill: plan.color,
  };
}

function shapeOf({ kind }: ChartPlan): Pick<FileChart, "type" | "scatterStyle" | "barDir"> {
  return kind === "bars" ? { type: "bar", barDir: "bar" } : { type: "scatter", scatterStyle: "lineMarker" };
}

/** Three quarters of a point, in EMU. */
const hairline = 9525;

/**
 * A native chart that reads its cells, so that it follows the log. The data sheet must be written
 * already: the chart keeps a copy of its values for programs that only show files.
 */
export function writeChart(worksheet: Worksheet, plan: ChartPlan): void {
  const { row, column, rows, columns } = plan.area;
  worksheet.addChart(
    {
      ...shapeOf(plan),
      title: { paragraphs: [{ runs: [{ text: plan.title, properties: { size: 1000, bold: true } }] }] },
      showLegend: plan.series.length > 1,
      legendPosition: "b",
      displayBlanksAs: "span",
      categoryAxis: {
        title: plan.xTitle,
        numFmt: plan.xFormat,
        minorTickMark: "none",
        majorGridlines: false,
        ...(plan.kind === "bars" ? { orientation: "maxMin" } : {}),
      },
      valueAxis: {
        title: plan.yTitle,
        numFmt: plan.yFormat,
        ...(plan.yFrom === undefined ? {} : { min: plan.yFrom }),
        minorTickMark: "none",
        majorGridlinesStyle: { line: { color: { srgb: "D3DCDE" }, width: hairline } },
        ...(plan.kind === "bars" ? { crosses: "max" } : {}),
      },
      series: plan.series.map((one) => (plan.kind === "bars" ? bars(one) : series(one))),
    },
    `${cellAddress(row, column)}:${cellAddress(row + rows - 1, column + columns - 1)}`,
  );
}
