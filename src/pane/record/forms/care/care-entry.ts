import { BroomRegular } from "@fluentui/react-icons/svg/broom";

import { amountProblems, heldBy } from "../../../../advice/amounts/tank-limits.ts";
import { bathFacts } from "../../../../advice/bath-values.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import { bathState, careKinds } from "../../../../joblog/model/words.ts";
import type { EntryField, EntryForm, Meaning } from "../../entry-form.ts";
import { field, initialsField, textsOf } from "../../fields-of.ts";
import { newRow } from "../../new-rows.ts";
import { careFindings } from "./care-findings.ts";

type CareColumn = ColumnId<"care">;

/** Which columns a kind of care fills; the required ones first. */
const fieldsOfKind: Readonly<
  Record<
    (typeof careKinds)[number],
    { readonly required: readonly CareColumn[]; readonly optional: readonly CareColumn[] }
  >
> = {
  skim: { required: [], optional: ["result", "amount"] },
  filter: { required: [], optional: ["result", "minutes"] },
  drain: { required: ["amount", "destination"], optional: ["result"] },
  "rinse check": { required: ["rinsePh"], optional: ["rinseConductivity", "result"] },
  degas: { required: ["minutes"], optional: ["result"] },
  "foil test": { required: ["result"], optional: [] },
};

const labels: Readonly<Partial<Record<(typeof careKinds)[number], string>>> = {
  "rinse check": "What was done",
  "foil test": "Pattern of the foil",
  filter: "Bags changed, what was seen",
};

function kindFields(kind: string, context: LogContext): readonly EntryField[] {
  const known = careKinds.find((one) => one === kind);
  if (known === undefined) return [];
  const { required, optional } = fieldsOfKind[known];
  const label = labels[known];
  return [...required, ...optional].map((id) =>
    field(context.log, "care", id, {
      required: required.includes(id),
      ...(id === "result" && label !== undefined ? { label } : {}),
      ...(id === "destination" ? { suggestions: textsOf(context.log, "care", "destination") } : {}),
    }),
  );
}

function meaning(filled: FilledFields<ColumnId<"care">>, context: LogContext): Meaning {
  const bath = filled.text("bath");
  const kind = filled.text("kind") ?? "care";
  const minutes = filled.number("minutes");
  const added = newRow("care", filled, context);
  return {
    findings: careFindings(added.row, context),
    problems: [
      ...amountProblems("amount", "Taken out", filled.number("amount"), heldBy(context, bath), context),
      ...(minutes === 0
        ? [{ key: "minutes", message: "Duration: 0 minutes is nothing to record. Allowed: more than 0." }]
        : []),
    ],
    doubts:
      kind === "foil test" && bathFacts(context.log, bath)?.text("state") === bathState.charge
        ? [
            "A foil test shows the pattern of a charged, degassed bath; this one has no concentrate yet. Record it anyway?",
          ]
        : [],
    rows: [added],
    recorded: `${kind} of bath ${bath ?? ""}`,
  };
}

/** Skimming, filtering, drains, rinse checks, degassing, foil tests: the kind decides what is asked. */
export const careEntry: EntryForm<"care"> = {
  id: "care",
  title: "Care",
  icon: BroomRegular,
  needs: "bath",
  purpose: "Skim, filter, drain, rinse check, degas, foil test.",
  submit: "Record care",
  groups: (values, context) => [
    {
      fields: [
        field(context.log, "care", "kind"),
        ...kindFields(values["kind"] ?? "", context),
        field(context.log, "care", "when"),
        field(context.log, "care", "bath"),
      ],
    },
    {
      legend: "More details",
      folded: true,
      fields: [initialsField(context.log, "care"), field(context.log, "care", "note")],
    },
  ],
  proposals: (typed, context) => ({ bath: typed["bath"] ?? context.bath ?? "", when: context.now }),
  meaning,
};
