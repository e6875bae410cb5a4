import { labelDoubts } from "../../../../advice/amounts/label-limit.ts";
import { roomDoubts } from "../../../../advice/amounts/tank-room.ts";
import { findRow } from "../../../../advice/bath-facts.ts";
import { draftedLog } from "../../../../advice/drafted-row.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { ph } from "../../../../advice/wording/figures.ts";
import { farInPh } from "../../../../core/bath/reading-slip.ts";
import type { LogRow } from "../../../../joblog/model/definition.ts";
import { amountDoubts } from "./addition-findings.ts";
import { type AdditionKey, raisedLog } from "./strength-raise.ts";

/** Against the label, where a strength is booked or more of the opening dose goes in, and against the tank. */
export function strengthAndRoom(
  filled: FilledFields<AdditionKey>,
  row: LogRow<"additions">,
  context: LogContext,
): readonly string[] {
  const log = raisedLog(filled, context);
  const ofBath = findRow(log, "baths", "bath", filled.text("bath") ?? "");
  if (ofBath === undefined || filled.number("amount") === undefined) return [];
  const after = draftedLog(log, [{ table: "additions", row }], (_, cells) => cells === ofBath.cells);
  return [
    ...(filled.text("purpose") === "opening" ? labelDoubts(after.standing("baths", ofBath)) : []),
    ...roomDoubts(after.added("additions"), context),
  ];
}

/** A pH that leaps or falls by an addition. */
export function riseDoubts(filled: FilledFields<AdditionKey>): readonly string[] {
  const [before, after] = [filled.number("phBefore"), filled.number("phAfter")];
  const rise = before === undefined || after === undefined ? 0 : Math.round((after - before) * 100) / 100;
  return [
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

/** What is possible of concentrate that goes in but unlikely: more at once than the whole opening dose, a pH that leaps or falls by it. */
export function additionDoubts(
  filled: FilledFields<AdditionKey>,
  row: LogRow<"additions">,
  context: LogContext,
): readonly string[] {
  return [...amountDoubts(filled, context), ...strengthAndRoom(filled, row, context), ...riseDoubts(filled)];
}
