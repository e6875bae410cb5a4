import { any, type Condition } from "./conditions.ts";
import { apply, type Expression, type Value } from "./expression.ts";

/** Results that are tried in order, each under its condition. */
export interface Choices {
  readonly when: (condition: Condition, result: Value) => Choices;
  readonly otherwise: (result: Value) => Expression;
}

function choicesAfter(earlier: (rest: Value) => Expression): Choices {
  return {
    when: (condition, result) => choicesAfter((rest) => earlier(apply("IF", condition, result, rest))),
    otherwise: earlier,
  };
}

/** `when(a, x).when(b, y).otherwise(z)`: x where a holds, or else y where b does, or else z. */
export function when(condition: Condition, result: Value): Choices {
  return choicesAfter((rest) => apply("IF", condition, result, rest));
}

/** Blank as long as any of the conditions holds, otherwise the result. */
export function blankIf([first, ...more]: readonly [Condition, ...Condition[]], result: Value): Expression {
  return when(more.length === 0 ? first : any(first, ...more), "").otherwise(result);
}
