import type { ChartDefinition, ChartSeriesDefinition } from "../../model/definition.ts";

const baseline = { label: "Baseline", color: "#5B8C5A", mark: "line" } as const;
const trigger = { label: "Trigger", color: "#B3402E", mark: "dashes" } as const;

function levels(chart: number): readonly ChartSeriesDefinition[] {
  const ofChart = { lineOf: "chartLines", line: chart, x: ["from", "to"] } as const;
  return [
    { ...ofChart, y: ["chartBaseline", "chartBaselineTo"], ...baseline },
    { ...ofChart, y: ["chartTrigger", "chartTriggerTo"], ...trigger },
  ];
}

/** The column of Readings that holds a chart's points; the first has had its own names since version 1. */
export function chartColumn(chart: number): string {
  return chart === 1 ? "chartPh" : `chartPh${String(chart)}`;
}

export function phChart(chart: number): ChartDefinition {
  return {
    id: chart === 1 ? "Bathsheet.pH" : `Bathsheet.pH${String(chart)}`,
    kind: "scatter",
    title: "pH at the baseline's temperature; samples read hot are left out",
    table: "readings",
    x: "when",
    xTitle: "Date and time",
    xFormat: "mmm d hh:mm",
    yTitle: "pH",
    yFormat: "0.0",
    series: [
      { column: chartColumn(chart), label: "pH", color: "#1F4E57", mark: "points" },
      ...(chart === 1
        ? [
            { column: "chartBaseline", ...baseline },
            { column: "chartTrigger", ...trigger },
          ]
        : levels(chart)),
    ],
  };
}
