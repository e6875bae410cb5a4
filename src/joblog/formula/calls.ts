import type { DefinedFunction } from "../../../functions/define-function.ts";
import type { Argument } from "../../../functions/define-function.ts";
import { type Expression, type Node, nodeOf, type Value } from "./expression.ts";

type Named<Arguments extends readonly Argument<unknown>[]> = { readonly [Name in Arguments[number]["name"]]?: Value };

/**
 * A worksheet function of ours with its arguments by name; their order is the definition's.
 * Throws a RangeError where a required argument is missing.
 */
export function call<const Arguments extends readonly Argument<unknown>[]>(
  of: DefinedFunction<Arguments>,
  given: Named<Arguments>,
): Expression {
  const values: Readonly<Record<string, Value | undefined>> = given;
  const to = of.arguments.map(({ name, optional }): Node => {
    const value = values[name];
    if (value === undefined && !optional) throw new RangeError(`${of.id} needs its argument "${name}".`);
    return value === undefined ? { kind: "nothing" } : nodeOf(value);
  });
  const last = to.findLastIndex(({ kind }) => kind !== "nothing");
  return { kind: "call", of, to: to.slice(0, last + 1) };
}
