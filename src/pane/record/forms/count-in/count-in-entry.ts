import { BoxCheckmarkRegular } from "@fluentui/react-icons/svg/box-checkmark";

import { findRow } from "../../../../advice/bath-facts.ts";
import { completedRow, type DraftedRow, draftedRow } from "../../../../advice/drafted-row.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding, Tone } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { countOf } from "../../../../advice/wording/figure-words.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import { balanceWords } from "../../../../joblog/model/words.ts";
import type { Draft, EntryForm, Meaning } from "../../entry-form.ts";
import { field } from "../../fields-of.ts";

type CountColumn = ColumnId<"itemCounts">;

const toneOf = (balance: string): Tone => (balance.startsWith(balanceWords.balances) ? "good" : "watch");

/** What the claim's row will say. */
function findingsOf(count: DraftedRow<"itemCounts">): readonly Finding[] {
  const [received, pieces, balance] = [count.number("received"), count.number("pieces"), count.text("balance")];
  if (received === undefined || pieces === undefined || balance === undefined) return [];
  return [
    { tone: "plain", text: `${countOf(String(pieces), "piece")} listed so far.` },
    { tone: toneOf(balance), text: `${balance.charAt(0).toUpperCase()}${balance.slice(1)}.` },
  ];
}

function meaning(filled: FilledFields<CountColumn>, { log }: LogContext): Meaning {
  const [claim, received] = [filled.text("claim"), filled.number("received")];
  const row = claim === undefined ? undefined : findRow(log, "itemCounts", "claim", claim);
  const before = row?.cells.received;
  const counted =
    row === undefined
      ? draftedRow(log, "itemCounts", { claim, received })
      : completedRow(log, "itemCounts", row, { received });
  return {
    findings: findingsOf(counted),
    problems: received === 0 ? [{ key: "received", message: "Counted in: 0 is nothing that came in." }] : [],
    doubts:
      before === undefined || before === received
        ? []
        : [`Claim ${claim ?? ""} was counted in at ${String(before)} already. Put ${String(received)} in its place?`],
    rows: row === undefined ? [{ table: "itemCounts", row: { claim, received } }] : [],
    ...(row === undefined
      ? {}
      : {
          changes: [
            {
              table: "itemCounts" as const,
              position: row.position,
              // The claim stands among the cells, so that a row which sorting moved is never taken for this one.
              cells: {
                claim: { before: row.cells.claim, after: row.cells.claim },
                received: { before, after: received },
              },
            },
          ],
        }),
    recorded: `${countOf(String(received ?? 0), "piece")} of claim ${claim ?? ""} counted in`,
  };
}

/** The count at the door, which the list of pieces is held against. */
export const countInEntry: EntryForm<"count in"> = {
  id: "count in",
  title: "Count in",
  icon: BoxCheckmarkRegular,
  needs: "log",
  purpose: "How many pieces of a claim came in, counted at the door: the list is held against it.",
  submit: "Record count",
  groups: (_, { log }) => [
    { fields: [field(log, "itemCounts", "claim"), field(log, "itemCounts", "received", { required: true })] },
  ],
  proposals: (typed: Draft, { log }) => {
    const { claims, itemCounts } = log.rows;
    const counted = itemCounts.filter(({ cells }) => cells.received !== undefined).map(({ cells }) => cells.claim);
    const open = claims.filter(({ cells }) => !counted.includes(cells.claim));
    return { claim: typed["claim"] ?? (open.length === 1 ? String(open[0]?.cells.claim ?? "") : "") };
  },
  meaning,
};
