import { lastReadingOf, rowFacts, type RowFacts } from "../../joblog/bath-facts.ts";
import { figure, ph as phFigure } from "../fields/figures.ts";
import { bathFacts } from "./bath-values.ts";
import type { Draft, EntryContext } from "./entry-form.ts";
import { topUpRange } from "./judge-reading.ts";
import { unreadTopUp } from "./reading-entry.ts";

function proposedPurpose(kind: string, facts: RowFacts | undefined): string {
  if (kind === "water") return "make-up";
  return facts?.number("baseline") === undefined ? "opening" : "top-up";
}

/** After a top-up that fell short of the baseline: the first addition by the reading after it. */
function stillMissing(facts: RowFacts, last: RowFacts, context: EntryContext): number | undefined {
  const baseline = facts.number("baseline");
  const after = last.number("ph");
  const tolerance = context.log.fields["tolerance"];
  if (last.text("purpose") !== "after top-up" || baseline === undefined || after === undefined) return undefined;
  if (typeof tolerance === "number" && baseline - after <= tolerance) return undefined;
  const range = topUpRange(facts, baseline, after, facts.number("baselineTemperature"), context);
  return range?.known === true ? range.value[3] : undefined;
}

/** The first addition of the last reading, or what is missing of the planned opening dose. */
function proposedAmount(kind: string, purpose: string, facts: RowFacts | undefined, context: EntryContext, bath: string): string {
  if (kind !== "concentrate" || facts === undefined) return "";
  if (purpose === "opening") {
    const left = (facts.number("plannedDose") ?? 0) - (facts.number("openingDose") ?? 0);
    return left > 0.0005 ? figure(left, 3) : "";
  }
  const last = lastReadingOf(context.log, bath);
  if (purpose !== "top-up" || last === undefined || unreadTopUp(context.log, bath) !== undefined) return "";
  const first = rowFacts(last).number("firstAddition") ?? stillMissing(facts, rowFacts(last), context);
  return first === undefined ? "" : figure(first, 2);
}

/** What the addition form starts with: what the log says is due. */
export function additionProposals(typed: Draft, context: EntryContext): Draft {
  const bath = typed["bath"] ?? context.bath ?? "";
  const facts = bathFacts(context.log, bath);
  const kind = typed["kind"] ?? "concentrate";
  const purpose = typed["purpose"] ?? proposedPurpose(kind, facts);
  const last = facts?.number("lastReading");
  return {
    bath,
    when: context.now,
    kind,
    purpose,
    amount: proposedAmount(kind, purpose, facts, context, bath),
    water: facts?.text("water") ?? "",
    account: purpose === "corrective" ? "shop" : "claims",
    phBefore: kind === "concentrate" && purpose !== "opening" && last !== undefined ? phFigure(last) : "",
  };
}
