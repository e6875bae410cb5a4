import { computed, helper } from "./columns.ts";
import type { ComputedColumn, References } from "./definition.ts";
import { after, blankIf, never, quoted, where } from "./formulas.ts";
import { temperature } from "./units-of.ts";
import { bench } from "./words.ts";

/** Fewest readings that make a baseline (trade rule: the median of at least three). */
const fewestReadings = "3";

/** Conditions that pick the readings which count for this bath's baseline. */
function counted(r: References): string {
  return where([[r.all("readings", "bath"), r.here("bath")], [r.all("readings", "counted"), "1"]]);
}

type MedianOf = "ph" | "phCorrected";

/** How many counting readings of the bath are lower, by either pH. */
const below = { ph: "countedBelowAsRead", phCorrected: "countedBelow" } as const;

/**
 * The k-th lowest reading is the highest of those that have fewer than k below them: a median
 * without array formulas, and ties do no harm.
 */
function kthLowest(r: References, ph: MedianOf, k: string): string {
  return `MAXIFS(${r.all("readings", ph)},${counted(r)},${r.all("readings", below[ph])},"<"&${k})`;
}

function median(r: References, ph: MedianOf): string {
  const readings = r.here("baselineReadings");
  return blankIf([`${r.here("baselineState")}<>"set"`], `(${kthLowest(r, ph, `INT((${readings}+1)/2)`)}+${kthLowest(r, ph, `(INT(${readings}/2)+1)`)})/2`);
}

export const bathBaseline: readonly ComputedColumn[] = [
  computed({ id: "benchState", label: "Bench tests", type: "text", width: 17, help: "Accepted once the latest test of every surface since the last concentrate passes." },
    (r) => {
      const since = where([
        [r.all("benchTests", "bath"), r.here("bath")],
        [r.all("benchTests", "when"), after(r.here("lastConcentrate"))],
      ]);
      const inForce = `COUNTIFS(${since},${r.all("benchTests", "supersededAt")},${never},${r.all("benchTests", "result")},"<>pass")`;
      return blankIf([`${r.here("bath")}=""`],
        `IF(${r.here("lastConcentrate")}=0,${quoted(bench.noCharge)},IF(COUNTIFS(${since})=0,${quoted(bench.untested)},IF(${inForce}>0,${quoted(bench.refused)},${quoted(bench.accepted)})))`);
    }),
  computed({ id: "baselineReadings", label: "Baseline readings", type: "whole number", format: "0", width: 9, help: "Readings that count: purpose baseline, with temperature, bench tests accepted, newer than the opening dose." },
    (r) => blankIf([`${r.here("bath")}=""`], `COUNTIFS(${counted(r)})`)),
  computed({ id: "baselineState", label: "Baseline stands", type: "text", width: 16, help: "How far the baseline is." },
    (r) => {
      const spread = `MAXIFS(${r.all("readings", "temperature")},${counted(r)})-MINIFS(${r.all("readings", "temperature")},${counted(r)})`;
      return blankIf([`${r.here("bath")}=""`, `${r.here("baselineReadings")}=0`],
        `IF(${r.here("baselineReadings")}<${fewestReadings},${r.here("baselineReadings")}&" of ${fewestReadings} readings",IF(${spread}>${r.named("temperatureGap")},"temperatures differ","set"))`);
    }),
  computed({ id: "baselineTemperature", label: "Baseline temperature", type: "number", unit: temperature, format: "0.0", width: 12, help: "Mean of the samples." },
    (r) => blankIf([`${r.here("baselineState")}<>"set"`], `AVERAGEIFS(${r.all("readings", "temperature")},${counted(r)})`)),
  computed({ id: "baseline", label: "Baseline pH", type: "number", format: "0.00", width: 9, help: "Median of at least three readings that count, the meter's drift taken out: the number to come back to." },
    (r) => median(r, "phCorrected")),
  computed({ id: "trigger", label: "Trigger pH", type: "number", format: "0.00", width: 8, help: "Baseline less the drop allowed: at or under it a top-up is due." },
    (r) => blankIf([`${r.here("baseline")}=""`], `BATH.TRIGGER(${r.here("baseline")},${r.here("dropUsed")})`)),
];

/** What the verdicts as read were held to. */
export const baselineAsRead: ComputedColumn = helper(
  { id: "baselineAsRead", label: "Baseline as read", type: "number", format: "0.00", width: 9, help: "The median of the same readings with the meter's drift left in." },
  (r) => median(r, "ph"),
);
