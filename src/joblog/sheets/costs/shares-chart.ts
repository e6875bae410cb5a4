import type { ChartDefinition } from "../../model/definition.ts";

export const sharesChart: ChartDefinition = {
  id: "Bathsheet.Shares",
  kind: "bars",
  title: "Each claim's share of the bath's cost",
  below: "costLines",
  table: "shares",
  x: "claim",
  xTitle: "Claim",
  xFormat: "General",
  yTitle: "Share of the cost",
  yFormat: "#,##0.00",
  series: [{ column: "share", label: "Share", color: "#1F4E57", mark: "line" }],
};
