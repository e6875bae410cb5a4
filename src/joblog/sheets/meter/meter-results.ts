import { meterSlope } from "../../../../functions/meter/meter-slope.ts";
import { absolute, minus, plus, rounded, sum, wholePart } from "../../formula/arithmetic.ts";
import { call } from "../../formula/calls.ts";
import { blankIf, when } from "../../formula/choices.ts";
import {
  any,
  type Condition,
  equal,
  isAtLeast,
  isBlank,
  isFilled,
  isNoNumber,
  isNumber,
  isOver,
  isUnder,
  unequal,
} from "../../formula/conditions.ts";
import {
  above,
  after,
  before,
  beginning,
  type Comparison,
  countWhere,
  from,
  largestWhere,
  smallestWhere,
  type Where,
} from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Row } from "../../formula/log-names.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";
import { meterVerdict, verdictChanged } from "../../model/words.ts";
import { meterErrorHelpers } from "./meter-error.ts";
import { checkKey, saysErrorLeft } from "./meter-key.ts";

const { computed, helper } = columnsOf<"meterChecks">();

type Check = Row<"meterChecks">;

const error = { type: "number", format: "+0.00;-0.00;0.00", width: 8 } as const;

/** What the meter showed less the buffer; rounded, or 10.06 in 10.01 would be out of a limit of 0.05. */
function errorIn(buffer: Expression, shown: Expression): Expression {
  return blankIf([isNoNumber(shown), isNoNumber(buffer)], rounded(minus(shown, buffer), 3));
}

/** The baths are alkaline: what counts for them is the buffer with the higher pH. */
function inHigherBuffer({ buffer1, buffer2 }: Check, one: Expression, two: Expression): Expression {
  return when(isAtLeast(sum(buffer2), sum(buffer1)), two).otherwise(one);
}

/** Checks of the same meter at such a time that say what error it was left with. */
function ofMeter({ meter }: Check, time: Comparison): Where<"meterChecks"> {
  return { meter, left: saysErrorLeft, when: time };
}

/** Readings with the meter since its check before. */
function reached({ meter, since, when: checked }: Check): Where<"readings"> {
  return { meter, ph: above(0), when: [from(sum(since)), before(checked)] };
}

/** Such a row is no check of a meter yet. */
function unfinished(check: Check): readonly [Condition, ...Condition[]] {
  return [isBlank(check.meter), isNoNumber(check.when)];
}

const blankIfNever = (time: Expression): Expression => blankIf([equal(time, 0)], time);

export const meterResults: readonly ComputedColumn[] = [
  computed(
    { id: "error1", label: "Error 1, pH", ...error, help: "As found minus the buffer." },
    ({ buffer1, asFound1 }) => errorIn(buffer1, asFound1),
  ),
  computed(
    { id: "error2", label: "Error 2, pH", ...error, help: "As found minus the buffer." },
    ({ buffer2, asFound2 }) => errorIn(buffer2, asFound2),
  ),
  computed(
    {
      id: "slope",
      label: "Slope",
      type: "number",
      format: '0.0"%"',
      width: 8,
      help: "Of the theoretical slope at that temperature, from the voltages.",
    },
    ({ buffer1, mv1, buffer2, mv2, buffersApart, temperature }, { named }) =>
      blankIf(
        [isBlank(buffersApart), equal(buffersApart, 0), isNoNumber(mv1), isNoNumber(mv2)],
        call(meterSlope, {
          buffer_1: buffer1,
          mv_1: mv1,
          buffer_2: buffer2,
          mv_2: mv2,
          temperature,
          system: named.unitSystem,
        }),
      ),
  ),
  computed(
    {
      id: "verdict",
      label: "Verdict",
      type: "text",
      words: Object.values(meterVerdict),
      width: 17,
      help: "Against the shop's own limits on the sheet Shop.",
    },
    (check, { named }) => {
      const { error1, error2, slopeOut } = check;
      const isOut = (found: Expression): Condition => isOver(absolute(sum(found)), named.meterLimit);
      return blankIf(
        unfinished(check),
        when(any(isOut(error1), isOut(error2)), meterVerdict.asFound)
          .when(equal(slopeOut, 1), meterVerdict.slope)
          .when(any(isBlank(error1), isBlank(error2)), meterVerdict.incomplete)
          .otherwise(meterVerdict.within),
      );
    },
  ),
  computed(
    {
      id: "since",
      label: "Reaches back to",
      type: "date and time",
      width: 16,
      help: "The meter's check before this one: drift is taken out of the readings since.",
    },
    ({ lastCheck }) => blankIf([isBlank(lastCheck)], blankIfNever(lastCheck)),
  ),
  computed(
    {
      id: "readingsReached",
      label: "Readings reached",
      type: "whole number",
      format: "0",
      width: 9,
      help: "Readings with this meter since then. Without a check before they stay as read.",
    },
    (check, { readings }) => blankIf([isBlank(check.verdict)], countWhere(readings, reached(check))),
  ),
  computed(
    {
      id: "verdictsFlipped",
      label: "Verdicts changed",
      type: "whole number",
      format: "0",
      width: 9,
      help: "How many of those say something else with the drift taken out; Readings names them in its column Drift.",
    },
    (check, { readings }) =>
      blankIf([isBlank(check.verdict)], countWhere(readings, { ...reached(check), flag: beginning(verdictChanged) })),
  ),
  computed(
    {
      id: "due",
      label: "Check again by",
      type: "date",
      width: 11,
      help: "Of a meter's last check: the next one by the shop's own rule.",
    },
    (check, { named }) =>
      blankIf([isBlank(check.left), isFilled(check.nextAt)], plus(wholePart(check.when), named.meterCheckDays)),
  ),
];

export const meterHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "found",
      label: "Error found",
      type: "number",
      format: "0.000",
      width: 8,
      help: "As found in the buffer with the higher pH.",
    },
    (check) => inHigherBuffer(check, check.error1, check.error2),
  ),
  helper(
    {
      id: "left",
      label: "Error left",
      type: "number",
      format: "0.000",
      width: 8,
      help: "As left in that buffer, or as found where nothing was adjusted; blank where the check says neither.",
    },
    (check) => {
      const asLeft = inHigherBuffer(check, check.leftError1, check.leftError2);
      return blankIf(unfinished(check), when(isNumber(asLeft), asLeft).otherwise(check.found));
    },
  ),
  helper(
    { id: "key", label: "Meter and minute", type: "text", width: 16, help: "By which a reading finds its check." },
    (check) => blankIf([isBlank(check.left)], checkKey(check.meter, check.when)),
  ),
  helper(
    {
      id: "nextAt",
      label: "Next check",
      type: "date and time",
      width: 16,
      help: "Of the same meter; blank if none yet.",
    },
    (check, { meterChecks }) =>
      blankIf(
        [isBlank(check.left)],
        blankIfNever(smallestWhere(meterChecks, "when", ofMeter(check, after(check.when)))),
      ),
  ),
  ...meterErrorHelpers,
  helper(
    { id: "leftError1", label: "Left error 1", ...error, help: "As left minus the buffer." },
    ({ buffer1, asLeft1 }) => errorIn(buffer1, asLeft1),
  ),
  helper(
    { id: "leftError2", label: "Left error 2", ...error, help: "As left minus the buffer." },
    ({ buffer2, asLeft2 }) => errorIn(buffer2, asLeft2),
  ),
  helper(
    {
      id: "lastCheck",
      label: "Check before",
      type: "date and time",
      width: 16,
      help: "Of the same meter; 0 if none.",
    },
    (check, { meterChecks }) =>
      blankIf(unfinished(check), largestWhere(meterChecks, "when", ofMeter(check, before(check.when)))),
  ),
  // No number where the voltages are there: the function refused what no working electrode gives.
  helper(
    {
      id: "slopeOut",
      label: "Slope out",
      type: "whole number",
      format: "0",
      width: 8,
      help: "1 where the slope is outside the shop's limits, or no electrode has it.",
    },
    ({ slope, buffersApart, mv1, mv2 }, { named }) => {
      const isOut = when(isNumber(slope), any(isUnder(slope, named.slopeLow), isOver(slope, named.slopeHigh)))
        .when(any(isNoNumber(mv1), isNoNumber(mv2), isBlank(buffersApart)), false)
        .otherwise(unequal(buffersApart, 0));
      return when(isOut, 1).otherwise("");
    },
  ),
];
