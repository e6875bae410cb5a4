import { blankIf, when } from "../../formula/choices.ts";
import { equal, isBlank, isNot, isOver, unequal } from "../../formula/conditions.ts";
import { after, before, countWhere, from, smallestWhere, sumWhere, upTo } from "../../formula/criteria.ts";
import { never } from "../../formula/times.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { readingVerdict } from "../../model/words.ts";

const { helper } = columnsOf<"readings">();

/**
 * Rounds of topping up. A round begins with a check that asks for a top-up where the reading before it
 * did not, and lasts until the next such check: a bath that was added to twice has had one round.
 */
export const readingRounds: readonly ComputedColumn[] = [
  helper(
    {
      id: "readBefore",
      label: "Read before",
      type: "date and time",
      width: 16,
      help: "Where a top-up is due: the bath's reading before this one; 0 if none.",
    },
    ({ verdict, lastRead }) => blankIf([isNot(verdict, readingVerdict.topUp), isBlank(lastRead)], lastRead),
  ),
  helper(
    {
      id: "roundStart",
      label: "Round begins",
      type: "whole number",
      format: "0",
      width: 8,
      help: "1 where a round of topping up begins.",
    },
    ({ bath, purpose, verdict, readBefore }, { readings }) => {
      const atReadBefore = [from(readBefore), upTo(readBefore)];
      const askedAlready = countWhere(readings, { bath, when: atReadBefore, verdict: readingVerdict.topUp });
      return blankIf(
        [isNot(purpose, "check"), isNot(verdict, readingVerdict.topUp), isBlank(readBefore)],
        when(isOver(askedAlready, 0), 0).otherwise(1),
      );
    },
  ),
  helper(
    {
      id: "roundAmount",
      label: "Round took",
      type: "number",
      format: "0.000",
      width: 9,
      help: "Top-up concentrate from here to the next round; 0 where none went in.",
    },
    (reading, { additions }) => {
      const { bath, roundStart, nextRound } = reading;
      const until = when(equal(nextRound, 0), never).otherwise(nextRound);
      return blankIf(
        [unequal(roundStart, 1)],
        sumWhere(additions, "amount", {
          bath,
          kind: "concentrate",
          purpose: "top-up",
          when: [from(reading.when), before(until)],
        }),
      );
    },
  ),
  helper(
    {
      id: "nextRound",
      label: "Next round at",
      type: "date and time",
      width: 16,
      help: "When the bath's next round begins; 0 if none has.",
    },
    (reading, { readings }) =>
      blankIf(
        [unequal(reading.roundStart, 1)],
        smallestWhere(readings, "when", { bath: reading.bath, roundStart: 1, when: after(reading.when) }),
      ),
  ),
];
