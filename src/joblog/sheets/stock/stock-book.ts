import { sum } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isOver } from "../../formula/conditions.ts";
import {
  above,
  atLeast,
  below,
  type Comparison,
  countWhere,
  largestWhere,
  sumWhere,
  type Where,
} from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Log } from "../../formula/log-names.ts";

type Kind = NonNullable<Where<"stockMoves">["kind"]>;

type Moments = NonNullable<Where<"stockMoves">["order"]>;

/** What the lines of a concentrate come to that are of that kind and those moments. */
export function moved({ stockMoves }: Log, concentrate: Expression, kind: Kind, order: Moments): Expression {
  return sumWhere(stockMoves, "amount", { concentrate, kind, order });
}

/** What of a concentrate went into baths at those moments. */
export function poured({ additions }: Log, concentrate: Expression, when: Moments): Expression {
  return sumWhere(additions, "amount", { concentrate, when });
}

/** The moment of a concentrate's last count before another; 0 if none. */
export function lastCountBefore({ stockMoves }: Log, concentrate: Expression, moment: Expression): Expression {
  return largestWhere(stockMoves, "order", { concentrate, kind: "count", order: below(moment) });
}

/** What a count found, by its moment. */
export const countedAt = (log: Log, concentrate: Expression, count: Expression): Expression =>
  moved(log, concentrate, "count", count);

/** Receipts less issues after a count and until then. */
export const netSince = (log: Log, concentrate: Expression, count: Expression, until: Comparison): Expression =>
  sumWhere(log.stockMoves, "net", { concentrate, order: [above(count), until] });

/** What went into baths after a count and until then. */
export const pouredSince = (log: Log, concentrate: Expression, count: Expression, until: Comparison): Expression =>
  poured(log, concentrate, [above(count), until]);

/** The moment of the last line before another that has an average written down; 0 if none. A concentrate that costs nothing has one too. */
export function lastAverageBefore(
  { stockMoves }: Log,
  concentrate: Expression,
  moment: number | Expression,
): Expression {
  return largestWhere(stockMoves, "order", { concentrate, averageAfter: atLeast(0), order: below(moment) });
}

/** The average that was written down at that moment. */
function averageWritten({ stockMoves }: Log, concentrate: Expression, order: Expression): Expression {
  return sumWhere(stockMoves, "averageAfter", { concentrate, order });
}

/** What a unit of volume costs by the pack; blank where price or size are not known. */
export function packPriceOf({ concentrates }: Log, concentrate: Expression): Expression {
  const priced = { concentrate, unitPrice: atLeast(0) };
  return blankIf([equal(countWhere(concentrates, priced), 0)], largestWhere(concentrates, "unitPrice", priced));
}

/** The average that was written down, else the pack's price. */
export const averageOr = (log: Log, concentrate: Expression, priced: Expression, pack: Expression): Expression =>
  when(isOver(sum(priced), 0), averageWritten(log, concentrate, priced)).otherwise(pack);
