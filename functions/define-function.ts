import type { UnitDefinition } from "../src/core/units/unit-definition.ts";
import type { UnitSystem } from "../src/core/units/unit-system.ts";

/** What a cell can hand to a function, or a function to a cell. */
export type CellValue = number | string | boolean | null;

/** A range arrives and a spill leaves row by row. */
export type CellMatrix = CellValue[][];

/** An argument as it arrives: one cell, a range, or nothing. */
export type CellInput = CellValue | CellMatrix | undefined;

type FunctionCategory =
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

/** What holds for one call as a whole. */
export interface CallContext {
  readonly system: UnitSystem;
  /** Whether the call says its system: then a bare 53 in US is 53 °F, and nobody asks. */
  readonly systemNamed: boolean;
  /** The unit that each quantity was given in, by argument name, so that a message can answer in it. */
  readonly given: Map<string, UnitDefinition>;
  /** The quantities that were given as a number without a unit, by argument name. */
  readonly bare: Map<string, number>;
}

/** One argument: how it stands in functions.json and how its cell becomes a checked value. */
export interface Argument<Value, Name extends string = string> {
  readonly name: Name;
  readonly help: string;
  /** The unit of a bare number, in words; absent where the argument is not a quantity. */
  readonly unit?: string;
  readonly excelType: "any" | "number" | "string" | "boolean";
  readonly dimensionality: "scalar" | "matrix";
  readonly optional: boolean;
  /** The words that may be typed, where there are few; a pane offers them as a list. */
  readonly choices?: readonly string[];
  /** Throws a DomainError that names the argument, what was given and what is allowed. */
  readonly read: (cell: CellInput, call: CallContext) => Value;
}

export interface FunctionResult {
  readonly excelType: "any" | "number" | "string" | "boolean";
  readonly dimensionality: "scalar" | "matrix";
  readonly unit?: string;
  readonly help: string;
}

/** A worked example: shown to the user and run by the tests. */
export interface FunctionExample {
  /** As typed in a cell: `=BATH.DOSE(121.175,"1+28")`. */
  readonly formula: string;
  /** The same arguments as cells. */
  readonly cells: readonly CellInput[];
  readonly result: CellValue | CellMatrix;
  /** Largest allowed difference of a number; 0 when absent. */
  readonly tolerance?: number;
  /** Who says that the result is right. */
  readonly source: string;
}

interface FunctionDescription {
  /** Name after `BATH.`; never changes once released. */
  readonly id: string;
  readonly category: FunctionCategory;
  /** One line, at most 255 characters. */
  readonly summary: string;
  readonly result: FunctionResult;
  readonly examples: readonly FunctionExample[];
  /** What the function does not know or take into account. */
  readonly notes: readonly string[];
  /** The formula in words, or where it comes from. */
  readonly source: string;
}

export interface WorksheetFunction extends FunctionDescription {
  readonly arguments: readonly Argument<unknown>[];
  /** `values` are what the arguments' `read` returned, in order. Callers use `evaluate`. */
  readonly compute: (values: readonly unknown[], call: CallContext) => CellValue | CellMatrix;
}

type ValuesOf<Arguments extends readonly Argument<unknown>[]> = {
  readonly [Index in keyof Arguments]: Arguments[Index] extends Argument<infer Value> ? Value : never;
};

interface TypedFunction<Arguments extends readonly Argument<unknown>[]> extends FunctionDescription {
  readonly arguments: Arguments;
  readonly compute: (values: ValuesOf<Arguments>, call: CallContext) => CellValue | CellMatrix;
}

/** A definition that still knows its arguments' names, for calls that give them by name. */
export interface DefinedFunction<Arguments extends readonly Argument<unknown>[]> extends WorksheetFunction {
  readonly arguments: Arguments;
}

/** Lets a definition's `compute` know the types that its arguments read; the catalogue forgets them again. */
export function defineFunction<const Arguments extends readonly Argument<unknown>[]>(
  definition: TypedFunction<Arguments>,
): DefinedFunction<Arguments> {
  return {
    ...definition,
    compute: (values, call) => definition.compute(values as unknown as ValuesOf<Arguments>, call),
  };
}
