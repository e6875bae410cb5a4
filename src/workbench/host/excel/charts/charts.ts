import type { Area } from "../../address.ts";
import { ExcelError } from "../../excel-error.ts";
import type { GridChart } from "../../library.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import { rangeTarget } from "../ranges/range-target.ts";
import { CollectionObject } from "../requests/collection-object.ts";
import type { Finding, Requests } from "../requests/requests.ts";
import { ChartObject } from "./chart-object.ts";

/** Excel's chart types that the stand-in draws, by the grid's. */
const gridTypes: Readonly<Record<string, GridChart["type"]>> = {
  BarClustered: "bar",
  XYScatter: "scatter",
  XYScatterLines: "line",
  XYScatterLinesNoMarkers: "line",
  XYScatterSmooth: "line",
  XYScatterSmoothNoMarkers: "line",
  Line: "line",
  LineMarkers: "line",
};

export class ChartsObject
  extends CollectionObject<string, string, Excel.Chart, Excel.ChartCollection>
  implements Pick<Excel.ChartCollection, "add" | "items" | "getCount" | "getItem" | "getItemOrNullObject">
{
  constructor(requests: Requests, finding: Finding<string>) {
    super(requests, "ChartCollection", finding);
  }

  protected entries(sheet: string, workbook: Workbook): readonly string[] {
    return workbook.charts.on(sheet);
  }

  protected item(chartId: string): Excel.Chart {
    return new ChartObject(this.requests, { what: "chart", find: () => chartId }).face;
  }

  private find(name: string, orNull: boolean): Excel.Chart {
    const find = (workbook: Workbook): string | undefined =>
      workbook.charts.on(this.live()).find((chartId) => workbook.charts.names.get(chartId) === name);
    return new ChartObject(this.requests, { what: `chart ${name}`, orNull: () => orNull, find }).face;
  }

  getItem(name: string): Excel.Chart {
    return this.find(name, false);
  }
  getItemOrNullObject(name: string): Excel.Chart {
    return this.find(name, true);
  }

  add(type: Parameters<Excel.ChartCollection["add"]>[0], sourceData: Excel.Range): Excel.Chart {
    const gridType = gridTypes[type];
    if (gridType === undefined)
      throw new ExcelError("NotImplemented", `The stand-in draws no ${type} chart.`, "ChartCollection.add");
    const source: () => Area = rangeTarget(sourceData);
    let added: string | undefined;
    this.change("add", (sheet, workbook) => {
      workbook.requireUnlocked(sheet, "ChartCollection.add");
      added = workbook.charts.add(sheet, gridType, source());
      workbook.charts.names.set(added, `Chart ${workbook.charts.on(sheet).length}`);
    });
    return new ChartObject(this.requests, { what: "chart", find: () => added }).face;
  }
}
