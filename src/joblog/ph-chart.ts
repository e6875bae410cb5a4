import type { ChartDefinition } from "./definition.ts";

export const phChart: ChartDefinition = {
  id: "Bathsheet.pH",
  title: "pH of the bath over time, with its baseline and trigger",
  table: "readings",
  x: "when",
  xTitle: "Date and time",
  yTitle: "pH as read, samples near the baseline's temperature",
  series: [
    { column: "chartPh", label: "pH as read", color: "#1F4E57", mark: "points" },
    { column: "chartBaseline", label: "Baseline", color: "#5B8C5A", mark: "line" },
    { column: "chartTrigger", label: "Trigger", color: "#B3402E", mark: "dashes" },
  ],
};
