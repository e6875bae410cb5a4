import { rowFacts, rowsOfBath } from "../../../../advice/bath-facts.ts";
import { draftedLog, draftedRow } from "../../../../advice/drafted-row.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { missingShares } from "../../../../advice/share-rows.ts";
import { figure, percent } from "../../../../advice/wording/figures.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { LogRow } from "../../../../joblog/model/definition.ts";
import type { LogSnapshot } from "../../../../joblog/model/log-snapshot.ts";
import { isSameText } from "../../../../joblog/model/same-text.ts";
import { yesNo } from "../../../../joblog/model/words.ts";

const [yes] = yesNo;

/**
 * Units that somebody typed on Costs count in place of the loads there, so what the loads alone come to is not what a
 * claim pays; undefined where none are typed for the bath.
 */
function typedUnits(row: LogRow<"loads">, bath: string, claim: string, log: LogSnapshot): Finding | undefined {
  const shares = log.rows.shares.filter(({ cells }) => isSameText(String(cells.bath ?? ""), bath));
  const typed = shares
    .filter(({ cells }) => cells.units !== undefined)
    .map(({ cells }) => `claim ${String(cells.claim ?? "")}`);
  if (typed.length === 0) return undefined;
  const added = missingShares(log, [{ cells: row }]);
  const after = draftedLog(
    log,
    [{ table: "loads", row }, ...added],
    (table, cells) => (table === "shares" || table === "baths") && isSameText(String(cells["bath"] ?? ""), bath),
  );
  const own = shares.find(({ cells }) => isSameText(String(cells.claim ?? ""), claim));
  const share = own === undefined ? after.added("shares") : after.standing("shares", own);
  const weight = share.number("weight");
  const pays =
    weight === undefined
      ? ""
      : ` Claim ${claim} then pays ${percent(weight)} of the bath by ${share.text("basis") ?? ""}.`;
  return {
    tone: "watch",
    text: `Units of ${typed.join(" and ")} in this bath are typed on Costs and count in place of their loads.${pays}`,
  };
}

/** What the load form says of its row while it is filled in: what it counts for, and the claim's share of the bath with it. */
export function loadFindings(row: LogRow<"loads">, context: LogContext): readonly Finding[] {
  const load = draftedRow(context.log, "loads", row);
  const [baskets, weighted, minutes] = (["counted", "weighted", "basketMinutes"] as const).map(load.number);
  const [bath, claim] = [load.text("bath"), load.text("claim")];
  if (baskets === undefined || weighted === undefined || minutes === undefined) return [];
  if (bath === undefined || claim === undefined) return [];
  if (load.text("rework") === yes)
    return [
      {
        tone: "plain",
        text: `Rework: counts nothing toward the share of claim ${claim}, which was charged for these pieces before.`,
      },
    ];
  const loads = rowsOfBath(context.log, "loads", bath);
  const sum = (column: ColumnId<"loads">, ofClaim: boolean): number =>
    loads.reduce(
      (total, one) =>
        total +
        (ofClaim && !isSameText(String(one.cells.claim ?? ""), claim) ? 0 : (rowFacts(one).number(column) ?? 0)),
      0,
    );
  /** As long as nothing counts, no part of it can be named. */
  const share = (column: ColumnId<"loads">, more: number): string => {
    const all = sum(column, false) + more;
    return all > 0 ? percent((sum(column, true) + more) / all) : "none";
  };
  const typed = typedUnits(row, bath, claim, context.log);
  return [
    {
      tone: "plain",
      text: `Counts ${figure(baskets, 2)} by baskets, ${figure(weighted, 2)} by soil, ${figure(minutes, 1)} by basket-minutes.`,
    },
    typed ?? {
      tone: "plain",
      text: `With it claim ${claim} pays ${share("counted", baskets)} of this bath by baskets, ${share("weighted", weighted)} by soil, ${share("basketMinutes", minutes)} by basket-minutes.`,
    },
  ];
}
