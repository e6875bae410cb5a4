/**
 * How a result comes about, for readers. It stands apart from the definitions because every cell waits
 * for these to load, and no cell needs a formula in print.
 */
export interface Formula {
  /** One equation a line in the markup of `formulaNodes`; none where there is a table or a model instead. */
  readonly symbols: readonly string[];
  /** What each symbol stands for, in the order in which a reader meets them. */
  readonly where: Readonly<Record<string, string>>;
  /** Who says so. */
  readonly source: string;
}
