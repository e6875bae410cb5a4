import { chartedBath, chartedBaths } from "./chart-lines.ts";
import { helper } from "./columns.ts";
import type { ComputedColumn, References } from "./definition.ts";
import { at, blankIf, positionOf, quoted, upTo, where } from "./formulas.ts";
import { chartColumn } from "./ph-chart.ts";
import { bench } from "./words.ts";

function ofBath(r: References, column: string): string {
  return at(r, "baths", column, r.here("bathRow"));
}

/** A chart passes over #N/A, where a blank would be drawn as 0. */
function charted(r: References, chart: number, value: string): string {
  return `IF(AND(${r.here("bathRow")}<>"",${r.here("bath")}=${chartedBath(r, chart)},ISNUMBER(${r.here("when")})),${value},NA())`;
}

/** At the baseline's temperature; left out where the sample's is missing or far from it. */
function comparablePh(r: References): string {
  const far = `ABS(${r.here("temperature")}-${ofBath(r, "baselineTemperature")})>${r.named("temperatureGap")}`;
  const comparable = `IF(${ofBath(r, "baseline")}="",${r.here("phCorrected")},IF(NOT(ISNUMBER(${r.here("temperature")})),NA(),IF(${far},NA(),IF(ISNUMBER(${r.here("phAtBaseline")}),${r.here("phAtBaseline")},NA()))))`;
  return `IF(OR(NOT(ISNUMBER(${r.here("ph")})),${r.here("purpose")}="rinse"),NA(),${comparable})`;
}

function chartPoints(chart: number): ComputedColumn {
  return helper({ id: chartColumn(chart), label: chart === 1 ? "Chart pH" : `Chart ${String(chart)} pH`, type: "number", format: "0.00", width: 8, help: "Of the bath in that chart, at the baseline's temperature." },
    (r) => charted(r, chart, r.here("chartablePh")));
}

/** Gives the median without array formulas. */
function countedBelow(id: string, label: string, ph: "ph" | "phCorrected"): ComputedColumn {
  return helper({ id, label, type: "whole number", format: "0", width: 9, help: "How many counting readings of the bath are lower: gives the median." },
    (r) => blankIf([`${r.here("counted")}<>1`],
      `COUNTIFS(${where([
        [r.all("readings", "bath"), r.here("bath")],
        [r.all("readings", "counted"), "1"],
        [r.all("readings", ph), `"<"&${r.here(ph)}`],
      ])})`));
}

export const readingHelpers: readonly ComputedColumn[] = [
  helper({ id: "bathRow", label: "Bath row", type: "whole number", format: "0", width: 8, help: "Position in Baths." },
    (r) => positionOf(r, r.here("bath"), "baths", "bath")),
  helper({ id: "lastConcentrate", label: "Concentrate before", type: "date and time", width: 16, help: "Last concentrate added to the bath by then; 0 if none." },
    (r) => blankIf([`${r.here("bathRow")}=""`, `NOT(ISNUMBER(${r.here("when")}))`],
      `MAXIFS(${r.all("additions", "when")},${where([
        [r.all("additions", "bath"), r.here("bath")],
        [r.all("additions", "kind"), quoted("concentrate")],
        [r.all("additions", "when"), upTo(r.here("when"))],
      ])})`)),
  helper({ id: "counted", label: "Counts for baseline", type: "whole number", format: "0", width: 9, help: "1 where the reading counts for the baseline." },
    (r) => blankIf([`${r.here("bathRow")}=""`, `${r.here("purpose")}<>"baseline"`],
      `IF(${r.here("benchAtTime")}<>${quoted(bench.accepted)},0,IF(AND(ISNUMBER(${r.here("ph")}),ISNUMBER(${r.here("temperature")}),${r.here("when")}>${ofBath(r, "lastOpening")}),1,0))`)),
  countedBelow("countedBelow", "Counted below", "phCorrected"),
  countedBelow("countedBelowAsRead", "Counted below, as read", "ph"),
  helper({ id: "chartablePh", label: "pH for the charts", type: "number", format: "0.00", width: 8, help: "At the baseline's temperature; left out where the sample's is missing or far from it." },
    (r) => `IF(${r.here("bathRow")}="",NA(),${comparablePh(r)})`),
  ...Array.from({ length: chartedBaths }, (_, index) => chartPoints(index + 1)),
  helper({ id: "chartBaseline", label: "Chart baseline", type: "number", format: "0.00", width: 9, help: "Of the first bath in the charts." },
    (r) => charted(r, 1, `IF(ISNUMBER(${ofBath(r, "baseline")}),${ofBath(r, "baseline")},NA())`)),
  helper({ id: "chartTrigger", label: "Chart trigger", type: "number", format: "0.00", width: 8, help: "Of the first bath in the charts, at the baseline's temperature." },
    (r) => charted(r, 1, `IF(ISNUMBER(${ofBath(r, "trigger")}),${ofBath(r, "trigger")},NA())`)),
];
