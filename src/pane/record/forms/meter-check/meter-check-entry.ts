import { TopSpeedRegular } from "@fluentui/react-icons/svg/top-speed";

import { lastReadingOf } from "../../../../advice/bath-facts.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { EntryForm, Meaning } from "../../entry-form.ts";
import { field, initialsField, meterField, metersOf } from "../../fields-of.ts";
import { newRow } from "../../new-rows.ts";
import { meterCheck } from "../../step-forms.ts";
import { bufferProblems, mixedUp, orderProblems } from "./check-doubts.ts";
import { meterFindings } from "./meter-findings.ts";

function meaning(filled: FilledFields<ColumnId<"meterChecks">>, context: LogContext): Meaning {
  const added = newRow("meterChecks", filled, context);
  return {
    findings: meterFindings(added.row, filled, context),
    problems: [...orderProblems(filled), ...bufferProblems(filled)],
    doubts: mixedUp(filled),
    rows: [added],
    recorded: `check of meter ${filled.text("meter") ?? ""}`,
  };
}

/** As found in two buffers, before anything is adjusted; says which earlier readings change. */
export const meterCheckEntry: EntryForm<"meter check"> = {
  ...meterCheck,
  icon: TopSpeedRegular,
  needs: "log",
  purpose: "As found in two buffers before adjusting; reaches back to earlier readings.",
  submit: "Record meter check",
  caution: "Rinse the electrode between buffers. Fresh buffer in the cup, none back into the bottle.",
  groups: (_values, { log }) => [
    {
      fields: [
        meterField(log, "meterChecks"),
        field(log, "meterChecks", "temperature"),
        field(log, "meterChecks", "when"),
      ],
    },
    {
      legend: "As found, before anything is adjusted",
      fields: (["buffer1", "asFound1", "buffer2", "asFound2", "mv1", "mv2"] as const).map((id) =>
        field(log, "meterChecks", id, { required: !id.startsWith("mv") }),
      ),
    },
    {
      legend: "As left, after adjusting (blank: nothing adjusted)",
      fields: [field(log, "meterChecks", "asLeft1"), field(log, "meterChecks", "asLeft2")],
    },
    {
      legend: "More details",
      folded: true,
      fields: [
        field(log, "meterChecks", "bufferLot"),
        initialsField(log, "meterChecks"),
        field(log, "meterChecks", "note"),
      ],
    },
  ],
  proposals: (typed, context) => {
    const meters = metersOf(context.log);
    const last = context.log.rows.meterChecks.at(-1)?.cells;
    const read = context.bath === undefined ? undefined : lastReadingOf(context.log, context.bath)?.cells.meter;
    return {
      when: context.now,
      meter: typed["meter"] ?? String(last?.meter ?? read ?? meters[0] ?? ""),
      buffer1: String(last?.buffer1 ?? "7.00"),
      buffer2: String(last?.buffer2 ?? "10.01"),
      bufferLot: String(last?.bufferLot ?? ""),
    };
  },
  meaning,
};
