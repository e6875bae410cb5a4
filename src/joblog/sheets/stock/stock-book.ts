import { minus, plus } from "../../formula/arithmetic.ts";
import { above, below, type Comparison, largestWhere, sumWhere, type Where } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Log } from "../../formula/log-names.ts";

type Kind = NonNullable<Where<"stockMoves">["kind"]>;

type Days = NonNullable<Where<"stockMoves">["day"]>;

/** What the lines of a concentrate come to that are of that kind and those days. */
export function moved({ stockMoves }: Log, concentrate: Expression, kind: Kind, day: Days): Expression {
  return sumWhere(stockMoves, "amount", { concentrate, kind, day });
}

/** What of a concentrate went into baths on those days. */
export function poured({ additions }: Log, concentrate: Expression, day: Days): Expression {
  return sumWhere(additions, "amount", { concentrate, day });
}

/** The day of a concentrate's last count before a day; 0 if none. */
export function lastCountBefore({ stockMoves }: Log, concentrate: Expression, day: Expression): Expression {
  return largestWhere(stockMoves, "day", { concentrate, kind: "count", day: below(day) });
}

/** The count of a day, with what came and went since: a count stands for the end of its day. */
export function bookSince(log: Log, concentrate: Expression, count: Expression, until: Comparison): Expression {
  const since = [above(count), until];
  return minus(
    plus(moved(log, concentrate, "count", count), moved(log, concentrate, "receipt", since)),
    moved(log, concentrate, "issue", since),
    poured(log, concentrate, since),
  );
}
