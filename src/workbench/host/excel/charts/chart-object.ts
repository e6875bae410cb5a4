import type { Area } from "../../address.ts";
import type { GridChart } from "../../library.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import { rangeTarget } from "../ranges/range-target.ts";
import { ClientObject, partOf } from "../requests/client-object.ts";
import { guard } from "../requests/guard.ts";
import type { Finding, Requests } from "../requests/requests.ts";
import { ChartSeriesListObject } from "./chart-series.ts";

type Members =
  "name" | "title" | "setPosition" | "series" | "axes" | "legend" | "delete" | "top" | "left" | "width" | "height";

/** The target is the grid's chart id. */
export class ChartObject
  extends ClientObject<string, Excel.Chart>
  implements Pick<Excel.Chart, Exclude<Members, "top" | "left" | "width" | "height">>
{
  protected readonly scalars = ["name"];
  readonly title: Excel.ChartTitle;
  readonly axes: Excel.ChartAxes;
  readonly legend: Excel.ChartLegend;

  constructor(requests: Requests, finding: Finding<string>) {
    super(requests, "Chart", finding);
    this.title = guard(
      "ChartTitle",
      this.members("title", {
        text: (definition, text) => ({ ...definition, title: { ...definition.title, text: String(text) } }),
        visible: (definition) => definition,
      }),
    ) as Excel.ChartTitle;
    this.axes = guard("ChartAxes", { valueAxis: this.axis("y"), categoryAxis: this.axis("x") }) as Excel.ChartAxes;
    this.legend = guard(
      "ChartLegend",
      this.members("legend", {
        position: (definition, position) => ({
          ...definition,
          legendPosition: legendPositions[String(position)] ?? "bottom",
        }),
        visible: (definition, visible) => ({
          ...definition,
          legendPosition: visible === false ? "none" : definition.legendPosition,
        }),
      }),
    ) as Excel.ChartLegend;
  }

  protected fetch(_property: string, chartId: string, workbook: Workbook): unknown {
    return workbook.charts.names.get(chartId) ?? "";
  }

  /** Properties that only write, each by amending the grid's definition. */
  private members(
    path: string,
    amend: Readonly<Record<string, (definition: GridChart, value: unknown) => GridChart>>,
  ): object {
    const given = new Map<string, unknown>();
    const properties = Object.entries(amend).map(([name, change]): [string, PropertyDescriptor] => [
      name,
      {
        get: (): unknown => given.get(name),
        set: (value: unknown): void => {
          given.set(name, value);
          this.change(`${path}.${name}`, (chartId, { charts }) => {
            charts.update(chartId, (definition) => change(definition, value));
          });
        },
      },
    ]);
    return Object.defineProperties({}, Object.fromEntries(properties));
  }

  private axis(id: "x" | "y"): unknown {
    const amended = (definition: GridChart, change: object): GridChart => ({
      ...definition,
      axesDesign: { ...definition.axesDesign, [id]: { ...definition.axesDesign?.[id], ...change } },
    });
    const path = `axes.${id}`;
    const title = guard(
      "ChartAxisTitle",
      this.members(`${path}.title`, {
        text: (definition, text) => amended(definition, { title: { text: String(text) } }),
        visible: (definition) => definition,
      }),
    );
    const members = this.members(path, {
      minimum: (definition, value) => amended(definition, { min: value }),
      maximum: (definition, value) => amended(definition, { max: value }),
      numberFormat: (definition) => definition,
    });
    return guard("ChartAxis", Object.defineProperty(members, "title", { value: title }));
  }

  get name(): string {
    return this.loadedValue("name") as string;
  }
  set name(name: string) {
    this.change(
      "name",
      (chartId, { charts }) => {
        charts.names.set(chartId, name);
      },
      name,
    );
  }

  get series(): Excel.ChartSeriesCollection {
    return this.part(
      "series",
      () =>
        new ChartSeriesListObject(
          this.requests,
          partOf(this, "series", (chartId) => chartId),
        ).face,
    );
  }

  setPosition(startCell: Excel.Range | string, endCell?: Excel.Range | string): void {
    const corner = (cell: Excel.Range | string): ((sheet: string, workbook: Workbook) => Area) => {
      if (typeof cell === "string") return (sheet, workbook) => workbook.area(cell, sheet);
      const target = rangeTarget(cell);
      return () => target();
    };
    const first = corner(startCell);
    const last = corner(endCell ?? startCell);
    this.change("setPosition", (chartId, workbook) => {
      const sheet = workbook.charts.sheetOf(chartId);
      const [start, end] = [first(sheet, workbook), last(sheet, workbook)];
      workbook.charts.place(chartId, {
        ...start,
        rows: end.row + end.rows - start.row,
        columns: end.column + end.columns - start.column,
      });
    });
  }

  delete(): void {
    this.change("delete", (chartId, { charts }) => {
      charts.remove(chartId);
    });
  }
}

const legendPositions: Readonly<Record<string, GridChart["legendPosition"]>> = {
  Top: "top",
  Bottom: "bottom",
  Left: "left",
  Right: "right",
};
