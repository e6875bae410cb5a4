import { evaluate } from "mathjs";

import type { CellMatrix, CellValue } from "../../functions/define-function.ts";
import { callFormula } from "./call-formula.ts";

const bathCall = /BATH\.[A-Z0-9]+\((?:\{[^}]*\}|"(?:[^"]|"")*"|[^(){}"])*\)/g;

/** The worksheet's own functions that a formula of a reference row may use beside arithmetic. */
const excelFunctions = {
  INDEX: (rows: CellMatrix, row: number, column: number) => rows[row - 1]?.[column - 1],
  LN: Math.log,
};

/** What a cell shows for a formula: one BATH function by itself, or arithmetic over BATH functions. */
export function worksheetValue(formula: string): CellValue | CellMatrix {
  const calls = formula.match(bathCall) ?? [];
  if (calls.length === 0) throw new SyntaxError(`No BATH function in ${formula}`);
  if (formula === `=${calls[0]}`) return callFormula(formula);
  const values = calls.map((call, index) => [`call${index}`, callFormula(`=${call}`)] as const);
  let next = 0;
  const arithmetic = formula.slice(1).replace(bathCall, () => `call${next++}`);
  const value: unknown = evaluate(arithmetic, { ...excelFunctions, ...Object.fromEntries(values) });
  if (typeof value !== "number") throw new TypeError(`${formula} gives no number`);
  return value;
}
