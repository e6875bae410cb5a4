import { missingOpening, proposedRaise } from "../../../../advice/amounts/planned-dose.ts";
import { lastReadingOf, type RowFacts, rowFacts, rowsOfBath } from "../../../../advice/bath-facts.ts";
import { bathFacts } from "../../../../advice/bath-values.ts";
import { completedRow } from "../../../../advice/drafted-row.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { phForRecovery } from "../../../../advice/readings/at-baseline.ts";
import { furtherAddition } from "../../../../advice/readings/judge-recovery.ts";
import { unreadTopUp } from "../../../../advice/readings/unread-additions.ts";
import { figure, ph as phFigure } from "../../../../advice/wording/figures.ts";
import { readingVerdict, recovery } from "../../../../joblog/model/words.ts";
import type { Draft } from "../../entry-form.ts";
import { raiseKey } from "./strength-raise.ts";

function proposedPurpose(facts: RowFacts<"baths"> | undefined): string {
  return facts?.number("baseline") === undefined ? "opening" : "top-up";
}

/** After a top-up that fell short of the baseline: what it says is still missing. */
function stillMissing(
  facts: RowFacts<"baths">,
  last: RowFacts<"readings">,
  context: LogContext,
  bath: string,
): number | undefined {
  const phAfter = last.text("purpose") === "after top-up" ? phForRecovery(last) : undefined;
  const row = rowsOfBath(context.log, "additions", bath)
    .filter(({ cells }) => cells["kind"] === "concentrate")
    .at(-1);
  if (phAfter === undefined || row === undefined) return undefined;
  const addition = completedRow(context.log, "additions", row, { phAfter });
  if (addition.text("recovery") !== recovery.short) return undefined;
  const next = furtherAddition(facts, addition, context);
  return next?.known === true && next.value > 0 ? next.value : undefined;
}

/** The first addition of the last reading, or what is missing of the planned opening dose. */
function proposedAmount(
  purpose: string,
  facts: RowFacts<"baths"> | undefined,
  strength: string,
  context: LogContext,
  bath: string,
): string {
  if (facts === undefined) return "";
  if (purpose === "opening") {
    const left = missingOpening(context.log, bath, strength);
    return left === undefined ? "" : figure(left, 3);
  }
  const last = lastReadingOf(context.log, bath);
  if (purpose !== "top-up" || last === undefined || unreadTopUp(context.log, bath) !== undefined) return "";
  const first = rowFacts(last).number("firstAddition") ?? stillMissing(facts, rowFacts(last), context, bath);
  return first === undefined ? "" : figure(first, 2);
}

/** The last reading as an addition's row wants it; blank where the sample was too far from the baseline's temperature. */
function proposedBefore(facts: RowFacts<"baths"> | undefined, bath: string, context: LogContext): string {
  const row = lastReadingOf(context.log, bath);
  const last = row === undefined ? undefined : rowFacts(row);
  if (facts === undefined || last === undefined || last.text("verdict") === readingVerdict.check) return "";
  const before = phForRecovery(last);
  return before === undefined ? "" : phFigure(before);
}

/** What the top-up form starts with: what the log says is due. */
export function additionProposals(typed: Draft, context: LogContext): Draft {
  const bath = typed["bath"] ?? context.bath ?? "";
  const facts = bathFacts(context.log, bath);
  const purpose = typed["purpose"] ?? proposedPurpose(facts);
  const strength = purpose === "opening" ? proposedRaise(facts) : "";
  return {
    bath,
    when: context.now,
    purpose,
    [raiseKey]: strength,
    amount: proposedAmount(purpose, facts, (typed[raiseKey] ?? strength).trim(), context, bath),
    account: purpose === "corrective" ? "shop" : "claims",
    phBefore: purpose !== "opening" ? proposedBefore(facts, bath, context) : "",
  };
}
