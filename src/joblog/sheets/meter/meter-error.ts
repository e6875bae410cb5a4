/** A meter's error at any pH: slope and offset by the straight line through what it showed in two buffers. */
import { dividedBy, minus, plus, sum, times } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { isBlank, isNoNumber, isNumber, isOver } from "../../formula/conditions.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Row } from "../../formula/log-names.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";

const { helper } = columnsOf<"meterChecks">();

type Check = Row<"meterChecks">;

/** Flatter than this share of the theoretical slope, two buffers were mixed up or the electrode is dead: no line to go by (common practice, no source). */
const flattest = 0.8;

/** By how much the error grows with each pH that the meter shows; 0 where the two buffers make no line. */
function growth({ buffer1, buffer2 }: Check, one: Expression, two: Expression): Expression {
  const [apart, shownApart] = [minus(buffer2, buffer1), minus(two, one)];
  const rises = isOver(times(shownApart, apart), times(flattest, apart, apart));
  return when(isNoNumber(one), 0)
    .when(isNoNumber(two), 0)
    .when(isNoNumber(buffer1), 0)
    .when(isNoNumber(buffer2), 0)
    .when(rises, minus(1, dividedBy(apart, shownApart)))
    .otherwise(0);
}

const leftIn1 = ({ asFound1, asLeft1 }: Check): Expression => when(isNumber(asLeft1), asLeft1).otherwise(asFound1);

const leftIn2 = ({ asFound2, asLeft2 }: Check): Expression => when(isNumber(asLeft2), asLeft2).otherwise(asFound2);

export const meterErrorHelpers: readonly ComputedColumn[] = [
  helper(
    {
      id: "foundGrowth",
      label: "Error found, by pH",
      type: "number",
      format: "0.000",
      width: 9,
      help: "By how much the error as found grows with each pH shown, by both buffers.",
    },
    (check) => blankIf([isBlank(check.found)], growth(check, check.asFound1, check.asFound2)),
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
    (check) => blankIf([isBlank(check.left)], growth(check, leftIn1(check), leftIn2(check))),
  ),
];

/** From the error in the buffer with the higher pH, along the line; what the meter showed there is that buffer and the error. */
function along(reading: Expression, { buffer1, buffer2 }: Check, error: Expression, grows: Expression): Expression {
  const higher = when(isOver(sum(buffer1), sum(buffer2)), buffer1).otherwise(buffer2);
  return plus(error, times(grows, minus(reading, plus(sum(higher), error))));
}

/** What a meter as a check found it reads too high where it shows `reading`: the reading less METERFIX, written out so that no function waits for another four deep. */
export const errorFound = (reading: Expression, check: Check): Expression =>
  along(reading, check, check.found, check.foundGrowth);

/** As a check left it: adjusted, or as found. */
export const errorLeft = (reading: Expression, check: Check): Expression =>
  along(reading, check, check.left, check.leftGrowth);
