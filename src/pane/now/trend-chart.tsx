import { makeStyles, tokens } from "@fluentui/react-components";
import { useId } from "react";

import type { Trend } from "../../advice/readings/trend-points.ts";
import { countOf } from "../../advice/wording/figure-words.ts";
import { degrees, figure, ph as phFigure } from "../../advice/wording/figures.ts";
import { shortMoment } from "../../advice/wording/moments.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import { temperature as temperatureUnit } from "../../joblog/model/units-of.ts";
import { chartScale } from "./chart-scale.ts";
import { useWidth } from "./use-width.ts";

const useStyles = makeStyles({
  figure: { margin: 0 },
  chart: {
    display: "block",
    width: "100%",
    height: "auto",
    overflow: "visible",
    fontSize: "12px",
    fill: tokens.colorNeutralForeground3,
    "@media (forced-colors: active)": { fill: "CanvasText" },
  },
  grid: {
    stroke: tokens.colorNeutralStroke2,
    "@media (forced-colors: active)": { stroke: "GrayText", strokeOpacity: 0.5 },
  },
  line: {
    fill: "none",
    stroke: tokens.colorBrandForeground1,
    strokeWidth: "2px",
    strokeLinejoin: "round",
    "@media (forced-colors: active)": { stroke: "CanvasText" },
  },
  point: { fill: tokens.colorBrandForeground1, "@media (forced-colors: active)": { fill: "CanvasText" } },
  apart: {
    fill: tokens.colorNeutralBackground1,
    stroke: tokens.colorPaletteDarkOrangeForeground1,
    strokeWidth: "1.5px",
    "@media (forced-colors: active)": { fill: "Canvas", stroke: "CanvasText" },
  },
  baseline: {
    stroke: tokens.colorPaletteGreenForeground1,
    strokeWidth: "1.5px",
    strokeDasharray: "6 3",
    "@media (forced-colors: active)": { stroke: "Highlight" },
  },
  trigger: {
    stroke: tokens.colorPaletteRedForeground1,
    strokeWidth: "1.5px",
    "@media (forced-colors: active)": { stroke: "LinkText" },
  },
  // The outline keeps a word apart from the lines that cross it.
  label: {
    fontWeight: 600,
    fill: tokens.colorNeutralForeground2,
    stroke: tokens.colorNeutralBackground1,
    strokeWidth: "4px",
    strokeLinejoin: "round",
    paintOrder: "stroke",
    "@media (forced-colors: active)": { fill: "CanvasText", stroke: "Canvas" },
  },
  key: {
    margin: `${tokens.spacingVerticalXS} 0 0`,
    fontSize: tokens.fontSizeBase200,
    color: tokens.colorNeutralForeground3,
  },
  table: {
    width: "100%",
    borderCollapse: "collapse",
    fontSize: tokens.fontSizeBase200,
    "& th, & td": {
      textAlign: "left",
      verticalAlign: "top",
      padding: "4px 8px 4px 0",
      borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    },
  },
  moment: { whiteSpace: "nowrap" },
  fold: {
    marginTop: tokens.spacingVerticalS,
    "& > summary": { cursor: "pointer", padding: "12px 0", color: tokens.colorBrandForegroundLink },
  },
});

const height = 160;

/** What the temperature of the drawing has to do with the figures above it. */
function caption({ points, reference, baseline, trigger }: Trend, unit: string): string {
  const apart = points.every((point) => point.comparable) ? "" : " Open circles: as read, too far from it to compare.";
  if (baseline === undefined || reference === undefined) return `pH as read.${apart}`;
  const last = points.at(-1)?.temperature;
  const another = trigger !== undefined && last !== undefined && degrees(last) !== degrees(reference);
  return `pH at the baseline’s ${degrees(reference)} ${unit}${another ? ", the trigger too. The trigger above is for the last sample" : ""}.${apart}`;
}

function spoken({ points, baseline, trigger }: Trend): string {
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined) return "No readings yet.";
  const lines = [
    baseline === undefined ? "" : ` Baseline ${phFigure(baseline)}.`,
    trigger === undefined ? "" : ` Trigger ${phFigure(trigger)}.`,
  ].join("");
  return `${countOf(points.length, "reading")} from ${shortMoment(first.when)} at pH ${phFigure(first.ph)} to ${shortMoment(last.when)} at pH ${phFigure(last.ph)}.${lines}`;
}

/** pH over time with baseline and trigger; a table says the same in words. */
export function TrendChart({
  trend,
  system,
}: {
  readonly trend: Trend;
  readonly system: UnitSystem;
}): React.JSX.Element | null {
  const styles = useStyles();
  const id = useId();
  const { frame, width } = useWidth();
  const scale = chartScale(trend, { width, height });
  if (scale === undefined) return null;
  const { points, baseline, trigger } = trend;
  const compared = points.filter((point) => point.comparable);
  const unit = temperatureUnit[system];
  return (
    <figure ref={frame} className={styles.figure}>
      <svg
        role="img"
        aria-labelledby={`${id}t ${id}d`}
        viewBox={`0 0 ${String(width)} ${String(height)}`}
        className={styles.chart}
      >
        <title id={`${id}t`}>pH over time</title>
        <desc id={`${id}d`}>{spoken(trend)}</desc>
        {scale.ticks.map((tick) => (
          <g key={tick}>
            <line className={styles.grid} x1={scale.left} x2={scale.right} y1={scale.y(tick)} y2={scale.y(tick)} />
            <text x={scale.left - 6} y={scale.y(tick) + 4} textAnchor="end">
              {figure(tick, 1, 1)}
            </text>
          </g>
        ))}
        {baseline === undefined ? null : (
          <g>
            <line
              className={styles.baseline}
              x1={scale.left}
              x2={scale.right}
              y1={scale.y(baseline)}
              y2={scale.y(baseline)}
            />
            <text
              className={styles.label}
              x={scale.right}
              y={scale.y(baseline) - 5}
              textAnchor="end"
            >{`baseline ${phFigure(baseline)}`}</text>
          </g>
        )}
        {trigger === undefined ? null : (
          <g>
            <line
              className={styles.trigger}
              x1={scale.left}
              x2={scale.right}
              y1={scale.y(trigger)}
              y2={scale.y(trigger)}
            />
            <text
              className={styles.label}
              x={scale.left + 4}
              y={scale.y(trigger) + 14}
            >{`trigger ${phFigure(trigger)}`}</text>
          </g>
        )}
        <polyline
          className={styles.line}
          points={compared.map((point) => `${String(scale.x(point.when))},${String(scale.y(point.ph))}`).join(" ")}
        />
        {points.map((point, index) => (
          <circle
            key={index}
            className={point.comparable ? styles.point : styles.apart}
            cx={scale.x(point.when)}
            cy={scale.y(point.ph)}
            r={3.5}
          />
        ))}
        <text x={scale.left} y={height - 2}>
          {shortMoment(scale.from)}
        </text>
        <text x={scale.right} y={height - 2} textAnchor="end">
          {shortMoment(scale.to)}
        </text>
      </svg>
      <figcaption className={styles.key}>{caption(trend, unit)}</figcaption>
      <details className={styles.fold}>
        <summary>Readings as a table</summary>
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">When</th>
              <th scope="col">pH as read</th>
              <th scope="col">{`Sample temp, ${unit}`}</th>
              <th scope="col">Verdict</th>
            </tr>
          </thead>
          <tbody>
            {points.toReversed().map((point, index) => (
              <tr key={index}>
                <td className={styles.moment}>{shortMoment(point.when)}</td>
                <td>{phFigure(point.asRead)}</td>
                <td>{point.temperature === undefined ? "" : degrees(point.temperature)}</td>
                <td>{point.verdict}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </figure>
  );
}
