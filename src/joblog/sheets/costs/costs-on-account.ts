import { plus, rounded } from "../../formula/arithmetic.ts";
import { sumWhere } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Log } from "../../formula/log-names.ts";
import type { accounts } from "../../model/words.ts";

/** Additions and cost lines of a bath on an account. */
export function onAccount(
  { additions, costLines }: Log,
  bath: Expression,
  account: (typeof accounts)[number],
): Expression {
  return rounded(
    plus(sumWhere(additions, "cost", { bath, account }), sumWhere(costLines, "amount", { bath, account })),
    2,
  );
}
