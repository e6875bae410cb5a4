/** A tank holds one bath at a time: the one before is changed out first. */
import { type RowFacts, rowFacts } from "../../../../advice/bath-facts.ts";
import type { FieldProblem, FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { shortMoment } from "../../../../advice/wording/moments.ts";
import { isSameText } from "../../../../joblog/model/same-text.ts";

function bathsOfTank(filled: FilledFields<"tank" | "opened">, { log }: LogContext): readonly RowFacts<"baths">[] {
  const tank = filled.text("tank");
  return tank === undefined ? [] : log.rows.baths.map(rowFacts).filter((bath) => isSameText(bath.text("tank"), tank));
}

/** The bath that was in the tank when the fill began and has no change-out. */
export function bathInTank(filled: FilledFields<"tank" | "opened">, context: LogContext): string | undefined {
  const opened = filled.number("opened") ?? Number.POSITIVE_INFINITY;
  return bathsOfTank(filled, context)
    .find((bath) => bath.number("closed") === undefined && (bath.number("opened") ?? 0) <= opened)
    ?.text("bath");
}

/** A fill that began while the tank held another bath. */
export function tankProblems(filled: FilledFields<"tank" | "opened">, context: LogContext): readonly FieldProblem[] {
  const opened = filled.number("opened");
  if (opened === undefined) return [];
  return bathsOfTank(filled, context).flatMap((bath) => {
    const [from, until] = [bath.number("opened"), bath.number("closed")];
    if (from === undefined || until === undefined || opened < from || opened >= until) return [];
    return [
      {
        key: "opened",
        message: `Opened: ${shortMoment(opened)} is while the tank held bath ${bath.text("bath") ?? ""}, ${shortMoment(from)} to ${shortMoment(until)}. Check the tank and the date.`,
      },
    ];
  });
}

/** A fill entered late, older than what the tank holds now: it has ended, and wants its change-out at once. */
export function tankDoubts(filled: FilledFields<"tank" | "opened">, context: LogContext): readonly string[] {
  const opened = filled.number("opened");
  if (opened === undefined) return [];
  const later = bathsOfTank(filled, context).find((bath) => (bath.number("opened") ?? 0) > opened);
  return later === undefined
    ? []
    : [
        `The tank has held bath ${later.text("bath") ?? ""} since ${shortMoment(later.number("opened") ?? 0)}, so this one has ended. Record it, and its change-out right after?`,
      ];
}
