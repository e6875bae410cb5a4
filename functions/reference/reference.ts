import type { Caution } from "../../src/core/safety/cautions.ts";

/** How a result comes about, in symbols. */
export interface Working {
  /** One equation a line in the markup of `formulaNodes`; none where there is a table or a model instead. */
  readonly symbols: readonly string[];
  /** What each symbol stands for, in the order in which a reader meets them. */
  readonly where: Readonly<Record<string, string>>;
}

/**
 * What a reader gets besides the definition, in a file of its own beside it: cells and the pane's first view wait
 * for the definitions to load, and neither needs a formula in print.
 */
export interface Reference extends Working {
  /** Who says so. */
  readonly source: string;
  /** The worst first; none where nobody pours, heats or releases by the result. */
  readonly cautions: readonly Pick<Caution, "text" | "source">[];
}
