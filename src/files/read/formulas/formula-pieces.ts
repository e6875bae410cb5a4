import { endOfBrackets, endOfQuoted } from "../../../state/formula-ends.ts";

/** A formula's piece: code, a text in double quotes, a sheet's name in single ones, or what stands in square brackets. */
export interface FormulaPiece {
  readonly kind: "code" | "text" | "quoted name" | "brackets";
  readonly text: string;
}

export function piecesOf(formula: string): readonly FormulaPiece[] {
  const pieces: FormulaPiece[] = [];
  let at = 0;
  let codeFrom = 0;
  const push = (kind: FormulaPiece["kind"], end: number): void => {
    if (at > codeFrom) pieces.push({ kind: "code", text: formula.slice(codeFrom, at) });
    pieces.push({ kind, text: formula.slice(at, end) });
    at = end;
    codeFrom = end;
  };
  while (at < formula.length) {
    const character = formula[at];
    if (character === '"') push("text", endOfQuoted(formula, at));
    else if (character === "'") push("quoted name", endOfQuoted(formula, at));
    else if (character === "[") push("brackets", endOfBrackets(formula, at));
    else at += 1;
  }
  if (formula.length > codeFrom) pieces.push({ kind: "code", text: formula.slice(codeFrom) });
  return pieces;
}

/** The formula with its code changed; texts, quoted names and brackets stay. */
export function withCode(formula: string, change: (code: string) => string): string {
  return piecesOf(formula)
    .map(({ kind, text }) => (kind === "code" ? change(text) : text))
    .join("");
}
