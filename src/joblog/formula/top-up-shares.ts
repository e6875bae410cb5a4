import { topUpRange } from "../../../functions/top-up/top-up-range.ts";
import { call } from "./calls.ts";
import type { Expression, Value } from "./expression.ts";
import { placeIn } from "./lookups.ts";

/** What TOPUPRANGE answers, in its order. */
export const topUpPlaces = { low: 1, best: 2, high: 3, first: 4 } as const;

interface Question {
  /** 1, or blank where there is nothing to work out. */
  readonly opening_dose: Value;
  readonly baseline: Value;
  readonly reading: Value;
  readonly builder: Value;
  readonly temperature: Value;
  readonly alkalinity: Value;
  readonly house_share: Value;
  readonly meter_accuracy: Value;
  readonly system: Value;
}

/**
 * A top-up as a share of the opening dose: all four answers are in proportion to it. The opening dose is added up from
 * Additions, so a call that took it would recalculate with every addition to any bath. The workbench's grid works out
 * what an IF passes over: without a dose the function says no at once.
 */
export function topUpShareOf(question: Question, place: number): Expression {
  return placeIn(call(topUpRange, question), place);
}
