import { chartedBath } from "./chart-lines.ts";
import { helper } from "./columns.ts";
import type { ChartDefinition, ComputedColumn, References } from "./definition.ts";
import { quoted, upTo, where } from "./formulas.ts";
import { volume } from "./units-of.ts";

/** A point of the chosen bath's chart, at this line's time; any other line gives none. */
function point(r: References, isWanted: string, value: string): string {
  return `IF(AND(${r.here("bath")}<>"",${r.here("bath")}=${chartedBath(r, 1)},ISNUMBER(${r.here("when")}),${isWanted}),${value},NA())`;
}

/** Helper columns that feed the charts of what went into a bath. */
export const additionChartColumns: readonly ComputedColumn[] = [
  helper({ id: "chartTotal", label: "Concentrate so far", type: "number", unit: volume, format: "0.000", width: 9, help: "Concentrate so far, of the first bath in the charts." },
    (r) => point(r, `${r.here("kind")}=${quoted("concentrate")},ISNUMBER(${r.here("runningTotal")})`, r.here("runningTotal"))),
  helper({ id: "chartCost", label: "Cost so far", type: "money", format: "#,##0.00", width: 9, help: "Cost so far of concentrate and water, of the first bath in the charts." },
    (r) => point(r, `ISNUMBER(${r.here("cost")})`, `ROUND(SUMIFS(${r.all("additions", "cost")},${where([
      [r.all("additions", "bath"), r.here("bath")],
      [r.all("additions", "when"), upTo(r.here("when"))],
    ])}),2)`)),
];

const shared = { kind: "scatter", table: "additions", x: "when", xTitle: "Date and time", xFormat: "mmm d hh:mm" } as const;

export const concentrateChart: ChartDefinition = {
  ...shared,
  id: "Bathsheet.Concentrate",
  title: "Concentrate added so far, with the opening dose",
  yFormat: "0.0#",
  series: [{ column: "chartTotal", label: "Concentrate so far", color: "#7B5EA7", mark: "points" }],
};

export const costChart: ChartDefinition = {
  ...shared,
  id: "Bathsheet.Cost",
  title: "Cost of concentrate and water so far",
  yTitle: "Cost so far",
  yFormat: "#,##0.00",
  series: [{ column: "chartCost", label: "Cost so far", color: "#8A6A1F", mark: "points" }],
};
