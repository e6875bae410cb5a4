import { lastReadingOf, rowFacts, rowsOfBath, type RowFacts } from "../../joblog/bath-facts.ts";
import { bench } from "../../joblog/words.ts";
import { figure, ph as phFigure } from "../fields/figures.ts";
import { askNumber } from "../store/ask.ts";
import { phForRecovery } from "./at-baseline.ts";
import { bathFacts } from "./bath-values.ts";
import type { Draft, EntryContext } from "./entry-form.ts";
import { furtherAddition } from "./judge-recovery.ts";
import { unreadTopUp } from "./reading-entry.ts";

function proposedPurpose(facts: RowFacts | undefined): string {
  return facts?.number("baseline") === undefined ? "opening" : "top-up";
}

/** After a top-up that fell short of the baseline: what it says is still missing. */
function stillMissing(facts: RowFacts, last: RowFacts, context: EntryContext, bath: string): number | undefined {
  const baseline = facts.number("baseline");
  const ph = last.number("ph");
  if (last.text("purpose") !== "after top-up" || baseline === undefined || ph === undefined) return undefined;
  const after = phForRecovery(facts, ph, last.number("temperature"), context);
  const tolerance = context.log.fields["tolerance"];
  if (after === undefined || (typeof tolerance === "number" && baseline - after <= tolerance)) return undefined;
  const row = rowsOfBath(context.log, "additions", bath).filter(({ cells }) => cells["kind"] === "concentrate").at(-1);
  const added = row === undefined ? undefined : rowFacts(row);
  const next = furtherAddition(facts, { added: added?.number("amount"), before: added?.number("phBefore"), after }, context);
  return next?.known === true && next.value > 0 ? next.value : undefined;
}

/** The next step up in strength after a failed bench test: a fifth less water (common practice, no source). */
const step = 0.8;

/** What is missing of the planned opening dose; where that is in and the bench test failed, what a step up in strength asks for. */
export function missingOpening(facts: RowFacts, { system }: Pick<EntryContext, "system">): number | undefined {
  const poured = facts.number("openingDose") ?? 0;
  const left = (facts.number("plannedDose") ?? 0) - poured;
  if (left > 0.0005) return left;
  const held = facts.number("workingVolume");
  if (facts.text("benchState") !== bench.refused || held === undefined || poured === 0) return undefined;
  const stronger = askNumber("DOSE", held, `1+${figure(step * (held / poured - 1), 1)}`, system);
  return stronger.known ? stronger.value - poured : undefined;
}

/** The first addition of the last reading, or what is missing of the planned opening dose. */
function proposedAmount(purpose: string, facts: RowFacts | undefined, context: EntryContext, bath: string): string {
  if (facts === undefined) return "";
  if (purpose === "opening") {
    const left = missingOpening(facts, context);
    return left === undefined ? "" : figure(left, 3);
  }
  const last = lastReadingOf(context.log, bath);
  if (purpose !== "top-up" || last === undefined || unreadTopUp(context.log, bath) !== undefined) return "";
  const first = rowFacts(last).number("firstAddition") ?? stillMissing(facts, rowFacts(last), context, bath);
  return first === undefined ? "" : figure(first, 2);
}

/** The last reading as an addition's row wants it; blank where the sample was too far from the baseline's temperature. */
function proposedBefore(facts: RowFacts | undefined, bath: string, context: EntryContext): string {
  const row = lastReadingOf(context.log, bath);
  const last = row === undefined ? undefined : rowFacts(row);
  const read = last?.number("ph");
  if (facts === undefined || last === undefined || read === undefined) return "";
  const before = phForRecovery(facts, read, last.number("temperature"), context);
  return before === undefined ? "" : phFigure(before);
}

/** What the top-up form starts with: what the log says is due. */
export function additionProposals(typed: Draft, context: EntryContext): Draft {
  const bath = typed["bath"] ?? context.bath ?? "";
  const facts = bathFacts(context.log, bath);
  const purpose = typed["purpose"] ?? proposedPurpose(facts);
  return {
    bath,
    when: context.now,
    purpose,
    amount: proposedAmount(purpose, facts, context, bath),
    account: purpose === "corrective" ? "shop" : "claims",
    phBefore: purpose !== "opening" ? proposedBefore(facts, bath, context) : "",
  };
}
