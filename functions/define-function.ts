/** What a cell can hand to a function, or a function to a cell. */
export type CellValue = number | string | boolean | null;

/** A range arrives and a spill leaves row by row. */
export type CellMatrix = CellValue[][];

export type FunctionCategory =
  | "Units and strength"
  | "Tank"
  | "Water"
  | "Charge"
  | "pH and the meter"
  | "Threshold and top-up"
  | "Solution chemistry"
  | "Discharge"
  | "Heat"
  | "Money and stock"
  | "What-if";

/** One argument: how it stands in functions.json and how its cell becomes a checked value. */
export interface Argument<Value> {
  readonly name: string;
  readonly help: string;
  /** The unit of a bare number, in words; absent where the argument is not a quantity. */
  readonly unit?: string;
  readonly excelType: "any" | "number" | "string" | "boolean";
  readonly dimensionality: "scalar" | "matrix";
  readonly optional: boolean;
  /** Throws a DomainError that names the argument, what was given and what is allowed. */
  readonly read: (cell: CellValue | CellMatrix | undefined, call: CallContext) => Value;
}
