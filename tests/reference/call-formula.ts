import type { CellInput, CellMatrix, CellValue } from "../../functions/define-function.ts";
import { evaluate } from "../../functions/evaluate.ts";
import { findFunction } from "../../functions/find-function.ts";

function literal(text: string): CellValue {
  if (text === "") return null;
  if (text.startsWith('"')) return text.slice(1, -1).replaceAll('""', '"');
  const value = Number(text);
  if (!Number.isFinite(value)) throw new SyntaxError(`Not a literal: ${text}`);
  return value;
}

function matrix(text: string): CellMatrix {
  return text
    .slice(1, -1)
    .split(";")
    .map((row) => row.split(",").map(literal));
}

/** The arguments of `=BATH.NAME(...)` that holds literals and array constants only. */
export function argumentsOf(formula: string): { readonly id: string; readonly cells: CellInput[] } {
  const call = /^=BATH\.([A-Z0-9.]+)\((.*)\)$/.exec(formula);
  if (call === null) throw new SyntaxError(`Not a call: ${formula}`);
  const parts = [...(call[2] ?? "").matchAll(/(?:^|,)(\{[^}]*\}|"(?:[^"]|"")*"|[^,]*)/g)].map(
    (match) => match[1] ?? "",
  );
  return { id: call[1] ?? "", cells: parts.map((part) => (part.startsWith("{") ? matrix(part) : literal(part))) };
}

/** Runs a formula as a cell would. */
export function callFormula(formula: string): CellValue | CellMatrix {
  const { id, cells } = argumentsOf(formula);
  const fn = findFunction(id);
  if (fn === undefined) throw new SyntaxError(`No function ${id}`);
  return evaluate(fn, cells);
}
