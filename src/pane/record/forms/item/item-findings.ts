import { rowFacts } from "../../../../advice/bath-facts.ts";
import type { DraftedRow } from "../../../../advice/drafted-row.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { figure, money, percent } from "../../../../advice/wording/figures.ts";
import { isSameText } from "../../../../joblog/model/same-text.ts";
import { economicTest, itemStandings, yesNo } from "../../../../joblog/model/words.ts";

const [yes] = yesNo;

/** The economic test is asked only where a share was agreed with the insurer: there is no usual one. */
function economicFindings(item: DraftedRow<"items">, { log }: LogContext): readonly Finding[] {
  const share = log.fields["economicShare"];
  const [cost, value] = [item.number("restoreCost"), item.number("replacementValue")];
  if (cost === undefined || value === undefined || value === 0) return [];
  const says = `Restoring for ${money(cost)} is ${percent(cost / value)} of the replacement value`;
  const test = item.text("economic");
  if (test === undefined || typeof share !== "number")
    return [{ tone: "plain", text: `${says}. No share is agreed yet, so nothing follows from it.` }];
  return test === economicTest.within
    ? [{ tone: "good", text: `${says}: within the agreed ${percent(share)}.` }]
    : [{ tone: "watch", text: `${says}: over the agreed ${percent(share)}. Reason code COST, if that decides.` }];
}

function balance(
  claim: string,
  item: DraftedRow<"items">,
  added: number,
  closes: boolean,
  { log }: LogContext,
): string {
  const rows = log.rows.items.map(rowFacts).filter((row) => isSameText(row.text("claim"), claim));
  const pieces = rows.reduce((sum, row) => sum + (row.number("quantity") ?? 0), added);
  const pendingBefore = rows
    .filter((row) => row.text("outcome") === undefined)
    .reduce((sum, row) => sum + (row.number("quantity") ?? 0), 0);
  const own = item.number("quantity") ?? 0;
  const pending = pendingBefore + (closes ? -own : item.text("outcome") === undefined ? own : 0);
  const received = log.rows.itemCounts
    .map(rowFacts)
    .find((row) => isSameText(row.text("claim"), claim))
    ?.number("received");
  const counted =
    received === undefined ? "not counted in yet (Record, Count in)" : `${figure(received, 0)} counted in`;
  return `Claim ${claim}: ${figure(pieces, 0)} ${pieces === 1 ? "piece" : "pieces"} listed, ${pending === 0 ? "none" : figure(pending, 0)} pending; ${counted}.`;
}

/** What the item form says while it is filled in. `earlier`: the item stands in the list already. */
export function itemFindings(item: DraftedRow<"items">, earlier: boolean, context: LogContext): readonly Finding[] {
  const [claim, quantity] = [item.text("claim"), item.number("quantity")];
  if (claim === undefined || quantity === undefined) return [];
  const closes = earlier && item.text("outcome") !== undefined;
  const findings: Finding[] = [
    {
      tone: "plain",
      text: `Counts as ${item.text("standing") ?? itemStandings.pending}. ${balance(claim, item, earlier ? 0 : quantity, closes, context)}`,
    },
    ...economicFindings(item, context),
  ];
  const lost = item.text("outcome") === "not restorable";
  if (lost && item.text("reasonText") === undefined)
    findings.push({ tone: "watch", text: "Give the reason in a sentence too: the adjuster was not there." });
  if (lost && item.text("photo") === undefined)
    findings.push({
      tone: "watch",
      text: "No photo yet: a piece that cannot be restored needs one from before cleaning.",
    });
  if (item.text("pre1978") === yes)
    findings.push({
      tone: "watch",
      text: "Old paint or glaze may hold lead: isolate and wipe-test; it never shares a bath.",
    });
  return findings;
}
