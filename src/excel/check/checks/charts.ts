/** Charts, drawn by the code that draws the log's own. */
import type { AreaPlan, ChartPlan, ChartSeriesPlan } from "../../../joblog/model/plan.ts";
import { fillCharts, placeCharts } from "../../build/write-chart.ts";
import { type CheckBench, type ExcelCheck, finding } from "../excel-check.ts";

const rows = 6;

const column = (at: number): AreaPlan => ({ row: 1, column: at, rows, columns: 1 });

const series = (label: string, at: number, mark: ChartSeriesPlan["mark"]): ChartSeriesPlan => ({
  label,
  dataSheet: "",
  x: column(0),
  y: column(at),
  color: "#1B535F",
  mark,
});

function chartPlan(kind: ChartPlan["kind"]): ChartPlan {
  return {
    id: `BathCheck-${kind}`,
    kind,
    title: "pH by day",
    area: { row: 0, column: 5, rows: 15, columns: 6 },
    xTitle: "Day",
    xFormat: "0",
    yTitle: "pH",
    yFormat: "0.0",
    series:
      kind === "bars"
        ? [series("Baskets", 1, "points")]
        : [series("Reading", 1, "points"), series("Trigger", 2, "line"), series("Forecast", 3, "dashes")],
  };
}

async function drawn({ context, sheet }: CheckBench, plan: ChartPlan): Promise<readonly string[]> {
  sheet.load("name");
  sheet.getRange("A1:D1").values = [["Day", "Reading", "Trigger", "Forecast"]];
  sheet.getRange(`A2:D${String(rows + 1)}`).values = Array.from({ length: rows }, (_, day) => [
    day,
    11.4 - day * 0.1,
    10.6,
    11.3 - day * 0.1,
  ]);
  await context.sync();
  const placement = {
    plan: {
      id: "check",
      name: sheet.name,
      tabColor: "",
      columnWidths: [],
      rowHeights: [],
      cells: [],
      tables: [],
      validations: [],
      conditionalFormats: [],
      charts: [plan],
      frozenRows: 0,
      orientation: "portrait" as const,
      footer: "",
      lastPrintedColumn: 0,
      pagesWide: 1,
    },
    actual: sheet.name,
    kept: false,
    missingTables: [],
    missingNames: [],
  };
  const onThisSheet = {
    area: (_sheet: string, area: AreaPlan) => ({ sheet: sheet.name, area }),
    table: (name: string) => {
      throw new RangeError(`The check has no table ${name}.`);
    },
    cell: (name: string) => {
      throw new RangeError(`The check has no named cell ${name}.`);
    },
  };
  const charts = placeCharts(context, [{ placement, plan }], onThisSheet);
  await context.sync();
  fillCharts(charts);
  await context.sync();
  const found = sheet.charts.getItem(plan.id).series.load("items/name");
  await context.sync();
  return found.items.map(({ name }) => name);
}

export const chartChecks: readonly ExcelCheck[] = (["scatter", "bars"] as const).map((kind): ExcelCheck => {
  const plan = chartPlan(kind);
  const labels = plan.series.map(({ label }) => label);
  return {
    id: `chart-of-${kind}`,
    title: kind === "bars" ? "A chart of bars" : "A chart of lines",
    asks: `A chart as the log has them, with ${String(labels.length)} series of its own ranges, names, colors and marks; the names of its series.`,
    expected: labels.join(", "),
    run: async (bench) => {
      const names = await drawn(bench, plan);
      return finding(String(names) === String(labels), names.join(", "));
    },
  };
});
