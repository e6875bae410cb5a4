import type { Trend } from "../../advice/readings/trend-points.ts";

/** Where a moment and a pH stand in the drawing. */
export interface ChartScale {
  readonly left: number;
  readonly right: number;
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
  readonly x: (when: number) => number;
  readonly y: (ph: number) => number;
}

const margin = { left: 34, right: 6, top: 14, bottom: 18 } as const;

/** Steps of a tenth, a fifth or a half, so that three to six lines cross the drawing. */
function stepFor(range: number): number {
  return [0.1, 0.2, 0.5, 1, 2].find((step) => range / step <= 5) ?? 5;
}

/** A scale that holds every reading, the baseline and the trigger; undefined where there is nothing to draw. */
export function chartScale(
  { points, baseline, trigger }: Omit<Trend, "reference">,
  size: { readonly width: number; readonly height: number },
): ChartScale | undefined {
  const times = points.map((point) => point.when);
  const values = [...points.map((point) => point.ph), baseline, trigger].filter((value) => value !== undefined);
  if (times.length === 0) return undefined;
  const from = Math.min(...times);
  const to = Math.max(...times);
  const step = stepFor(Math.max(0.2, Math.max(...values) - Math.min(...values)));
  const low = Math.floor((Math.min(...values) - 0.02) / step) * step;
  const high = Math.ceil((Math.max(...values) + 0.02) / step) * step;
  const ticks = Array.from({ length: Math.round((high - low) / step) + 1 }, (_, index) => low + index * step);
  const right = size.width - margin.right;
  const bottom = size.height - margin.bottom;
  const span = to - from;
  return {
    left: margin.left,
    right,
    from,
    to,
    ticks,
    x: (when) =>
      span === 0 ? (margin.left + right) / 2 : margin.left + ((when - from) / span) * (right - margin.left),
    y: (ph) => bottom - ((ph - low) / (high - low)) * (bottom - margin.top),
  };
}
