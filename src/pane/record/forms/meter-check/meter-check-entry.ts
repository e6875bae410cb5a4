import { TopSpeedRegular } from "@fluentui/react-icons/svg/top-speed";

import { lastReadingOf } from "../../../../advice/bath-facts.ts";
import type { FieldProblem, FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { buffers } from "../../../../advice/meter-facts.ts";
import { figure } from "../../../../advice/wording/figures.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { EntryForm, Meaning } from "../../entry-form.ts";
import { field, initialsField, meterField, metersOf } from "../../fields-of.ts";
import { newRow } from "../../new-rows.ts";
import { meterCheck } from "../../step-forms.ts";
import { meterFindings } from "./meter-findings.ts";

/** Written down after the adjustment, as found is gone for ever: it comes first. */
function orderProblems(filled: FilledFields<ColumnId<"meterChecks">>): readonly FieldProblem[] {
  return buffers.flatMap((buffer) => {
    const missing = filled.number(`asLeft${buffer}`) !== undefined && filled.number(`asFound${buffer}`) === undefined;
    return missing
      ? [
          {
            key: `asFound${buffer}`,
            message: `As found ${buffer} comes before as left: what the meter showed before it was adjusted says how far earlier readings were off.`,
          },
        ]
      : [];
  });
}

function bufferProblems(filled: FilledFields<ColumnId<"meterChecks">>): readonly FieldProblem[] {
  const [one, two] = [filled.number("buffer1"), filled.number("buffer2")];
  return one !== undefined && one === two
    ? [
        {
          key: "buffer2",
          message: `Buffer 2: ${figure(two, 2, 2)} is the same as buffer 1. Two different buffers bracket the bath.`,
        },
      ]
    : [];
}

/** No electrode in use is off by so much; more likely buffers are mixed up or a digit is wrong (common practice, no source). */
const farOff = 1;

function mixedUp(filled: FilledFields<ColumnId<"meterChecks">>): readonly string[] {
  return buffers.flatMap((buffer) => {
    const [found, known] = [filled.number(`asFound${buffer}`), filled.number(`buffer${buffer}`)];
    if (found === undefined || known === undefined || Math.abs(found - known) < farOff) return [];
    return [
      `${figure(found, 2, 2)} in the buffer ${figure(known, 2, 2)} is off by ${figure(Math.abs(found - known), 2, 2)} pH. Are the buffers in the right order?`,
    ];
  });
}

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
      legend: "More",
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
