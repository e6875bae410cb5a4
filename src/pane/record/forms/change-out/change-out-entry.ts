import { ArrowExitRegular } from "@fluentui/react-icons/svg/arrow-exit";

import { rowsOfBath } from "../../../../advice/bath-facts.ts";
import { bathFacts } from "../../../../advice/bath-values.ts";
import type { FieldProblem, FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { shortMoment } from "../../../../advice/wording/moments.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import { closeReasons } from "../../../../joblog/model/words.ts";
import { entryTimes } from "../../bath-times.ts";
import { cellsOf } from "../../cells-of.ts";
import type { EntryForm, Meaning } from "../../entry-form.ts";
import { field } from "../../fields-of.ts";
import { changeOut } from "../../step-forms.ts";
import { changeOutFindings } from "./change-out-findings.ts";

/** A bath is closed once, and after everything that happened in it. */
function closeProblems(filled: FilledFields<ColumnId<"baths">>, context: LogContext): readonly FieldProblem[] {
  const bath = filled.text("bath") ?? "";
  const closedAt = bathFacts(context.log, bath)?.number("closed");
  if (closedAt !== undefined)
    return [{ key: "bath", message: `Bath: "${bath}" was closed on ${shortMoment(closedAt)}. Choose another.` }];
  const [closed, last] = [filled.number("closed"), entryTimes(context, bath).at(-1)];
  if (closed === undefined || last === undefined || closed >= last) return [];
  return [
    {
      key: "closed",
      message: `Closed: ${shortMoment(closed)} is before the bath's last entry, ${shortMoment(last)}. Check the bath and the date.`,
    },
  ];
}

/** The file ends with a reading: what state the bath was in when it was given up. */
function finalReadingDoubt(context: LogContext, bath: string): readonly string[] {
  const last = (table: "readings" | "additions" | "loads"): number => {
    const when = rowsOfBath(context.log, table, bath).at(-1)?.cells.when;
    return typeof when === "number" ? when : 0;
  };
  return Math.max(last("additions"), last("loads")) > last("readings")
    ? ["No reading since the last load or addition: the file should end with one. Close the bath without it?"]
    : [];
}

function meaning(filled: FilledFields<ColumnId<"baths">>, context: LogContext): Meaning {
  const bath = filled.text("bath") ?? "";
  return {
    findings: changeOutFindings(bath, filled.number("closed"), context),
    problems: closeProblems(filled, context),
    doubts: finalReadingDoubt(context, bath),
    rows: [],
    fills: [{ table: "baths", key: bath, cells: cellsOf(filled, ["closed", "closeReason", "note"]) }],
    recorded: `change-out of bath ${bath}`,
  };
}

/** The end of a bath: completes its own row; the release follows. */
export const changeOutEntry: EntryForm<"change-out"> = {
  ...changeOut,
  icon: ArrowExitRegular,
  needs: "bath",
  purpose: "The end of a bath: when and why. Neutralizing and release follow.",
  submit: "Close this bath",
  caution: "A closed bath is not yet released: let it cool, and neutralize it before it goes anywhere.",
  groups: (values, context) => {
    const hasNote = bathFacts(context.log, values["bath"])?.text("note") !== undefined;
    return [
      {
        fields: [
          field(context.log, "baths", "bath", {
            choices: context.log.rows.baths.map((row) => String(row.cells.bath ?? "")),
          }),
          field(context.log, "baths", "closeReason", { required: true, choices: closeReasons }),
          field(context.log, "baths", "closed", { required: true }),
          ...(hasNote ? [] : [field(context.log, "baths", "note")]),
        ],
      },
    ];
  },
  proposals: (typed, context) => ({ bath: typed["bath"] ?? context.bath ?? "", closed: context.now }),
  meaning,
};
