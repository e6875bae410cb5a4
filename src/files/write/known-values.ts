import type { StateValue } from "../../state/workbook-state.ts";

/** What a sheet's cells showed when it was saved. */
export interface ShownSheet {
  /** Values of the sheet's formulas, in the order of its worked cells. */
  readonly values: readonly StateValue[];
  /** Formulas that fill more cells than their own, by their place among the worked cells. */
  readonly spills: ReadonlyMap<number, { readonly rows: number; readonly columns: number }>;
  /** What such formulas put into the other cells. */
  readonly spilled: readonly (readonly [row: number, column: number, value: StateValue])[];
  /** Pixels of rows that are as high as their text wants. */
  readonly heights: ReadonlyMap<number, number>;
}

/** By the sheets' ids. */
export type ShownValues = ReadonlyMap<string, ShownSheet>;
