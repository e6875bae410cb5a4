/** What cells show until a worksheet function has answered, and how often Excel asks it. */
import { type CheckBench, type ExcelCheck, finding, NotTried, spelled } from "../excel-check.ts";
import { neverAnother, settledValue, timeLine, watchCell } from "../settled-value.ts";

const rows = 30;

/** A table of 30 rows whose third column asks BATH.DOSE by structured references; settled. */
async function prepareTable({ context, sheet, pause }: CheckBench): Promise<void> {
  const numbers = Array.from({ length: rows }, (_, index) => index);
  const line = (index: number): (string | number)[] => [29 + index, "1+28", "", ""];
  sheet.getRange("A1:D1").values = [["Volume", "Rate", "Note", "Dose"]];
  sheet.getRange(`A2:D${String(rows + 1)}`).values = numbers.map(line);
  const table = sheet.tables.add(`A1:D${String(rows + 1)}`, true);
  table.name = "BathCheckCalls";
  sheet.getRange(`D2:D${String(rows + 1)}`).formulas = numbers.map(() => [
    "=BATH.DOSE(BathCheckCalls[[#This Row],[Volume]],BathCheckCalls[[#This Row],[Rate]])",
  ]);
  await context.sync();
  const shown = await settledValue({ context, cell: sheet.getRange(`D${String(rows + 1)}`), pause });
  if (typeof shown !== "number") throw new NotTried(`The last cell of the table shows ${spelled(shown)}.`);
  await pause(1000);
}

/** How many calls a write into one cell brings; Excel may ask a while after the write. */
async function callsAfter(
  { context, sheet, calls, pause }: CheckBench,
  address: string,
  value: string | number,
): Promise<number> {
  const received = await calls.during(async () => {
    sheet.getRange(address).values = [[value]];
    await context.sync();
    await pause(1500);
  });
  return received.length;
}

export const calculationChecks: readonly ExcelCheck[] = [
  {
    id: "values-after-a-new-formula",
    title: "What a new formula shows at first",
    asks: '=BATH.DOSE(29,"1+28") is written; the cell is read every 0.1 s, for 5 s at most.',
    expected: "1 at last, and before it nothing but #BUSY! or another such word",
    run: async ({ context, sheet, pause }) => {
      const cell = sheet.getRange("B1");
      cell.formulas = [['=BATH.DOSE(29,"1+28")']];
      const seen = await watchCell({ context, cell, pause }, (value) => value === 1);
      return finding(neverAnother(seen, 1), timeLine(seen));
    },
  },
  {
    id: "values-after-a-changed-cell",
    title: "What a formula shows while it is worked out anew",
    asks: 'A1 of =BATH.DOSE(A1,"1+28") goes from 29 to 58; the cell is read every 0.1 s, for 5 s at most.',
    expected: "2 at last, and before it never the former 1: Bathsheet would advise by it",
    run: async ({ context, sheet, pause }) => {
      const cell = sheet.getRange("B1");
      sheet.getRange("A1").values = [[29]];
      cell.formulas = [['=BATH.DOSE(A1,"1+28")']];
      await context.sync();
      const before = await settledValue({ context, cell, pause });
      if (before !== 1) throw new NotTried(`Before the change the cell shows ${spelled(before)}.`);
      sheet.getRange("A1").values = [[58]];
      const seen = await watchCell({ context, cell, pause }, (value) => value === 2);
      return finding(neverAnother(seen, 2), timeLine(seen));
    },
  },
  {
    id: "calls-after-one-edit",
    title: "Calls after one edit in a table",
    asks: "In 30 rows with structured references to their own row, a note is typed and then one volume; the calls of BATH.DOSE are counted.",
    expected: "0 calls for the note, 1 for the volume",
    run: async (bench) => {
      let atFirst = 0;
      const first = await bench.calls.during(() => prepareTable(bench));
      atFirst = first.length;
      if (atFirst === 0) throw new NotTried("The table is worked out, and no call came to this page.");
      const note = await callsAfter(bench, "C9", "wiped");
      const volume = await callsAfter(bench, "A9", 100);
      return finding(
        note === 0 && volume === 1,
        `${String(note)} for the note, ${String(volume)} for the volume; ${String(atFirst)} when the table was written`,
      );
    },
  },
];
