/** What an open bath still lacks of its opening dose; asks only the one worksheet function, since the first view needs it. */
import { dose } from "../../functions/charge/dose.ts";
import type { UnitSystem } from "../core/units/unit-system.ts";
import { bench } from "../joblog/model/words.ts";
import { type Answer, answerOf, numberOf } from "./answer.ts";
import type { RowFacts } from "./bath-facts.ts";
import { figure } from "./wording/figures.ts";

/** Amounts are poured to about this much of the log's unit of volume. */
export const pourable = 0.0005;

/** The next step up in strength after a failed bench test: a fifth less water (common practice, no source). */
const step = 0.8;

/** A step up from the strength wanted, where its dose is in and the bench test failed all the same. */
export function proposedRaise(facts: RowFacts<"baths"> | undefined): string {
  const [planned, poured, base, held] = (["plannedDose", "openingDose", "baseDose", "workingVolume"] as const).map(
    (id) => facts?.number(id),
  );
  if (planned === undefined || poured === undefined || base === undefined || held === undefined) return "";
  return facts?.text("benchState") === bench.refused && planned - poured <= pourable
    ? `1+${figure(step * (held / base - 1), 1)}`
    : "";
}

/** Planned dose at a strength: its base dose, and the extras for the water, which no strength changes. */
export function plannedAt(strength: string, facts: RowFacts<"baths">, system: UnitSystem): Answer<number> | undefined {
  const held = facts.number("workingVolume");
  if (held === undefined) return undefined;
  const base = numberOf(answerOf(dose, [held, strength, system]));
  const extras = (facts.number("plannedDose") ?? 0) - (facts.number("baseDose") ?? 0);
  return base.known ? { known: true, value: base.value + extras } : base;
}

/** What is missing of the planned opening dose, at the strength that is wanted from now on. */
export function missingOpening(
  facts: RowFacts<"baths">,
  system: UnitSystem,
  strength = proposedRaise(facts),
): number | undefined {
  const planned = strength === "" ? undefined : plannedAt(strength, facts, system);
  const wanted = planned?.known === true ? planned.value : facts.number("plannedDose");
  const left = (wanted ?? 0) - (facts.number("openingDose") ?? 0);
  return left > pourable ? left : undefined;
}
