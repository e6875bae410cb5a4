import { volume as volumeUnit } from "../../joblog/units-of.ts";
import { amount as amountFigure } from "../fields/figures.ts";
import { additionFindings } from "./addition-findings.ts";
import { additionProposals } from "./addition-proposals.ts";
import { alkaliCaution } from "./cautions.ts";
import type { EntryContext, EntryForm, FilledFields, Meaning } from "./entry-form.ts";
import { field } from "./fields-of.ts";
import { nextIds } from "./next-id.ts";

const purposesOf: Readonly<Record<string, readonly string[]>> = {
  concentrate: ["top-up", "opening", "corrective"],
  water: ["make-up", "opening"],
};

function meaning(filled: FilledFields, context: EntryContext): Meaning {
  const bath = filled.text("bath");
  const amount = filled.number("amount");
  const kind = filled.text("kind");
  return {
    findings: additionFindings(filled, context),
    problems: amount === 0 ? [{ key: "amount", message: "Amount: 0 is nothing to record. Allowed: more than 0." }] : [],
    rows: [
      {
        table: "additions",
        row: {
          id: nextIds(context.log, "additions", 1)[0],
          bath,
          when: filled.number("when"),
          kind,
          purpose: filled.text("purpose"),
          amount,
          water: kind === "water" ? filled.text("water") : undefined,
          account: filled.text("account"),
          phBefore: filled.number("phBefore"),
          phAfter: filled.number("phAfter"),
          minutesMixed: filled.number("minutesMixed"),
          initials: filled.text("initials"),
          note: filled.text("note"),
        },
      },
    ],
    recorded: `${amountFigure(amount ?? 0)} ${volumeUnit[context.system]} of ${kind ?? ""} for bath ${bath ?? ""}`,
  };
}

/** Concentrate or water that goes in after the charge. */
export const additionEntry: EntryForm = {
  id: "addition",
  title: "Top-up or make-up",
  purpose: "Concentrate or water that goes into a bath in use.",
  submit: "Record addition",
  caution: alkaliCaution,
  groups: (values, { log }) => {
    const water = values["kind"] === "water";
    return [
      {
        fields: [
          field(log, "additions", "kind"),
          field(log, "additions", "purpose", { choices: purposesOf[values["kind"] ?? ""] ?? [] }),
          field(log, "additions", "amount"),
          ...(water ? [field(log, "additions", "water")] : [field(log, "additions", "phBefore")]),
          field(log, "additions", "account", { required: true }),
          field(log, "additions", "when"),
          field(log, "additions", "bath"),
        ],
      },
      {
        legend: "More",
        folded: true,
        fields: (water ? ["initials", "note"] : ["phAfter", "minutesMixed", "initials", "note"]).map((id) => field(log, "additions", id)),
      },
    ];
  },
  proposals: additionProposals,
  meaning,
};
