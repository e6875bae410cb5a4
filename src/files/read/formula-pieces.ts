/** A formula's piece: code, a text in double quotes, a sheet's name in single ones, or what stands in square brackets. */
export interface FormulaPiece {
  readonly kind: "code" | "text" | "quoted name" | "brackets";
  readonly text: string;
}

function endOfQuoted(formula: string, start: number): number {
  const quote = formula[start];
  let at = start + 1;
  while (at < formula.length) {
    if (formula[at] !== quote) at += 1;
    else if (formula[at + 1] === quote) at += 2;
    else return at + 1;
  }
  return formula.length;
}

/** Within brackets an apostrophe takes its meaning from the character after it. */
function endOfBrackets(formula: string, start: number): number {
  let depth = 0;
  for (let at = start; at < formula.length; at += 1) {
    const character = formula[at];
    if (character === "'") at += 1;
    else if (character === "[") depth += 1;
    else if (character === "]") {
      depth -= 1;
      if (depth === 0) return at + 1;
    }
  }
  return formula.length;
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
