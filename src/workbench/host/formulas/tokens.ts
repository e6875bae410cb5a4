/**
 * Cuts an Excel formula into the pieces that the grid spells differently: texts with doubled quotes,
 * structured references, bare table names. Everything else passes through unread.
 */
import { endOfBrackets, endOfQuoted } from "../../../state/formula-ends.ts";

export type FormulaToken =
  | { readonly kind: "plain"; readonly text: string }
  | { readonly kind: "text"; readonly value: string; readonly text: string }
  | { readonly kind: "name"; readonly text: string }
  | { readonly kind: "structured"; readonly table: string | undefined; readonly inner: string; readonly text: string };

const nameAtStart = /^[\p{L}_\\][\p{L}\p{N}_.\\]*/u;

function tokenAt(formula: string, at: number): FormulaToken {
  const character = formula[at];
  if (character === '"') {
    const text = formula.slice(at, endOfQuoted(formula, at));
    return { kind: "text", text, value: text.slice(1, -1).replaceAll('""', '"') };
  }
  if (character === "'") return { kind: "plain", text: formula.slice(at, endOfQuoted(formula, at)) };
  if (character === "[") {
    const text = formula.slice(at, endOfBrackets(formula, at));
    return { kind: "structured", table: undefined, inner: text.slice(1, -1), text };
  }
  const name = nameAtStart.exec(formula.slice(at))?.[0];
  if (name === undefined) return { kind: "plain", text: character ?? "" };
  const after = at + name.length;
  if (formula[after] === "[") {
    const brackets = formula.slice(after, endOfBrackets(formula, after));
    return { kind: "structured", table: name, inner: brackets.slice(1, -1), text: name + brackets };
  }
  const next = formula.slice(after).trimStart()[0];
  return { kind: next === "(" || next === "!" ? "plain" : "name", text: name };
}

export function tokensOf(formula: string): readonly FormulaToken[] {
  const tokens: FormulaToken[] = [];
  let at = 0;
  while (at < formula.length) {
    // A name directly after a number, sheet mark or dollar sign belongs to a reference or a number such as 1E5.
    const glued =
      at > 0 && /[\p{N}$!.]/u.test(formula[at - 1] ?? "") ? nameAtStart.exec(formula.slice(at))?.[0] : undefined;
    const token: FormulaToken = glued === undefined ? tokenAt(formula, at) : { kind: "plain", text: glued };
    const last = tokens.at(-1);
    if (token.kind === "plain" && last?.kind === "plain")
      tokens[tokens.length - 1] = { kind: "plain", text: last.text + token.text };
    else tokens.push(token);
    at += Math.max(1, token.text.length);
  }
  return tokens;
}
