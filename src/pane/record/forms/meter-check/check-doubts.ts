import type { FieldProblem, FilledFields } from "../../../../advice/filled-fields.ts";
import { buffers } from "../../../../advice/meter/meter-facts.ts";
import { figure } from "../../../../advice/wording/figures.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";

/** Written down after the adjustment, as found is gone for ever: it comes first. */
export function orderProblems(filled: FilledFields<ColumnId<"meterChecks">>): readonly FieldProblem[] {
  return buffers.flatMap((buffer) => {
    const missing = filled.number(`asLeft${buffer}`) !== undefined && filled.number(`asFound${buffer}`) === undefined;
    return missing
      ? [
          {
            key: `asFound${buffer}`,
            message: `As found ${buffer} comes before as left: what the meter showed before it was adjusted says how far earlier readings were off.`,
          },
        ]
      : [];
  });
}

export function bufferProblems(filled: FilledFields<ColumnId<"meterChecks">>): readonly FieldProblem[] {
  const [one, two] = [filled.number("buffer1"), filled.number("buffer2")];
  return one !== undefined && one === two
    ? [
        {
          key: "buffer2",
          message: `Buffer 2: ${figure(two, 2, 2)} is the same as buffer 1. Two different buffers bracket the bath.`,
        },
      ]
    : [];
}

/** No electrode in use is off by so much; more likely buffers are mixed up or a digit is wrong (common practice, no source). */
const farOff = 1;

export function mixedUp(filled: FilledFields<ColumnId<"meterChecks">>): readonly string[] {
  return buffers.flatMap((buffer) => {
    const [found, known] = [filled.number(`asFound${buffer}`), filled.number(`buffer${buffer}`)];
    if (found === undefined || known === undefined || Math.abs(found - known) < farOff) return [];
    return [
      `${figure(found, 2, 2)} in the buffer ${figure(known, 2, 2)} is off by ${figure(Math.abs(found - known), 2, 2)} pH. Are the buffers in the right order?`,
    ];
  });
}
