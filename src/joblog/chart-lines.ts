import { helper } from "./columns.ts";
import type { ComputedColumn, References, TableDefinition } from "./definition.ts";
import { at, blankIf } from "./formulas.ts";

/** How many baths have a chart of their own. */
export const chartedBaths = 4;

/** The bath that a chart shows, by the chart's number. */
export function chartedBath(r: References, chart: number): string {
  return at(r, "chartLines", "bath", String(chart));
}

/** Position in Baths of the bath asked for, or else of the first. */
function firstPosition(r: References): string {
  const match = `MATCH(${r.named("chartBath")},${r.all("baths", "bath")},0)`;
  return `IF(${r.named("chartBath")}="",1,IF(ISNA(${match}),1,${match}))`;
}

/** The first line's bath is the one asked for; the others follow by their rows, the newest where there are more. */
function position(r: References): string {
  const line = `(ROW()-ROW(${r.header("chartLines", "bath")}))`;
  const baths = `ROWS(${r.all("baths", "bath")})`;
  const other = `(MAX(0,${baths}-${String(chartedBaths)})+${line}-1)`;
  return `IF(${line}=1,${firstPosition(r)},IF(${other}>=${baths},"",${other}+IF(${other}>=${firstPosition(r)},1,0)))`;
}

function ofReadings(find: "MINIFS" | "MAXIFS"): (r: References) => string {
  return (r) => {
    const when = `${find}(${r.all("readings", "when")},${r.all("readings", "bath")},${r.here("bath")})`;
    return blankIf([`${r.here("bath")}=""`], `IF(${when}=0,"",${when})`);
  };
}

/** A chart passes over #N/A, where a blank would be drawn as 0. */
function level(id: string, label: string, column: "baseline" | "trigger"): ComputedColumn {
  return helper({ id, label, type: "number", format: "0.00", width: 14, help: "Of the bath in this line's chart, drawn from its first reading to its last." },
    (r) => {
      const value = at(r, "baths", column, r.here("bathRow"));
      return `IF(${r.here("bath")}="",NA(),IF(ISNUMBER(${value}),${value},NA()))`;
    });
}

const shown = ["chartBaseline", "chartBaselineTo", "chartTrigger", "chartTriggerTo"];

/** One line for each pH chart: its bath, and the two ends of its baseline and trigger. */
export const chartLines: TableDefinition = {
  id: "chartLines",
  name: "ChartLines",
  caption: "What the charts show",
  emptyRows: chartedBaths,
  fixedRows: true,
  columns: [
    helper({ id: "bath", label: "Bath", type: "text", width: 14, help: "First the bath chosen on the sheet Baths, or its first; then the others." },
      (r) => `IF(${position(r)}="","",${at(r, "baths", "bath", position(r))}&"")`),
    helper({ id: "bathRow", label: "Bath row", type: "whole number", format: "0", width: 12, help: "Position in Baths." },
      (r) => blankIf([`${r.here("bath")}=""`], position(r))),
    helper({ id: "from", label: "First reading", type: "date and time", width: 16, help: "Where the lines begin." }, ofReadings("MINIFS")),
    helper({ id: "to", label: "Last reading", type: "date and time", width: 16, help: "Where they end." }, ofReadings("MAXIFS")),
    level("chartBaseline", "Baseline", "baseline"),
    level("chartBaselineTo", "Baseline to", "baseline"),
    level("chartTrigger", "Trigger", "trigger"),
    level("chartTriggerTo", "Trigger to", "trigger"),
  ],
  signals: shown.map((column) => ({ column, when: "not available", look: "quiet" })),
};
