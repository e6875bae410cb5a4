import { DropRegular } from "@fluentui/react-icons/svg/drop";

import { labelStrengths } from "../../../../advice/amounts/label-strength.ts";
import { amountProblems, heldBy } from "../../../../advice/amounts/tank-limits.ts";
import { withUnitCosts } from "../../../../advice/books/unit-costs.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { amount as amountFigure } from "../../../../advice/wording/figures.ts";
import { volume as volumeUnit } from "../../../../joblog/model/units-of.ts";
import type { EntryForm, Meaning } from "../../entry-form.ts";
import { field, initialsField } from "../../fields-of.ts";
import { newRows } from "../../new-rows.ts";
import { addition } from "../../step-forms.ts";
import { additionDoubts } from "./addition-doubts.ts";
import { additionFindings } from "./addition-findings.ts";
import { additionProposals } from "./addition-proposals.ts";
import { type AdditionKey, raiseChanges, raiseFindings, raiseKey, raiseNote, raiseProblems } from "./strength-raise.ts";

const purposes = ["top-up", "opening", "corrective"];

function meaning(filled: FilledFields<AdditionKey>, context: LogContext): Meaning {
  const bath = filled.text("bath");
  const amount = filled.number("amount");
  const note = [filled.text("note"), raiseNote(filled, context)].filter((part) => part !== undefined);
  const rows = withUnitCosts(
    newRows("additions", filled, context, [
      { kind: "concentrate", note: note.length === 0 ? undefined : note.join("; ") },
    ]),
    context.log,
  );
  const row = rows[0]?.row ?? {};
  return {
    findings: [...raiseFindings(filled, context), ...additionFindings(row, context)],
    problems: [
      ...amountProblems("amount", "Amount", amount, heldBy(context, bath), context),
      ...raiseProblems(filled, context),
    ],
    doubts: additionDoubts(filled, row, context),
    changes: raiseChanges(filled, context),
    rows,
    recorded: `${amountFigure(amount ?? 0)} ${volumeUnit[context.system]} of concentrate for bath ${bath ?? ""}`,
  };
}

/** Concentrate that goes in after the charge. */
export const additionEntry: EntryForm<"addition"> = {
  ...addition,
  icon: DropRegular,
  needs: "bath",
  purpose: "Concentrate into a bath: a top-up, a further part of the opening dose, or a corrective addition.",
  submit: "Record addition",
  groups: (values, { log }) => [
    {
      fields: [
        field(log, "additions", "amount"),
        field(log, "additions", "purpose", { choices: purposes }),
        ...(values["purpose"] === "opening"
          ? [
              field(log, "baths", "strength", {
                key: raiseKey,
                label: "Strength now wanted, if it changes",
                required: false,
                suggestions: labelStrengths(log),
              }),
            ]
          : []),
        field(log, "additions", "phBefore"),
        field(log, "additions", "account", { required: true }),
        field(log, "additions", "when"),
        field(log, "additions", "bath"),
      ],
    },
    {
      legend: "More details",
      folded: true,
      fields: [
        field(log, "additions", "phAfter"),
        field(log, "additions", "minutesMixed"),
        initialsField(log, "additions"),
        field(log, "additions", "note"),
      ],
    },
  ],
  proposals: additionProposals,
  meaning,
};
