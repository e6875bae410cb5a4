/** A meter's error at any pH: slope and offset by the straight line through what it showed in two buffers. */
import { dividedBy, minus, plus, sum, times } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { any, isBlank, isNoNumber, isNumber, isOver } from "../../formula/conditions.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Row } from "../../formula/log-names.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";

const { helper } = columnsOf<"meterChecks">();

type Check = Row<"meterChecks">;

/** Flatter than this share of the theoretical slope, two buffers were mixed up or the electrode is dead: no line to go by (common practice, no source). */
const flattest = 0.8;

/** By how much the error grows with each pH that the meter shows; 0 where the two buffers make no line. */
function growth({ buffersApart: apart }: Check, shownApart: Expression): Expression {
  const rises = isOver(times(shownApart, apart), times(flattest, apart, apart));
  return when(any(isBlank(apart), isBlank(shownApart)), 0)
    .when(rises, minus(1, dividedBy(apart, shownApart)))
    .otherwise(0);
}

const number = { type: "number", format: "0.00", width: 8 } as const;

/** One figure less the other, blank where one of them is no number. */
const apart = (two: Expression, one: Expression): Expression =>
  blankIf([isNoNumber(one), isNoNumber(two)], minus(two, one));

export const meterErrorHelpers: readonly ComputedColumn[] = [
  helper(
    { id: "higherBuffer", label: "Higher buffer", ...number, help: "Its pH; 0 where neither is known." },
    ({ meter, buffer1, buffer2 }) =>
      blankIf([isBlank(meter)], sum(when(isOver(sum(buffer1), sum(buffer2)), buffer1).otherwise(buffer2))),
  ),
  helper(
    { id: "buffersApart", label: "Buffers apart", ...number, help: "Buffer 2 less buffer 1." },
    ({ buffer1, buffer2 }) => apart(buffer2, buffer1),
  ),
  helper(
    { id: "foundApart", label: "Found apart", ...number, help: "As found in buffer 2 less as found in buffer 1." },
    ({ asFound1, asFound2 }) => apart(asFound2, asFound1),
  ),
  ...([1, 2] as const).map((buffer) =>
    helper(
      {
        id: `leftIn${buffer}`,
        label: `Left in ${buffer}`,
        ...number,
        help: "As left, or as found where nothing was adjusted.",
      },
      (check) => {
        const [found, left] = [check[`asFound${buffer}`], check[`asLeft${buffer}`]];
        return when(isNumber(left), left).when(isNumber(found), found).otherwise("");
      },
    ),
  ),
  helper(
    { id: "leftApart", label: "Left apart", ...number, help: "As left in buffer 2 less as left in buffer 1." },
    ({ leftIn1, leftIn2 }) => apart(leftIn2, leftIn1),
  ),
  helper(
    {
      id: "foundGrowth",
      label: "Error found, by pH",
      type: "number",
      format: "0.000",
      width: 9,
      help: "By how much the error as found grows with each pH shown, by both buffers.",
    },
    (check) => blankIf([isBlank(check.found)], growth(check, check.foundApart)),
  ),
  helper(
    {
      id: "leftGrowth",
      label: "Error left, by pH",
      type: "number",
      format: "0.000",
      width: 9,
      help: "The same as left, or as found where nothing was adjusted.",
    },
    (check) => blankIf([isBlank(check.left)], growth(check, check.leftApart)),
  ),
];

/** From the error in the buffer with the higher pH, along the line; what the meter showed there is that buffer and the error. */
function along(reading: Expression, { higherBuffer }: Check, error: Expression, grows: Expression): Expression {
  return plus(error, times(grows, minus(reading, plus(higherBuffer, error))));
}

/** What a meter as a check found it reads too high where it shows `reading`: the reading less METERFIX, written out so that no function waits for another four deep. */
export const errorFound = (reading: Expression, check: Check): Expression =>
  along(reading, check, check.found, check.foundGrowth);

/** As a check left it: adjusted, or as found. */
export const errorLeft = (reading: Expression, check: Check): Expression =>
  along(reading, check, check.left, check.leftGrowth);
