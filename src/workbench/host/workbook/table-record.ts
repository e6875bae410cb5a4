import type { Area } from "../address.ts";
import type { TableShape } from "../formulas/translate.ts";

/** A named table over a table of the grid, which knows neither names nor calculated columns. */
export interface TableRecord extends TableShape {
  readonly key: string;
  name: string;
  area: Area;
  headers: readonly string[];
  /** Excel's style name; the grid draws its own bands and borders. */
  style: string;
  /** What a new row's cell gets, by header in lower case. */
  readonly calculated: Map<string, CalculatedColumn>;
}

export type CalculatedColumn =
  | { readonly kind: "same text"; readonly text: string }
  /** A formula with relative references, as it stands in one row. */
  | { readonly kind: "relative"; readonly text: string; readonly row: number };

/** How a table differs from when it was last looked at. */
export interface TableChange {
  readonly table: TableRecord;
  readonly before: TableShape | undefined;
}
