import type { Area } from "../address.ts";
import type { GridChart } from "../library.ts";
import { type Charts, rangeText } from "./charts.ts";
import type { Grid } from "./grid/grid.ts";
import { stretchedRange } from "./stretched-range.ts";

/** Charts over a table's columns reach down to its new last row, as in Excel. */
export function stretchCharts(grid: Grid, charts: Charts, table: Area, formerRows: number): void {
  for (const chartId of grid.model.getters.getSheetIds().flatMap((sheet) => charts.on(sheet))) {
    const definition = charts.definition(chartId);
    if (definition.dataSource.type !== "range") continue;
    const stretch = (range: string): string => {
      const wider = stretchedRange(grid, range, table, formerRows, charts.sheetOf(chartId));
      return wider === undefined ? range : rangeText(grid, wider);
    };
    const { dataSets, labelRange } = definition.dataSource;
    const wider = dataSets.map((one) => ({ ...one, dataRange: stretch(one.dataRange) }));
    const label = labelRange === undefined ? undefined : stretch(labelRange);
    if (label === labelRange && wider.every(({ dataRange }, index) => dataRange === dataSets[index]?.dataRange))
      continue;
    charts.update(
      chartId,
      () =>
        ({
          ...definition,
          dataSource: {
            ...definition.dataSource,
            dataSets: wider,
            ...(label === undefined ? {} : { labelRange: label }),
          },
        }) as GridChart,
    );
  }
}
