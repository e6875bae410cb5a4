import type { ChartDefinition } from "../../model/definition.ts";

export const sharesChart: ChartDefinition = {
  id: "Bathsheet.Shares",
  kind: "bars",
  title: "What each claim pays",
  table: "claims",
  x: "claim",
  xTitle: "Claim",
  xFormat: "General",
  yTitle: "Cost so far (a credit below 0 stands in the table alone)",
  yFormat: "#,##0.00",
  yFrom: 0,
  series: [{ column: "cost", label: "Cost", color: "#1F4E57", mark: "line" }],
};
