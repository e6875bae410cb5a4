import type { AreaPlan, ChartPlan, ChartSeriesPlan } from "../joblog/plan.ts";

function rangeOf(worksheet: Excel.Worksheet, area: AreaPlan): Excel.Range {
  return worksheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns);
}

/**
 * Puts an empty frame of the chart in place. Excel invents series from the source range, so how many
 * there are is known only after a sync; `fillChart` then makes them the planned ones.
 */
export function placeChart(plan: ChartPlan, on: Excel.Worksheet, data: Excel.Worksheet): Excel.Chart {
  const first = plan.series[0];
  if (first === undefined) throw new RangeError(`Chart ${plan.id} has no series.`);
  const chart = on.charts.add("XYScatterLines", rangeOf(data, first.y), "Columns");
  chart.name = plan.id;
  chart.title.text = plan.title;
  const { row, column, rows, columns } = plan.area;
  chart.setPosition(on.getRangeByIndexes(row, column, 1, 1), on.getRangeByIndexes(row + rows - 1, column + columns - 1, 1, 1));
  chart.legend.position = "Bottom";
  chart.axes.categoryAxis.title.text = plan.xTitle;
  chart.axes.valueAxis.title.text = plan.yTitle;
  chart.series.load("items");
  return chart;
}

function drawSeries(series: Excel.ChartSeries, plan: ChartSeriesPlan, data: Excel.Worksheet): void {
  series.name = plan.label;
  series.setXAxisValues(rangeOf(data, plan.x));
  series.setValues(rangeOf(data, plan.y));
  series.markerStyle = plan.mark === "points" ? "Circle" : "None";
  series.format.line.color = plan.color;
  series.format.line.weight = plan.mark === "points" ? 1.5 : 1.25;
  series.format.line.lineStyle = plan.mark === "dashes" ? "Dash" : "Continuous";
}

/** Gives a placed chart (its series loaded) exactly the planned series. */
export function fillChart(chart: Excel.Chart, plan: ChartPlan, data: Excel.Worksheet): void {
  const invented = chart.series.items;
  plan.series.forEach((series, index) => {
    drawSeries(invented[index] ?? chart.series.add(series.label), series, data);
  });
  for (const surplus of invented.slice(plan.series.length)) surplus.delete();
}
