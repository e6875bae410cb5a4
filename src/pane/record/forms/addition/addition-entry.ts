import type { FilledFields } from "../../../../advice/filled-fields.ts";
import { labelStrengths } from "../../../../advice/label-strength.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { amountProblems, heldBy } from "../../../../advice/tank-limits.ts";
import { amount as amountFigure } from "../../../../advice/wording/figures.ts";
import type { LogRow } from "../../../../joblog/model/definition.ts";
import { volume as volumeUnit } from "../../../../joblog/model/units-of.ts";
import { alkaliCaution } from "../../cautions.ts";
import type { EntryForm, Meaning } from "../../entry-form.ts";
import { entryNames } from "../../entry-names.ts";
import { field, initialsField } from "../../fields-of.ts";
import { nextIds } from "../../next-id.ts";
import { additionDoubts } from "./addition-doubts.ts";
import { additionFindings } from "./addition-findings.ts";
import { additionProposals } from "./addition-proposals.ts";
import { type AdditionKey, raiseChanges, raiseFindings, raiseKey, raiseNote, raiseProblems } from "./strength-raise.ts";

const purposes = ["top-up", "opening", "corrective"];

function meaning(filled: FilledFields<AdditionKey>, context: LogContext): Meaning {
  const bath = filled.text("bath");
  const amount = filled.number("amount");
  const note = [filled.text("note"), raiseNote(filled, context)].filter((part) => part !== undefined);
  const row: LogRow<"additions"> = {
    id: nextIds(context.log, "additions", 1)[0],
    bath,
    when: filled.number("when"),
    kind: "concentrate",
    purpose: filled.text("purpose"),
    amount,
    account: filled.text("account"),
    phBefore: filled.number("phBefore"),
    phAfter: filled.number("phAfter"),
    minutesMixed: filled.number("minutesMixed"),
    initials: filled.text("initials"),
    note: note.length === 0 ? undefined : note.join("; "),
  };
  return {
    findings: [...raiseFindings(filled, context), ...additionFindings(row, context)],
    problems: [
      ...amountProblems("amount", "Amount", amount, heldBy(context, bath), context),
      ...raiseProblems(filled, context),
    ],
    doubts: additionDoubts(filled, context),
    changes: raiseChanges(filled, context),
    rows: [{ table: "additions", row }],
    recorded: `${amountFigure(amount ?? 0)} ${volumeUnit[context.system]} of concentrate for bath ${bath ?? ""}`,
  };
}

/** Concentrate that goes in after the charge. */
export const additionEntry: EntryForm = {
  id: "addition",
  title: entryNames.addition,
  purpose: "Concentrate into a bath: top-up, second part of the opening dose, corrective.",
  submit: "Record top-up",
  caution: alkaliCaution,
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
      legend: "More",
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
