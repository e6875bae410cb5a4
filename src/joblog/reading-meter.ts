import { computed, helper } from "./columns.ts";
import type { ComputedColumn } from "./definition.ts";
import { at, blankIf, quoted, upTo, where } from "./formulas.ts";
import { checkKey } from "./meter-key.ts";

/** Meters show hundredths; more figures would only pretend to more. */
const shownDecimals = "2";

/** Feeds everything that judges a bath; the pH as read is never overwritten. */
export const phCorrected: ComputedColumn = computed(
  { id: "phCorrected", label: "pH, drift taken out", type: "number", format: "0.00", width: 10, help: "The reading less the meter's drift, which is taken as even from one check to the next; as read where no later check is recorded or the meter is not named." },
  (r) => {
    const fixed = `BATH.DRIFTFIX(${r.here("ph")},${r.here("when")},${r.hereTo("checkBefore", "checkAfter")},${r.hereTo("errorBefore", "errorAfter")})`;
    return blankIf([`NOT(ISNUMBER(${r.here("ph")}))`],
      `IF(NOT(ISNUMBER(${r.here("errorAfter")})),${r.here("ph")},ROUND(${fixed}-${at(r, "meterChecks", "left", r.here("checkRow"))},${shownDecimals}))`);
  },
);

/** The meter's checks on either side of the reading. Times and errors stand side by side: each pair is one range. */
export const readingMeterHelpers: readonly ComputedColumn[] = [
  helper({ id: "checkRow", label: "Check row", type: "whole number", format: "0", width: 8, help: "Position in MeterChecks of the check before." },
    (r) => `IF(SUM(${r.here("checkBefore")})=0,"",MATCH(${checkKey(r.here("meter"), r.here("checkBefore"))},${r.all("meterChecks", "key")},0))`),
  helper({ id: "checkBefore", label: "Check before", type: "date and time", width: 16, help: "The meter's last check by then; 0 if none." },
    (r) => blankIf([`${r.here("meter")}=""`, `NOT(ISNUMBER(${r.here("ph")}))`, `NOT(ISNUMBER(${r.here("when")}))`],
      `MAXIFS(${r.all("meterChecks", "when")},${where([
        [r.all("meterChecks", "meter"), r.here("meter")],
        [r.all("meterChecks", "left"), quoted(">-99")],
        [r.all("meterChecks", "when"), upTo(r.here("when"))],
      ])})`)),
  helper({ id: "checkAfter", label: "Check after", type: "date and time", width: 16, help: "The meter's next check; blank if none yet." },
    (r) => blankIf([`${r.here("checkRow")}=""`], at(r, "meterChecks", "nextAt", r.here("checkRow")))),
  helper({ id: "errorBefore", label: "Drift at the check before", type: "number", format: "0.00", width: 9, help: "Always 0: drift is counted from there." },
    (r) => blankIf([`${r.here("checkRow")}=""`], "0")),
  helper({ id: "errorAfter", label: "Drift at the check after", type: "number", format: "0.000", width: 9, help: "As found at the next check, less what the check before had left." },
    (r) => blankIf([`${r.here("checkRow")}=""`], at(r, "meterChecks", "nextDrift", r.here("checkRow")))),
];
