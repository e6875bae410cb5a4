import { times } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { equal, isAtLeast, isBlank, isOver } from "../../formula/conditions.ts";
import { above, after, largestWhere, smallestWhere, upTo } from "../../formula/criteria.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { volume } from "../../model/units-of.ts";
import { changeOut } from "../../model/words.ts";

const { computed, helper } = columnsOf<"baths">();

const amount = { type: "number", unit: volume, format: "0.000", width: 11 } as const;

/**
 * Repeated top-ups that grow: soil soaps hold the bath up against the concentrate, and a change-out is
 * worth a thought (common practice, no source, as are both limits).
 */
export const bathRounds: readonly ComputedColumn[] = [
  computed(
    {
      id: "firstRound",
      label: "First round of top-ups",
      ...amount,
      help: "Top-up concentrate from the first check that asked for it to the next one that did.",
    },
    ({ bath, firstRoundAt }, { readings }) =>
      blankIf([isBlank(firstRoundAt)], largestWhere(readings, "roundAmount", { bath, when: upTo(firstRoundAt) })),
  ),
  computed(
    {
      id: "largestRound",
      label: "Largest round since",
      ...amount,
      help: "Of the later rounds the one that took most; blank before the second.",
    },
    ({ bath, firstRoundAt }, { readings }) => {
      const later = largestWhere(readings, "roundAmount", { bath, when: after(firstRoundAt) });
      return blankIf([isBlank(firstRoundAt)], blankIf([equal(later, 0)], later));
    },
  ),
  computed(
    {
      id: "changeOut",
      label: "Change-out",
      type: "text",
      words: Object.values(changeOut),
      width: 27,
      help: "Where top-ups grow, or reach the limit on the Job sheet. The bench test, the ratio of total to free alkalinity and the days open decide too.",
    },
    ({ openingDose, firstRound, largestRound, topUpShare }, { named }) => {
      const grow = when(isBlank(largestRound), false).otherwise(
        isOver(largestRound, times(named.topUpGrowth, firstRound)),
      );
      return blankIf(
        [isBlank(openingDose)],
        when(grow, changeOut.grow).when(isAtLeast(topUpShare, named.topUpLimit), changeOut.total).otherwise(""),
      );
    },
  ),
];

export const bathRoundHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "firstRoundAt",
      label: "First round at",
      type: "date and time",
      width: 16,
      help: "When the first round of top-ups began.",
    },
    ({ bath }, { readings }) => {
      const first = smallestWhere(readings, "when", { bath, roundAmount: above(0) });
      return blankIf([isBlank(bath)], blankIf([equal(first, 0)], first));
    },
  ),
];
