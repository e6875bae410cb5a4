import type { ChartDefinition } from "./definition.ts";

export const phChart: ChartDefinition = {
  id: "Bathsheet.pH",
  kind: "scatter",
  below: "baths",
  title: "pH of the bath with its baseline and trigger; samples read hot are left out",
  table: "readings",
  x: "when",
  xTitle: "Date and time",
  xFormat: "mmm d hh:mm",
  yTitle: "pH at the baseline's temperature",
  yFormat: "0.0",
  series: [
    { column: "chartPh", label: "pH", color: "#1F4E57", mark: "points" },
    { column: "chartBaseline", label: "Baseline", color: "#5B8C5A", mark: "line" },
    { column: "chartTrigger", label: "Trigger", color: "#B3402E", mark: "dashes" },
  ],
};
