/** How blank, omitted and faulty arguments reach a worksheet function. */
import type { ReceivedCall } from "../call-record.ts";
import { type CheckBench, type ExcelCheck, finding, NotTried, spelled } from "../excel-check.ts";
import { settledValue } from "../settled-value.ts";

interface Called {
  readonly calls: readonly ReceivedCall[];
  readonly value: unknown;
}

/** Writes a formula into C1 and gives what the function received and what the cell shows. */
async function call({ context, sheet, calls, pause }: CheckBench, formula: string): Promise<Called> {
  let value: unknown;
  const received = await calls.during(async () => {
    const cell = sheet.getRange("C1");
    cell.formulas = [[formula]];
    await context.sync();
    value = await settledValue({ context, cell, pause });
  });
  return { calls: received, value };
}

/** As above, where the function must have been called. */
async function received(
  bench: CheckBench,
  formula: string,
): Promise<{ readonly received: readonly unknown[]; readonly value: unknown }> {
  const { calls, value } = await call(bench, formula);
  const [first] = calls;
  if (first === undefined)
    throw new NotTried(
      `The cell shows ${spelled(value)}, and no call came to this page. Is Bathsheet's own manifest loaded beside that of the check? Remove it, then run again.`,
    );
  return { received: first.received, value };
}

const isBlank = (value: unknown): boolean => value === null || value === undefined || value === 0 || value === "";

export const argumentChecks: readonly ExcelCheck[] = [
  {
    id: "blank-argument",
    title: "A blank cell as an argument",
    asks: '=BATH.DOSE(A1,"1+28") where A1 is blank; what the function receives and the cell shows.',
    expected: '0, null or ""; the cell refuses with #VALUE!',
    run: async (bench) => {
      const { received: got, value } = await received(bench, '=BATH.DOSE(A1,"1+28")');
      return finding(isBlank(got[0]) && value === "#VALUE!", `received ${spelled(got[0])}, shows ${spelled(value)}`);
    },
  },
  {
    id: "omitted-argument",
    title: "An omitted argument",
    asks: '=BATH.DOSE(29,"1+28") without the third argument; what arrives in its place.',
    expected: "null; the cell shows 1",
    run: async (bench) => {
      const { received: got, value } = await received(bench, '=BATH.DOSE(29,"1+28")');
      return finding(got[2] === null && value === 1, `received ${spelled(got[2])}, shows ${spelled(value)}`);
    },
  },
  {
    id: "blank-in-a-range",
    title: "A blank cell in a range",
    asks: "=INDEX(BATH.SHARE(100,A1:A3),1) where A2 is blank between 1 and 1; what arrives.",
    expected: '0, null or "" for A2; the cell shows 50',
    run: async (bench) => {
      bench.sheet.getRange("A1").values = [[1]];
      bench.sheet.getRange("A3").values = [[1]];
      const { received: got, value } = await received(bench, "=INDEX(BATH.SHARE(100,A1:A3),1)");
      const cells: unknown = got[1];
      const middle: unknown = Array.isArray(cells) && Array.isArray(cells[1]) ? cells[1][0] : "no range";
      return finding(isBlank(middle) && value === 50, `received ${spelled(cells)}, shows ${spelled(value)}`);
    },
  },
  {
    id: "error-argument",
    title: "An error as an argument",
    asks: '=BATH.DOSE(NA(),"1+28"); whether the function is called and what the cell shows.',
    expected: "The cell shows #N/A",
    run: async (bench) => {
      const { calls, value } = await call(bench, '=BATH.DOSE(NA(),"1+28")');
      const [first] = calls;
      const how = first === undefined ? "not called" : `received ${spelled(first.received[0])}`;
      return finding(value === "#N/A", `${how}, shows ${spelled(value)}`);
    },
  },
];
