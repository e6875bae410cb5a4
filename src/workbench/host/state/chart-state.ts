import type { AxisState, ChartState, SeriesState } from "../../../state/workbook-state.ts";
import type { GridChart } from "../library.ts";
import type { SeriesNotes } from "../workbook/charts.ts";

type GridAxis = NonNullable<NonNullable<GridChart["axesDesign"]>["x"]>;

function axisOf(axis: GridAxis | undefined): AxisState {
  return {
    ...(axis?.title?.text === undefined ? {} : { title: axis.title.text }),
    ...(axis?.min === undefined ? {} : { min: axis.min }),
    ...(axis?.max === undefined ? {} : { max: axis.max }),
  };
}

function isOfOurKinds(definition: { readonly type: string }): definition is GridChart {
  return ["line", "scatter", "bar"].includes(definition.type);
}

/** What Excel could draw of a chart of the grid; undefined where it is of a kind that the add-in does not make. */
export function chartState(
  definition: { readonly type: string },
  known: {
    readonly name: string;
    readonly automaticMinimum: boolean;
    readonly series: ReadonlyMap<string, SeriesNotes>;
  },
): ChartState | undefined {
  if (!isOfOurKinds(definition) || definition.dataSource.type !== "range") return undefined;
  const { dataSource, dataSetStyles, axesDesign } = definition;
  return {
    kind: definition.type,
    name: known.name,
    title: definition.title.text ?? "",
    ...(dataSource.labelRange === undefined ? {} : { labels: dataSource.labelRange }),
    series: dataSource.dataSets.map(({ dataSetId, dataRange }): SeriesState => {
      const { label, backgroundColor } = dataSetStyles[dataSetId] ?? {};
      return {
        values: dataRange,
        ...(label === undefined ? {} : { label }),
        ...(backgroundColor === undefined ? {} : { color: backgroundColor }),
        ...known.series.get(dataSetId),
      };
    }),
    ...(definition.type === "bar" ? { horizontal: definition.horizontal === true } : {}),
    legend: definition.legendPosition,
    x: axisOf(axesDesign?.x),
    y: axisOf(axesDesign?.y),
    ...(known.automaticMinimum ? { automaticMinimum: true } : {}),
  };
}

function gridAxis({ title, min, max }: AxisState = {}): GridAxis {
  return {
    ...(title === undefined ? {} : { title: { text: title } }),
    ...(min === undefined ? {} : { min }),
    ...(max === undefined ? {} : { max }),
  };
}

/** The id of a series in a chart that was made from a state. */
export function seriesId(index: number): string {
  return String(index);
}

/** The chart as the grid draws it. */
export function gridChart(chart: ChartState): object {
  return {
    type: chart.kind,
    title: { text: chart.title },
    dataSource: {
      type: "range",
      dataSets: chart.series.map(({ values }, index) => ({ dataSetId: seriesId(index), dataRange: values })),
      dataSetsHaveTitle: false,
      ...(chart.labels === undefined ? {} : { labelRange: chart.labels }),
    },
    dataSetStyles: Object.fromEntries(
      chart.series.map(({ label, color }, index) => [
        seriesId(index),
        {
          ...(label === undefined ? {} : { label }),
          ...(color === undefined ? {} : { backgroundColor: color }),
        },
      ]),
    ),
    legendPosition: chart.legend,
    labelsAsText: false,
    aggregated: false,
    axesDesign: { x: gridAxis(chart.x), y: gridAxis(chart.y) },
    ...(chart.kind === "line" ? { stacked: false, cumulative: false } : {}),
    ...(chart.kind === "bar" ? { stacked: false, horizontal: chart.horizontal === true } : {}),
  };
}

/** A chart of the grid without what is as usual and without the ids of its series, to be compared with another. */
export function bareChart(definition: object): object {
  const ids = new Map<string, string>();
  const { dataSource } = definition as Partial<GridChart>;
  if (dataSource?.type === "range")
    dataSource.dataSets.forEach(({ dataSetId }, index) => ids.set(dataSetId, seriesId(index)));
  const bare = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(bare);
    if (typeof value !== "object" || value === null)
      return typeof value === "string" ? (ids.get(value) ?? value) : value;
    const members = Object.entries(value).map(([key, member]) => [ids.get(key) ?? key, bare(member)] as const);
    const kept = members.filter(([, member]) => !isUsual(member));
    return kept.length === 0 ? undefined : Object.fromEntries(kept);
  };
  return bare(definition) ?? {};
}

function isUsual(member: unknown): boolean {
  return member === undefined || member === null || member === false || member === "";
}
