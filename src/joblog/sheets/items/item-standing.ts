import { times } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { all, is, isBlank, isFilled, isNoNumber, isNot, isUnder } from "../../formula/conditions.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { economicTest as words, itemStandings } from "../../model/words.ts";

const { computed, helper } = columnsOf<"items">();

/** What became of the pieces; the counts by claim add these words up. */
export const itemStanding: ComputedColumn = computed(
  {
    id: "standing",
    label: "Status",
    type: "text",
    words: Object.values(itemStandings),
    width: 18,
    help: "What became of it; a piece not restorable asks for its reason code.",
  },
  ({ id, claim, item, outcome, reason, restoredBy }) => {
    const lost = when(isBlank(reason), itemStandings.reasonMissing).otherwise(itemStandings.notRestorable);
    return blankIf(
      [all(isBlank(id), isBlank(claim), isBlank(item))],
      when(isBlank(outcome), itemStandings.pending)
        .when(is(outcome, "restored"), restoredBy)
        .when(is(outcome, "not restorable"), lost)
        .when(is(outcome, "returned uncleaned"), itemStandings.returned)
        .otherwise(itemStandings.unknown),
    );
  },
);

/** Asked only where the insurer has agreed to a share; there is no usual one. */
export const economicTest: ComputedColumn = computed(
  {
    id: "economic",
    label: "Economic test",
    type: "text",
    width: 16,
    help:
      "Cost to restore against the agreed share of the replacement value (Shop sheet); " +
      "blank until a share is agreed.",
  },
  ({ restoreCost, replacementValue }, { named }) =>
    blankIf(
      [isNoNumber(named.economicShare), isNoNumber(restoreCost), isNoNumber(replacementValue)],
      when(isUnder(restoreCost, times(named.economicShare, replacementValue)), words.within).otherwise(words.over),
    ),
);

/** The one thing to look at first, in words. */
export const itemCheck: ComputedColumn = computed(
  {
    id: "check",
    label: "Check",
    type: "text",
    width: 30,
    help:
      "What is missing or must not go into the bath; blank where nothing is. " +
      "It knows the words typed, not the piece.",
  },
  ({ claim, quantity, standing, inBath, asks }) =>
    blankIf(
      [isBlank(standing)],
      when(isBlank(claim), "claim missing")
        .when(isNoNumber(quantity), "give the pieces")
        .when(isFilled(inBath), inBath)
        .when(isFilled(asks), asks)
        .otherwise(""),
    ),
);

export const itemStandingHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "restoredBy",
      label: "Restored by",
      type: "text",
      words: [itemStandings.handCleaned, itemStandings.specialist, itemStandings.restored],
      width: 12,
      help: "What it is called once it is restored, by its route.",
    },
    ({ outcome, route }) =>
      blankIf(
        [isNot(outcome, "restored")],
        when(is(route, "hand"), itemStandings.handCleaned)
          .when(is(route, "specialist"), itemStandings.specialist)
          .otherwise(itemStandings.restored),
      ),
  ),
  helper(
    {
      id: "asks",
      label: "Outcome asks for",
      type: "text",
      width: 14,
      help: "What its outcome makes necessary and is not there.",
    },
    ({ standing, outcome, reasonText, route, bath }) =>
      when(is(standing, itemStandings.reasonMissing), "give a reason code")
        .when(all(is(outcome, "not restorable"), isBlank(reasonText)), "give the reason in a sentence")
        .when(all(is(outcome, "restored"), is(route, "none")), "give a route: restored how?")
        .when(all(is(outcome, "restored"), is(route, "bath"), isBlank(bath)), "give the bath")
        .otherwise(""),
  ),
];
