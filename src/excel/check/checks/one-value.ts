/** How a whole column gets its formula: as one text, or copied down. */
import { type ExcelCheck, finding, spelled } from "../excel-check.ts";

const relative = ["=A2*2", "=A3*2", "=A4*2", "=A5*2", "=A6*2"];

/** The types know arrays only. */
const oneForAll = (value: string): string[][] => value as unknown as string[][];

const isRelative = (formulas: readonly unknown[]): boolean => String(formulas) === String(relative);

export const oneValueChecks: readonly ExcelCheck[] = [
  {
    id: "one-formula-for-a-column",
    title: "One formula for a whole column",
    asks: 'B2:B6.formulas = "=A2*2", one text where the types want rows; read back.',
    expected: "=A2*2, =A3*2, … =A6*2",
    run: async ({ context, sheet }) => {
      const column = sheet.getRange("B2:B6");
      column.formulas = oneForAll("=A2*2");
      column.load("formulas");
      await context.sync();
      const read = column.formulas.flat();
      return finding(isRelative(read), read.map(String).join(", "));
    },
  },
  {
    id: "formula-copied-down",
    title: "A formula copied down",
    asks: 'B2.formulas = [["=A2*2"]], then B3:B6.copyFrom(B2, "Formulas"); read back.',
    expected: "=A2*2, =A3*2, … =A6*2",
    run: async ({ context, sheet }) => {
      sheet.getRange("B2").formulas = [["=A2*2"]];
      sheet.getRange("B3:B6").copyFrom(sheet.getRange("B2"), "Formulas");
      const column = sheet.getRange("B2:B6").load("formulas");
      await context.sync();
      const read = column.formulas.flat();
      return finding(isRelative(read), read.map(String).join(", "));
    },
  },
  {
    id: "one-number-format-for-a-column",
    title: "One number format for a whole column",
    asks: 'B2:B6.numberFormat = "0.00", one text where the types want rows; read back.',
    expected: "0.00 in all five cells",
    run: async ({ context, sheet }) => {
      const column = sheet.getRange("B2:B6");
      column.numberFormat = oneForAll("0.00");
      column.load("numberFormat");
      await context.sync();
      const read = column.numberFormat.flat();
      return finding(
        read.every((format) => format === "0.00"),
        spelled(read),
      );
    },
  },
];
