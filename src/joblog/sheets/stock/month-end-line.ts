import { minus, plus } from "../../formula/arithmetic.ts";
import { blankIf } from "../../formula/choices.ts";
import { type Condition, isBlank, isNoNumber } from "../../formula/conditions.ts";
import { atLeast, below, type Comparison, sumWhere, type Where } from "../../formula/criteria.ts";
import type { Expression, Value } from "../../formula/expression.ts";
import type { ColumnId, Log, Row } from "../../formula/log-names.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { accounts } from "../../model/words.ts";

export const { computed, helper } = columnsOf<"monthEnd">();

export type MonthEnd = Row<"monthEnd">;

type Formula = (row: MonthEnd, log: Log) => Value;

const incomplete = ({ from, concentrate }: MonthEnd): readonly [Condition, Condition] => [
  isBlank(from),
  isBlank(concentrate),
];

/** A column that is blank as long as month or concentrate are. */
export function line(column: Parameters<typeof computed>[0], formula: Formula): ComputedColumn {
  return computed(column, (row, log) => blankIf(incomplete(row), formula(row, log)));
}

export function helperLine(column: Parameters<typeof helper>[0], formula: Formula): ComputedColumn {
  return helper(column, (row, log) => blankIf(incomplete(row), formula(row, log)));
}

/** The days of the month. */
export const inMonth = ({ from, until }: MonthEnd): readonly Comparison[] => [atLeast(from), below(until)];

/** What the month's lines in Stock come to, of the kinds given or of all. */
export function ofStock(
  column: ColumnId<"stockMoves">,
  row: MonthEnd,
  { stockMoves }: Log,
  kind: Pick<Where<"stockMoves">, "kind"> = {},
): Expression {
  return sumWhere(stockMoves, column, { concentrate: row.concentrate, ...kind, order: inMonth(row) });
}

export const [toClaims, toShop] = accounts;

/** What the month's additions of the concentrate on that account come to. */
export function onAccount(account: (typeof accounts)[number], what: "amount" | "cost"): Formula {
  return (row, { additions }) =>
    sumWhere(additions, what, { concentrate: row.concentrate, account, day: inMonth(row) });
}

/** What the month's additions come to, whoever pays. */
export const ofAdditions = (what: "amount" | "cost", row: MonthEnd, { additions }: Log): Expression =>
  sumWhere(additions, what, { concentrate: row.concentrate, day: inMonth(row) });

/** What a month is reckoned from: by quantity, or by value. */
export interface Parts {
  readonly opening: Expression;
  readonly received: Expression;
  readonly out: readonly Expression[];
  readonly difference: Expression;
  readonly closing: Expression;
}

/** What is left of opening, receipts, uses and count differences once the closing is taken off; blank where the month cannot be reckoned. */
export function leftOver({ opening, received, out, difference, closing }: Parts, shown: (left: Value) => Value): Value {
  return blankIf(
    [isNoNumber(opening), isNoNumber(closing)],
    shown(minus(plus(opening, received, difference), ...out, closing)),
  );
}
