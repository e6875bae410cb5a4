/** A piece of a formula, named as MathML names it. */
export type FormulaNode =
  | { readonly tag: "mi" | "mn" | "mo" | "mtext"; readonly text: string }
  | { readonly tag: "mrow" | "mfrac" | "msub" | "msup" | "msubsup"; readonly parts: readonly FormulaNode[] };

const pieces = /\s*(?:(\p{L}+)|(\d+(?:[.  ]\d+)*)|"([^"]*)"|(\S))/uy;

interface Piece {
  readonly tag: "mi" | "mn" | "mo" | "mtext";
  readonly text: string;
}

function piecesOf(markup: string): Piece[] {
  const found: Piece[] = [];
  pieces.lastIndex = 0;
  const source = markup.trim();
  while (pieces.lastIndex < source.length) {
    const [, name, number, words, sign] = pieces.exec(source) ?? [];
    if (name !== undefined) found.push({ tag: "mi", text: name });
    else if (number !== undefined) found.push({ tag: "mn", text: number });
    else if (words !== undefined) found.push({ tag: "mtext", text: words });
    else found.push({ tag: "mo", text: sign ?? "" });
  }
  return found;
}

class Reader {
  private at = 0;

  constructor(private readonly pieces: readonly Piece[]) {}

  private next(sign: string): boolean {
    const piece = this.pieces[this.at];
    const met = piece?.tag === "mo" && piece.text === sign;
    if (met) this.at += 1;
    return met;
  }

  row(end?: string): FormulaNode[] {
    const nodes: FormulaNode[] = [];
    while (this.at < this.pieces.length) {
      if (end !== undefined && this.next(end)) return nodes;
      nodes.push(this.fraction());
    }
    if (end !== undefined) throw new SyntaxError(`The formula has no ${end}`);
    return nodes;
  }

  private fraction(): FormulaNode {
    const above = this.scripted();
    const isGroup = above.tag === "mrow";
    return isGroup && this.next("/") ? { tag: "mfrac", parts: [above, this.scripted()] } : above;
  }

  private scripted(): FormulaNode {
    const base = this.single();
    const below = this.next("_") ? this.single() : undefined;
    const above = this.next("^") ? this.single() : undefined;
    if (below !== undefined && above !== undefined) return { tag: "msubsup", parts: [base, below, above] };
    if (below !== undefined) return { tag: "msub", parts: [base, below] };
    return above === undefined ? base : { tag: "msup", parts: [base, above] };
  }

  private single(): FormulaNode {
    if (this.next("{")) return { tag: "mrow", parts: this.row("}") };
    const piece = this.pieces[this.at];
    if (piece === undefined) throw new SyntaxError("The formula ends too soon");
    this.at += 1;
    return piece;
  }
}

/**
 * Reads a formula: `_` lowers and `^` raises what follows, `{…}` holds together, `{…}/{…}` is a
 * fraction, `"…"` is text. Names of one letter are variables, longer ones (log, pH) are words.
 *
 * @throws SyntaxError for a brace without its partner
 */
export function formulaNodes(markup: string): readonly FormulaNode[] {
  return new Reader(piecesOf(markup)).row();
}
