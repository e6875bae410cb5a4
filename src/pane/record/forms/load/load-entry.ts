import { DishwasherRegular } from "@fluentui/react-icons/svg/dishwasher";

import { rowsOfBath } from "../../../../advice/bath-facts.ts";
import { bathFacts } from "../../../../advice/bath-values.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import { loadsFlaggedOrDirty } from "../../../../advice/load-sharing.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { missingShares } from "../../../../advice/share-rows.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import { bathState, readingVerdict } from "../../../../joblog/model/words.ts";
import type { EntryForm, Meaning } from "../../entry-form.ts";
import { field, initialsField } from "../../fields-of.ts";
import { newRow } from "../../new-rows.ts";
import { addition } from "../../step-forms.ts";
import { loadFindings } from "./load-findings.ts";
import { zeroProblems } from "./load-problems.ts";

const doubtOfState: Readonly<Partial<Record<string, string>>> = {
  [bathState.benchTest]: "The bath's bench test is not passed since the last concentrate. Run the load anyway?",
  [bathState.baseline]: "The bath has no baseline yet, so nothing will show when it weakens. Run the load anyway?",
  [bathState.topUp]: "A top-up is due in this bath. Run the load before it?",
};

function meaning(filled: FilledFields<ColumnId<"loads">>, context: LogContext): Meaning {
  const bath = filled.text("bath");
  const facts = bathFacts(context.log, bath);
  const state = facts?.text("state");
  // A bath that is not back yet after a top-up is above its trigger.
  const cleans = facts?.text("lastVerdict") === readingVerdict.notBack;
  const stateDoubt = cleans ? undefined : doubtOfState[state ?? ""];
  const added = newRow("loads", filled, context);
  return {
    findings: loadFindings(added.row, context),
    problems: zeroProblems(filled),
    doubts: [...(stateDoubt === undefined ? [] : [stateDoubt]), ...loadsFlaggedOrDirty(filled, context)],
    rows: [added, ...missingShares(context.log, [{ cells: added.row }])],
    recorded: `load of claim ${filled.text("claim") ?? ""} in bath ${bath ?? ""}`,
    ...(state === bathState.charge
      ? {
          blocked: {
            why: "This bath has no concentrate in the log yet. Record what went in first.",
            first: addition,
          },
        }
      : {}),
  };
}

/** One load: whose it is decides later who pays for the bath. */
export const loadEntry: EntryForm<"load"> = {
  id: "load",
  title: "Load",
  icon: DishwasherRegular,
  needs: "bath",
  series: true,
  purpose: "Baskets of one claim that went into a bath.",
  submit: "Record load",
  groups: (_values, { log }) => [
    {
      fields: [
        field(log, "loads", "claim"),
        field(log, "loads", "baskets"),
        field(log, "loads", "soil"),
        field(log, "loads", "minutes"),
        field(log, "loads", "when"),
        field(log, "loads", "bath"),
      ],
    },
    {
      legend: "More details",
      folded: true,
      fields: [
        field(log, "loads", "rework"),
        field(log, "loads", "area"),
        initialsField(log, "loads"),
        field(log, "loads", "note"),
      ],
    },
  ],
  proposals: (typed, context) => {
    const bath = typed["bath"] ?? context.bath ?? "";
    const last = rowsOfBath(context.log, "loads", bath).at(-1)?.cells;
    const claims = context.log.rows.claims;
    const only = claims.length === 1 ? claims[0]?.cells.claim : undefined;
    return { bath, when: context.now, claim: String(last?.claim ?? only ?? "") };
  },
  meaning,
};
