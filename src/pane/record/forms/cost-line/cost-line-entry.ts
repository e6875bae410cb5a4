import { ReceiptAddRegular } from "@fluentui/react-icons/svg/receipt-add";

import { findRow } from "../../../../advice/bath-facts.ts";
import { draftedLog } from "../../../../advice/drafted-row.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { money } from "../../../../advice/wording/figures.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { LogRow } from "../../../../joblog/model/definition.ts";
import type { EntryForm, Meaning } from "../../entry-form.ts";
import { field, textsOf } from "../../fields-of.ts";
import { newRow } from "../../new-rows.ts";
import { documentDoubts, noCostProblems, pricedWaterDoubts } from "./cost-line-doubts.ts";

/** What the line and its bath will say with it. */
function findingsOf(row: LogRow<"costLines">, { log }: LogContext): readonly Finding[] {
  const bath = row.bath === undefined ? undefined : findRow(log, "baths", "bath", String(row.bath));
  const drafted = draftedLog(
    log,
    [{ table: "costLines", row }],
    (table, cells) => table === "baths" && cells === bath?.cells,
  );
  const line = drafted.added("costLines");
  const amount = line.number("amount");
  if (amount === undefined) return [];
  if (line.number("alone") !== undefined)
    return [{ tone: "good", text: `Claim ${line.text("claim") ?? ""} pays ${money(amount)} alone.` }];
  if (line.text("account") === "shop")
    return [{ tone: "plain", text: `The shop pays ${money(amount)}: it is not charged to any claim.` }];
  if (bath === undefined || line.number("shared") === undefined)
    return [
      {
        tone: "watch",
        text: `Nobody is charged with ${money(amount)} as the line stands: ${line.text("check") ?? "it is not complete"}.`,
      },
    ];
  const after = drafted.standing("baths", bath);
  const name = after.text("bath") ?? "";
  if (after.number("reworkOnly") === 1)
    return [
      {
        tone: "watch",
        text: `The shop pays ${money(amount)}: bath ${name} had rework and nothing else, so no claim shares its cost.`,
      },
    ];
  const all = after.number("pool");
  const pool = all === undefined ? "" : ` With it, ${money(all)} of bath ${name} is shared out.`;
  return [{ tone: "good", text: `The claims of bath ${name} pay ${money(amount)}.${pool}` }];
}

function meaning(filled: FilledFields<ColumnId<"costLines">>, context: LogContext): Meaning {
  const amount = filled.number("amount");
  const added = newRow("costLines", filled, context);
  return {
    findings: findingsOf(added.row, context),
    problems: noCostProblems(filled),
    doubts: [...documentDoubts(filled, context), ...pricedWaterDoubts(filled, context)],
    rows: [added],
    recorded: `cost line of ${amount === undefined ? "" : money(amount)}, ${filled.text("what") ?? ""}`,
  };
}

/** A cost that is neither concentrate nor water: those come from the additions by themselves. */
export const costLineEntry: EntryForm<"cost line"> = {
  id: "cost line",
  title: "Cost line",
  icon: ReceiptAddRegular,
  needs: "log",
  from: "claims",
  purpose: "Labor, electricity, disposal: what a bath cost besides concentrate and water.",
  submit: "Record cost line",
  caution: "The shop's own mistakes go to the shop, never to a claim.",
  groups: (_values, { log }) => [
    {
      fields: [
        field(log, "costLines", "what", { suggestions: textsOf(log, "costLines", "what") }),
        field(log, "costLines", "amount"),
        field(log, "costLines", "kind"),
        field(log, "costLines", "account", { required: true }),
        field(log, "costLines", "bath"),
        field(log, "costLines", "claim"),
        field(log, "costLines", "document"),
        field(log, "costLines", "date"),
      ],
    },
  ],
  proposals: (_typed, { bath, now }) => ({ account: "claims", bath: bath ?? "", date: now.slice(0, 10) }),
  meaning,
};
