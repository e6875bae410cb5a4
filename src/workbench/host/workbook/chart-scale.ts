import type { Charts } from "./charts.ts";
import type { Grid } from "./grid/grid.ts";

/** Excel starts an axis at zero unless the values span less than a sixth of the greatest (Microsoft support article 214075, from memory). */
const zeroUnlessWithin = 1 / 6;

/** A round number at or below `value`, on a step that suits a span. */
function roundBelow(value: number, span: number): number {
  const step = 10 ** Math.floor(Math.log10(Math.max(span, Math.abs(value) * 1e-6)));
  return Number((Math.floor(value / step) * step).toPrecision(12));
}

/** Where the value axis begins, or undefined for zero. */
function axisMinimum(values: readonly number[]): number | undefined {
  if (values.length === 0) return undefined;
  const low = Math.min(...values);
  const high = Math.max(...values);
  if (low <= 0 || high - low > high * zeroUnlessWithin) return undefined;
  return roundBelow(low - (high - low) / 2, high - low);
}

/** Gives charts Excel's automatic value axis, as the grid's own always begins at zero. */
export class ChartScale {
  private readonly grid: Grid;
  private readonly charts: Charts;
  /** The beginnings that were chosen here, by chart; another one was set by someone and stays. */
  readonly chosen = new Map<string, number>();

  constructor(grid: Grid, charts: Charts) {
    this.grid = grid;
    this.charts = charts;
  }

  /** Call when cells are calculated, outside a batch. */
  update(): void {
    const { getters } = this.grid.model;
    for (const chartId of getters.getSheetIds().flatMap((sheet) => this.charts.on(sheet))) {
      const present = this.charts.definition(chartId).axesDesign?.y?.min;
      if (present !== this.chosen.get(chartId)) continue;
      const wanted = axisMinimum(this.charts.numbers(chartId));
      if (wanted === present) continue;
      if (wanted === undefined) this.chosen.delete(chartId);
      else this.chosen.set(chartId, wanted);
      this.charts.update(chartId, ({ axesDesign, ...definition }) => {
        const y = { ...axesDesign?.y, ...(wanted === undefined ? {} : { min: wanted }) };
        if (wanted === undefined) Reflect.deleteProperty(y, "min");
        return { ...definition, axesDesign: { ...axesDesign, y } };
      });
    }
  }
}
