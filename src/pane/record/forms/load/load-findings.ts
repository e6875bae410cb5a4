import { rowFacts, rowsOfBath } from "../../../../advice/bath-facts.ts";
import { draftedRow } from "../../../../advice/drafted-row.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { figure, percent } from "../../../../advice/wording/figures.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { LogRow } from "../../../../joblog/model/definition.ts";
import { isSameText } from "../../../../joblog/model/same-text.ts";
import { yesNo } from "../../../../joblog/model/words.ts";

const [yes] = yesNo;

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
  return [
    {
      tone: "plain",
      text: `Counts ${figure(baskets, 2)} by baskets, ${figure(weighted, 2)} by soil, ${figure(minutes, 1)} by basket-minutes.`,
    },
    {
      tone: "plain",
      text: `With it claim ${claim} pays ${share("counted", baskets)} of this bath by baskets, ${share("weighted", weighted)} by soil, ${share("basketMinutes", minutes)} by basket-minutes.`,
    },
  ];
}
