/** How formulas with structured references are read back. */
import { type CheckBench, type ExcelCheck, type Finding, finding } from "../excel-check.ts";

/** Writes a formula into C2 of a table of one row and reads it back. */
async function readBack(
  { context, sheet }: CheckBench,
  formula: string,
  expected: readonly string[],
): Promise<Finding> {
  sheet.getRange("A1:C2").values = [
    ["Bath", "pH as read", "Depth, in"],
    ["B1", 10, ""],
  ];
  sheet.tables.add("A1:C2", true).name = "BathCheckWords";
  await context.sync();
  const cell = sheet.getRange("C2");
  cell.formulas = [[formula]];
  cell.load("formulas,values");
  await context.sync();
  const [read, value] = [cell.formulas[0]?.[0], cell.values[0]?.[0]] as unknown[];
  return finding(expected.includes(String(read)) && value === 20, `${String(read)}, value ${String(value)}`);
}

const full = "=BathCheckWords[[#This Row],[pH as read]]*2";
const short = "=[@[pH as read]]*2";

export const spellingChecks: readonly ExcelCheck[] = [
  {
    id: "this-row-in-full",
    title: "A reference to this row, written in full",
    asks: `${full} is written in the table and read back.`,
    expected: `${full}: another spelling makes Bathsheet write the column anew at each upgrade`,
    run: (bench) => readBack(bench, full, [full]),
  },
  {
    id: "this-row-in-short",
    title: "A reference to this row, written in short",
    asks: `${short} is written in the table and read back.`,
    expected: `${short} or ${full}`,
    run: (bench) => readBack(bench, short, [short, full]),
  },
];
