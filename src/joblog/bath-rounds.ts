import { computed, helper } from "./columns.ts";
import type { ComputedColumn } from "./definition.ts";
import { after, blankIf, quoted, upTo, where } from "./formulas.ts";
import { volume } from "./units-of.ts";
import { changeOut } from "./words.ts";

const amount = { type: "number", unit: volume, format: "0.000", width: 11 } as const;

/**
 * Repeated top-ups that grow: soil soaps hold the bath up against the concentrate, and a change-out is
 * worth a thought (common practice, no source, as are both limits).
 */
export const bathRounds: readonly ComputedColumn[] = [
  computed({ id: "firstRound", label: "First round of top-ups", ...amount, help: "Top-up concentrate from the first check that asked for it to the next one that did." },
    (r) => blankIf([`${r.here("firstRoundAt")}=""`], `MAXIFS(${r.all("readings", "roundAmount")},${where([
      [r.all("readings", "bath"), r.here("bath")],
      [r.all("readings", "when"), upTo(r.here("firstRoundAt"))],
    ])})`)),
  computed({ id: "largestRound", label: "Largest round since", ...amount, help: "Of the later rounds the one that took most; blank before the second." },
    (r) => {
      const largest = `MAXIFS(${r.all("readings", "roundAmount")},${where([
        [r.all("readings", "bath"), r.here("bath")],
        [r.all("readings", "when"), after(r.here("firstRoundAt"))],
      ])})`;
      return blankIf([`${r.here("firstRoundAt")}=""`], `IF(${largest}=0,"",${largest})`);
    }),
  computed({ id: "changeOut", label: "Change-out", type: "text", width: 27, help: "Where top-ups grow, or reach the limit on the Job sheet. The bench test, the ratio of total to free alkalinity and the days open decide too." },
    (r) => {
      const grow = `IF(${r.here("largestRound")}="",FALSE,${r.here("largestRound")}>${r.named("topUpGrowth")}*${r.here("firstRound")})`;
      return blankIf([`${r.here("openingDose")}=""`],
        `IF(${grow},${quoted(changeOut.grow)},IF(${r.here("topUpShare")}>=${r.named("topUpLimit")},${quoted(changeOut.total)},""))`);
    }),
];

export const bathRoundHelpers: readonly ComputedColumn[] = [
  helper({ id: "firstRoundAt", label: "First round at", type: "date and time", width: 16, help: "When the first round of top-ups began." },
    (r) => {
      const first = `MINIFS(${r.all("readings", "when")},${where([
        [r.all("readings", "bath"), r.here("bath")],
        [r.all("readings", "roundAmount"), quoted(">0")],
      ])})`;
      return blankIf([`${r.here("bath")}=""`], `IF(${first}=0,"",${first})`);
    }),
];
