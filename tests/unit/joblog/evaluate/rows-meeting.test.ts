import * as fc from "fast-check";
import { expect, it } from "vitest";

import { CellError, type Scalar } from "../../../../src/joblog/evaluate/cell-value.ts";
import { criterionTest } from "../../../../src/joblog/evaluate/criterion.ts";
import { Meeting } from "../../../../src/joblog/evaluate/rows-meeting.ts";
import { runs } from "../../../setup/random-runs.ts";

const plain: readonly Scalar[] = [null, "", "B-1", "b-1", "B-2", "2", "A*", "~", true, 0, 1, 2, 2.5, -3];

const criteria: readonly Scalar[] = [
  ...plain,
  ...["=B-1", "<>B-1", "B*", "A~*", ">0", ">=2", "<2", "<=2", "<>2", "=2", "=", "<>", ">B-1", "<b", ">x"],
];

const columns = (cells: readonly Scalar[]) =>
  fc
    .array(fc.tuple(...Array.from({ length: 3 }, () => fc.constantFrom(...cells))), { maxLength: 30 })
    .map((rows) => [0, 1, 2].map((column) => rows.map((row) => row[column] ?? null)));

const asked = fc.array(fc.tuple(fc.nat({ max: 2 }), fc.constantFrom(...criteria)), { minLength: 1, maxLength: 4 });

it("gives the rows, and the highest and lowest number among them, that asking each row gives", () => {
  fc.assert(
    fc.property(columns([...plain, new CellError("#N/A")]), asked, fc.nat({ max: 2 }), (given, wanted, of) => {
      const pairs = wanted.map(([column, criterion]) => ({ cells: given[column] ?? [], criterion }));
      const expected = (given[0] ?? []).flatMap((_, row) =>
        pairs.every(({ cells, criterion }) => criterionTest(criterion)(cells[row] ?? null)) ? [row] : [],
      );
      const meeting = new Meeting(pairs);
      expect(meeting.rows()).toEqual(expected);
      const cells = given[of] ?? [];
      const numbers = expected.map((row) => cells[row]).filter((cell) => typeof cell === "number");
      for (const [which, extreme] of [
        ["highest", Math.max(...numbers)],
        ["lowest", Math.min(...numbers)],
      ] as const) {
        const found = meeting.extreme(cells, which);
        // It passes where it would not be quicker, and where an error may be among them.
        if (found !== undefined) expect(found).toBe(numbers.length === 0 ? "none" : extreme);
        else if (!cells.some((cell) => cell instanceof CellError)) expect(expected.length).toBeLessThan(cells.length);
      }
    }),
    runs(300),
  );
});
