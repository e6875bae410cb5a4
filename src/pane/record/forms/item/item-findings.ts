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

/** An item as it will stand, and what the count of its claim's pieces comes to with it. */
export interface ListedItem {
  readonly item: DraftedRow<"items">;
  readonly count: DraftedRow<"itemCounts">;
}

function balance(claim: string, count: DraftedRow<"itemCounts">, { log }: LogContext): string {
  const [pieces, pending] = [count.number("pieces") ?? 0, count.number("pending") ?? 0];
  const received = log.rows.itemCounts
    .map(rowFacts)
    .find((row) => isSameText(row.text("claim"), claim))
    ?.number("received");
  const counted =
    received === undefined ? "not counted in yet (Record, Count in)" : `${figure(received, 0)} counted in`;
  return `Claim ${claim}: ${figure(pieces, 0)} ${pieces === 1 ? "piece" : "pieces"} listed, ${pending === 0 ? "none" : figure(pending, 0)} pending; ${counted}.`;
}

/** What the item form says while it is filled in. */
export function itemFindings({ item, count }: ListedItem, context: LogContext): readonly Finding[] {
  const claim = item.text("claim");
  if (claim === undefined || item.number("quantity") === undefined) return [];
  const findings: Finding[] = [
    {
      tone: "plain",
      text: `Counts as ${item.text("standing") ?? itemStandings.pending}. ${balance(claim, count, context)}`,
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
