import type { FunctionArgument, FunctionResult } from "../library.ts";
import type { ParameterMetadata } from "./metadata.ts";

export type GivenArguments =
  | { readonly kind: "values"; readonly values: readonly unknown[] }
  | { readonly kind: "error"; readonly error: FunctionResult };

const isError = (cell: FunctionResult): boolean =>
  typeof cell.value === "string" &&
  cell.value.startsWith("#") &&
  /^#(?:N\/A|VALUE!|REF!?|DIV\/0!|NUM!|NAME\?|NULL!|SPILL!|BUSY!|CYCLE|BAD_EXPR|ERROR|CALC!)$/.test(cell.value);

const refused: FunctionResult = { value: "#VALUE!", message: "An argument has the wrong type." };

/** Excel converts a typed parameter's value before it calls; undefined where it cannot. */
function converted(value: FunctionResult["value"], type: string | undefined): unknown {
  if (value === null) return null;
  if (type === "number") {
    if (typeof value === "boolean") return value ? 1 : 0;
    const number = typeof value === "number" ? value : value.trim() === "" ? Number.NaN : Number(value);
    return Number.isNaN(number) ? undefined : number;
  }
  if (type === "string") return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
  if (type === "boolean") {
    if (typeof value !== "string") return Boolean(value);
    return /^true$/i.test(value) ? true : /^false$/i.test(value) ? false : undefined;
  }
  return value;
}

/** The grid's columns of rows as Excel's rows of columns; a single cell is a 1 by 1 range. */
function rowsOf(argument: FunctionArgument): FunctionResult[][] {
  if (!Array.isArray(argument)) return [[argument as FunctionResult]];
  const columns = argument as FunctionResult[][];
  return (columns[0] ?? []).map((_, row) => columns.map((column) => column[row] ?? { value: null }));
}

/** Most arguments are one cell. */
function single(cell: FunctionResult, { type }: ParameterMetadata): { readonly value: unknown } | FunctionResult {
  if (isError(cell)) return cell;
  const value = converted(cell.value, type);
  return value === undefined ? refused : { value };
}

function one(argument: FunctionArgument, parameter: ParameterMetadata): { readonly value: unknown } | FunctionResult {
  if (!Array.isArray(argument) && parameter.dimensionality !== "matrix")
    return single(argument as FunctionResult, parameter);
  const rows = rowsOf(argument);
  const error = rows.flat().find(isError);
  if (error !== undefined) return error;
  const cells = rows.map((row) => row.map((cell) => converted(cell.value, parameter.type)));
  if (cells.flat().includes(undefined)) return refused;
  return { value: parameter.dimensionality === "matrix" ? cells : cells[0]?.[0] };
}

/** The arguments as Excel hands them over: omitted ones and blank cells are null, ranges rows of columns, an error ends the call. */
export function givenArguments(
  parameters: readonly ParameterMetadata[],
  args: readonly (FunctionArgument | undefined)[],
): GivenArguments {
  const values: unknown[] = [];
  for (const [index, parameter] of parameters.entries()) {
    const given = parameter.repeating === true ? args.slice(index) : args.slice(index, index + 1);
    const read = given.map((argument) => (argument === undefined ? { value: null } : one(argument, parameter)));
    const error = read.find((result): result is FunctionResult => isError(result as FunctionResult));
    if (error !== undefined) return { kind: "error", error };
    values.push(parameter.repeating === true ? read.map(({ value }) => value) : (read[0]?.value ?? null));
  }
  return { kind: "values", values };
}
