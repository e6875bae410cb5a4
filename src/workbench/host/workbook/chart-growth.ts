import { parseLocalAddress, splitAddress, type Area } from "../address.ts";
import type { GridChart } from "../library.ts";
import { rangeText, type Charts } from "./charts.ts";
import type { Grid } from "./grid.ts";

function stretched(grid: Grid, range: string, table: Area, formerRows: number, home: string): string {
  const { sheetName, local } = splitAddress(range);
  const sheet = sheetName === undefined ? home : grid.model.getters.getSheetIdByName(sheetName);
  if (sheet !== table.sheet) return range;
  const area = parseLocalAddress(local, grid.sizeOf(sheet));
  const inside = area !== undefined && area.column >= table.column && area.column + area.columns <= table.column + table.columns && area.row > table.row;
  if (!inside || area.row + area.rows !== table.row + formerRows) return range;
  return rangeText(grid, { sheet, ...area, rows: table.row + table.rows - area.row });
}

/** Charts over a table's columns reach down to its new last row, as in Excel. */
export function stretchCharts(grid: Grid, charts: Charts, table: Area, formerRows: number): void {
  for (const chartId of grid.model.getters.getSheetIds().flatMap((sheet) => charts.on(sheet))) {
    const definition = charts.definition(chartId);
    if (definition.dataSource.type !== "range") continue;
    const stretch = (range: string): string => stretched(grid, range, table, formerRows, charts.sheetOf(chartId));
    const { dataSets, labelRange } = definition.dataSource;
    const wider = dataSets.map((one) => ({ ...one, dataRange: stretch(one.dataRange) }));
    const label = labelRange === undefined ? undefined : stretch(labelRange);
    if (label === labelRange && wider.every(({ dataRange }, index) => dataRange === dataSets[index]?.dataRange)) continue;
    charts.update(chartId, () => ({ ...definition, dataSource: { ...definition.dataSource, dataSets: wider, ...(label === undefined ? {} : { labelRange: label }) } }) as GridChart);
  }
}
