import type { ReleasedShape } from "../../joblog/model/definition.ts";
import type { AreaPlan, ChartPlan, ChartSeriesPlan } from "../../joblog/model/plan.ts";
import type { Locations } from "./locations.ts";
import type { SheetPlacement } from "./plan-placement.ts";

/** A planned chart that its sheet lacks. */
export interface MissingChart {
  readonly placement: SheetPlacement;
  readonly plan: ChartPlan;
}

/** A chart in place, whose series follow when Excel has said how many it invented. */
export interface DrawnChart {
  readonly chart: Excel.Chart;
  readonly plan: ChartPlan;
  readonly locations: Locations;
  readonly context: Excel.RequestContext;
}

const officeTypes = { scatter: "XYScatterLines", bars: "BarClustered" } as const;

/** All of a new sheet's; of a kept one those that an earlier version, `former`, did not have: a shop may have taken its own charts away. */
export function missingCharts(
  placements: readonly SheetPlacement[],
  former: ReleasedShape | undefined,
): readonly MissingChart[] {
  return placements.flatMap((placement) =>
    placement.plan.charts
      .filter(({ id }) => !placement.kept || (former !== undefined && !former.charts.includes(id)))
      .map((plan): MissingChart => ({ placement, plan })),
  );
}

function rangeOf(
  context: Excel.RequestContext,
  { dataSheet }: ChartSeriesPlan,
  planned: AreaPlan,
  locations: Locations,
): Excel.Range {
  const { sheet, area } = locations.area(dataSheet, planned);
  return context.workbook.worksheets.getItem(sheet).getRangeByIndexes(area.row, area.column, area.rows, area.columns);
}

function placeChart(
  context: Excel.RequestContext,
  { placement, plan }: MissingChart,
  locations: Locations,
): DrawnChart {
  const first = plan.series[0];
  if (first === undefined) throw new RangeError(`Chart ${plan.id} has no series.`);
  const on = context.workbook.worksheets.getItem(placement.actual);
  const chart = on.charts.add(officeTypes[plan.kind], rangeOf(context, first, first.y, locations), "Columns");
  chart.name = plan.id;
  chart.title.text = plan.title;
  const { row, column, rows, columns } = plan.area;
  chart.setPosition(
    on.getRangeByIndexes(row, column, 1, 1),
    on.getRangeByIndexes(row + rows - 1, column + columns - 1, 1, 1),
  );
  if (plan.series.length > 1) chart.legend.position = "Bottom";
  else chart.legend.visible = false;
  chart.axes.categoryAxis.title.text = plan.xTitle;
  chart.axes.valueAxis.title.text = plan.yTitle;
  if (plan.yFrom !== undefined) chart.axes.valueAxis.minimum = plan.yFrom;
  chart.series.load("items/name");
  return { chart, plan, locations, context };
}

/** Empty frames in place. Excel invents series from the source range, so how many there are is known only after a sync. */
export function placeCharts(
  context: Excel.RequestContext,
  charts: readonly MissingChart[],
  locations: Locations,
): readonly DrawnChart[] {
  return charts.map((chart) => placeChart(context, chart, locations));
}

function drawSeries(
  series: Excel.ChartSeries,
  plan: ChartSeriesPlan,
  { plan: chart, context, locations }: DrawnChart,
): void {
  series.name = plan.label;
  series.setXAxisValues(rangeOf(context, plan, plan.x, locations));
  series.setValues(rangeOf(context, plan, plan.y, locations));
  if (chart.kind === "bars") {
    series.format.fill.setSolidColor(plan.color);
    return;
  }
  series.markerStyle = plan.mark === "points" ? "Circle" : "None";
  series.format.line.color = plan.color;
  series.format.line.weight = plan.mark === "points" ? 1.5 : 1.25;
  series.format.line.lineStyle = plan.mark === "dashes" ? "Dash" : "Continuous";
}

/** Gives placed charts exactly the planned series; a sync must lie between placing and this. */
export function fillCharts(charts: readonly DrawnChart[]): void {
  for (const drawn of charts) {
    const invented = drawn.chart.series.items;
    drawn.plan.series.forEach((series, index) => {
      drawSeries(invented[index] ?? drawn.chart.series.add(series.label), series, drawn);
    });
    for (const surplus of invented.slice(drawn.plan.series.length)) surplus.delete();
  }
}
