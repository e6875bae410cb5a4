/** What can hurt someone who acts on a result, and who says so. */
export interface Caution {
  readonly text: string;
  readonly source: string;
}

/** How a result comes about, in symbols. */
export interface Working {
  /** One equation a line in the markup of `formulaNodes`; none where there is a table or a model instead. */
  readonly symbols: readonly string[];
  /** What each symbol stands for, in the order in which a reader meets them. */
  readonly where: Readonly<Record<string, string>>;
}

/**
 * What a reader gets besides the definition. It is an export of its own, made of literals and names and
 * otherwise marked pure, because every cell waits for functions.js to load and no cell needs a formula in
 * print: a bundler leaves out what nobody names.
 */
export interface Reference extends Working {
  /** Who says so. */
  readonly source: string;
  /** The worst first; none where nobody pours, heats or releases by the result. */
  readonly cautions: readonly Caution[];
}

/** A reference whose working has a part in common with others. Call it with the mark that it is pure. */
export function joined(first: Working, second: Working, rest: Pick<Reference, "source" | "cautions">): Reference {
  return {
    symbols: [...first.symbols, ...second.symbols],
    where: { ...first.where, ...second.where },
    ...rest,
  };
}
