import type { Workbook } from "../../workbook/workbook.ts";
import { rangeTarget } from "../ranges/range-target.ts";
import { ClientObject, partOf } from "../requests/client-object.ts";
import { CollectionObject } from "../requests/collection-object.ts";
import { guard } from "../requests/guard.ts";
import type { Finding, Requests } from "../requests/requests.ts";

interface SeriesTarget {
  readonly chartId: string;
  readonly dataSetId: string;
}

type Members =
  | "name"
  | "setXAxisValues"
  | "setValues"
  | "markerStyle"
  | "markerSize"
  | "markerBackgroundColor"
  | "markerForegroundColor"
  | "format"
  | "delete"
  | "smooth";

/** The grid draws colour and name; markers and dashes are kept for a file, weight is taken and lost. */
class ChartSeriesObject
  extends ClientObject<SeriesTarget, Excel.ChartSeries>
  implements Pick<Excel.ChartSeries, Members>
{
  protected readonly scalars = ["name"];
  readonly format: Excel.ChartSeriesFormat;
  private givenMarkerStyle: Excel.ChartSeries["markerStyle"] = "Automatic";
  markerSize = 5;
  markerBackgroundColor = "";
  markerForegroundColor = "";
  smooth = false;

  constructor(requests: Requests, finding: Finding<SeriesTarget>) {
    super(requests, "ChartSeries", finding);
    this.format = guard("ChartSeriesFormat", {
      line: guard("ChartLineFormat", this.lineMembers()),
      fill: guard("ChartFill", {
        setSolidColor: (color: string): void => {
          this.paint("format.fill.setSolidColor", color);
        },
      }),
    }) as Excel.ChartSeriesFormat;
  }

  protected fetch(_property: string, { chartId, dataSetId }: SeriesTarget, workbook: Workbook): unknown {
    return workbook.charts.definition(chartId).dataSetStyles[dataSetId]?.label ?? "";
  }

  private paint(member: string, color: string): void {
    this.change(member, ({ chartId, dataSetId }, { charts }) => {
      charts.setSeries(chartId, dataSetId, { color });
    });
  }

  /** As Excel names it. */
  get markerStyle(): Excel.ChartSeries["markerStyle"] {
    return this.givenMarkerStyle;
  }
  set markerStyle(style: Excel.ChartSeries["markerStyle"]) {
    this.givenMarkerStyle = style;
    this.change("markerStyle", ({ chartId, dataSetId }, { charts }) => {
      charts.noteSeries(chartId, dataSetId, { markers: style !== "None" });
    });
  }

  private lineMembers(): object {
    let given = "";
    let lineStyle = "Continuous";
    const dash = (style: string): void => {
      lineStyle = style;
      this.change("format.line.lineStyle", ({ chartId, dataSetId }, { charts }) => {
        charts.noteSeries(chartId, dataSetId, { dashed: style !== "Continuous" });
      });
    };
    const paint = (color: string): void => {
      given = color;
      this.paint("format.line.color", color);
    };
    return {
      weight: 1,
      get lineStyle(): string {
        return lineStyle;
      },
      set lineStyle(style: string) {
        dash(style);
      },
      get color(): string {
        return given;
      },
      set color(color: string) {
        paint(color);
      },
    };
  }

  get name(): string {
    return this.loadedValue("name") as string;
  }
  set name(name: string) {
    this.change(
      "name",
      ({ chartId, dataSetId }, { charts }) => {
        charts.setSeries(chartId, dataSetId, { name });
      },
      name,
    );
  }

  setValues(sourceData: Excel.Range): void {
    const values = rangeTarget(sourceData);
    this.change("setValues", ({ chartId, dataSetId }, { charts }) => {
      charts.setSeries(chartId, dataSetId, { values: values() });
    });
  }

  setXAxisValues(sourceData: Excel.Range): void {
    const x = rangeTarget(sourceData);
    this.change("setXAxisValues", ({ chartId, dataSetId }, { charts }) => {
      charts.setSeries(chartId, dataSetId, { x: x() });
    });
  }

  delete(): void {
    this.change("delete", ({ chartId, dataSetId }, { charts }) => {
      charts.removeSeries(chartId, dataSetId);
    });
  }
}

export class ChartSeriesListObject
  extends CollectionObject<string, string, Excel.ChartSeries, Excel.ChartSeriesCollection>
  implements Pick<Excel.ChartSeriesCollection, "items" | "add">
{
  constructor(requests: Requests, finding: Finding<string>) {
    super(requests, "ChartSeriesCollection", finding);
  }

  protected entries(chartId: string, workbook: Workbook): readonly string[] {
    return workbook.charts.seriesOf(chartId);
  }

  protected item(dataSetId: string): Excel.ChartSeries {
    return new ChartSeriesObject(
      this.requests,
      partOf(this, "series", (chartId) => ({ chartId, dataSetId })),
    ).face;
  }

  add(name?: string): Excel.ChartSeries {
    let added: SeriesTarget | undefined;
    this.change("add", (chartId, { charts }) => {
      added = { chartId, dataSetId: charts.addSeries(chartId, name ?? "") };
    });
    return new ChartSeriesObject(this.requests, { what: "series", find: () => added }).face;
  }
}
