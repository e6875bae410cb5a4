import { bathBaseline } from "./bath-baseline.ts";
import { bathCare } from "./bath-care.ts";
import { bathRounds } from "./bath-rounds.ts";
import { computed } from "./columns.ts";
import type { ComputedColumn } from "./definition.ts";
import { at, blankIf, halfMinute, quoted } from "./formulas.ts";
import { days, volume } from "./units-of.ts";
import { bathState, bench } from "./words.ts";

/** Where the bath stands: bench tests, baseline, last reading, top-ups, cost, what comes next. */
export const bathStanding: readonly ComputedColumn[] = [
  ...bathBaseline,
  computed({ id: "lastReading", label: "Last pH", type: "number", format: "0.00", width: 8, help: "Latest reading that is not of a rinse, the meter's drift taken out." },
    (r) => blankIf([`${r.here("lastReadingRow")}=""`], at(r, "readings", "phCorrected", r.here("lastReadingRow")))),
  computed({ id: "lastReadingAt", label: "Last read", type: "date and time", width: 16, help: "When that was." },
    (r) => blankIf([`${r.here("lastReadingRow")}=""`], at(r, "readings", "when", r.here("lastReadingRow")))),
  computed({ id: "lastVerdict", label: "Last verdict", type: "text", width: 18, help: "What the latest reading says." },
    (r) => blankIf([`${r.here("lastReadingRow")}=""`], at(r, "readings", "verdict", r.here("lastReadingRow")))),
  computed({ id: "topUpTotal", label: "Topped up in all", type: "number", unit: volume, format: "0.000", width: 10, help: "Concentrate added as top-ups. Corrective doses and the concentrate of a make-up are not counted: they put right something else than soil." },
    (r) => blankIf([`${r.here("openingDose")}=""`],
      `SUMIFS(${r.all("additions", "amount")},${r.all("additions", "bath")},${r.here("bath")},${r.all("additions", "kind")},${quoted("concentrate")},${r.all("additions", "purpose")},${quoted("top-up")})`)),
  computed({ id: "topUpShare", label: "Topped up, of opening dose", type: "share", format: "0%", width: 12, help: "Top-ups by the opening dose; corrective doses are not counted." },
    (r) => blankIf([`${r.here("openingDose")}=""`], `${r.here("topUpTotal")}/${r.here("openingDose")}`)),
  ...bathRounds,
  computed({ id: "cost", label: "Additions charged to claims", type: "money", format: "#,##0.00", width: 12, help: "Concentrate and water of this bath; the shop's own account is left out." },
    (r) => blankIf([`${r.here("bath")}=""`],
      `SUMIFS(${r.all("additions", "cost")},${r.all("additions", "bath")},${r.here("bath")},${r.all("additions", "account")},${quoted("claims")})`)),
  computed({ id: "daysOpen", label: "Open", type: "number", unit: days, format: "0.0", width: 8, help: "To the change-out or, before that, to the latest entry." },
    (r) => {
      const lastEntry = `MAX(${r.here("lastReadingAt")},${r.here("lastAddition")},${r.here("opened")})`;
      return blankIf([`NOT(ISNUMBER(${r.here("opened")}))`], `IF(ISNUMBER(${r.here("closed")}),${r.here("closed")},${lastEntry})-${r.here("opened")}`);
    }),
  ...bathCare,
];

/** Stands beside the bath's name, where a person looks first. */
export const bathStateColumn: ComputedColumn =
  computed({ id: "state", label: "State", type: "text", width: 11, help: "What comes next: charge, bench test, baseline, in use, top up, re-read, closed." },
    (r) => {
      const concentrateSinceReading = `${r.here("lastConcentrate")}>${r.here("lastReadingAt")}+${halfMinute}`;
      const asksReRead = `LEFT(${r.here("lastVerdict")},7)=${quoted(bathState.reRead)}`;
      const asksTopUp = `${r.here("lastVerdict")}=${quoted(bathState.topUp)}`;
      const judged = `IF(${concentrateSinceReading},${quoted(bathState.reRead)},IF(${asksReRead},${quoted(bathState.reRead)},IF(${asksTopUp},${quoted(bathState.topUp)},${quoted(bathState.inUse)})))`;
      const before = `IF(${r.here("benchState")}=${quoted(bench.accepted)},${quoted(bathState.baseline)},${quoted(bathState.benchTest)})`;
      const open = `IF(${r.here("openingDose")}="",${quoted(bathState.charge)},IF(${r.here("baseline")}="",${before},${judged}))`;
      return blankIf([`${r.here("bath")}=""`], `IF(ISNUMBER(${r.here("closed")}),${quoted(bathState.closed)},${open})`);
    });
