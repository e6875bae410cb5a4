import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { ph } from "../../../../advice/wording/figures.ts";
import { farInPh } from "../reading/reading-doubts.ts";
import { amountDoubts } from "./addition-findings.ts";
import type { AdditionKey } from "./strength-raise.ts";

/** What is possible of concentrate that goes in but unlikely: more at once than the whole opening dose, a pH that leaps or falls by it. */
export function additionDoubts(filled: FilledFields<AdditionKey>, context: LogContext): readonly string[] {
  const [before, after] = [filled.number("phBefore"), filled.number("phAfter")];
  const rise = before === undefined || after === undefined ? 0 : Math.round((after - before) * 100) / 100;
  return [
    ...amountDoubts(filled, context),
    ...(rise >= farInPh
      ? [`From pH ${ph(before ?? 0)} to ${ph(after ?? 0)} by one addition: were both typed right?`]
      : []),
    ...(rise < 0
      ? [
          `pH ${ph(after ?? 0)} after is under ${ph(before ?? 0)} before, and concentrate raises it. Were both typed right?`,
        ]
      : []),
  ];
}
