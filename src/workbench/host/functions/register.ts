import type { CellPosition, FunctionArgument, FunctionResult, GridFunction, OSpreadsheet } from "../library.ts";
import { type Answers, answersKey } from "../workbook/answers.ts";
import { givenArguments } from "./arguments.ts";
import { CustomFunctionError, type FunctionBook } from "./custom-functions.ts";
import type { EnumMetadata, FunctionMetadata, FunctionsMetadata } from "./metadata.ts";

/** Key under which a model's evaluation hands over its host's functions. */
export const functionBookKey = "bathsheetFunctions";

type GridResult = FunctionResult | FunctionResult[][];

function errorOf(error: unknown): FunctionResult {
  if (error instanceof CustomFunctionError) return { value: error.code, message: error.message };
  return { value: "#VALUE!", message: "The function failed." };
}

function cellResult(value: unknown): FunctionResult {
  if (value instanceof CustomFunctionError) return errorOf(value);
  if (value === null || value === undefined || typeof value === "string" || typeof value === "boolean")
    return { value: value ?? null };
  if (typeof value === "number")
    return Number.isFinite(value) ? { value } : { value: "#NUM!", message: "The function gave no finite number." };
  return { value: "#VALUE!", message: "The function gave something that is not a cell's value." };
}

/** A promise of any window: the pane's frame has a Promise of its own. */
function isThenable(value: unknown): boolean {
  return typeof value === "object" && value !== null && "then" in value && typeof value.then === "function";
}

/** Excel's rows of columns as the grid's columns of rows. */
function gridResult(value: unknown): GridResult {
  if (isThenable(value)) return { value: "#BUSY!", message: "The workbench waits for no function." };
  if (!Array.isArray(value)) return cellResult(value);
  const rows = value as unknown[][];
  const first = rows[0] ?? [];
  if (first.length === 0) return { value: "#VALUE!", message: "The function gave no cells." };
  return first.map((_, column) => rows.map((row) => cellResult(row[column])));
}

function compute(
  id: string,
  book: FunctionBook | undefined,
  metadata: FunctionMetadata,
  args: readonly (FunctionArgument | undefined)[],
): GridResult {
  const code = book?.codeOf(id);
  if (code === undefined) return { value: "#BUSY!", message: "The add-in's functions are still loading." };
  const given = givenArguments(metadata.parameters, args);
  if (given.kind === "error") return given.error;
  try {
    return gridResult(code(...given.values, { functionName: metadata.name, isInValuePreview: false }));
  } catch (error) {
    return errorOf(error);
  }
}

/** The words that the grid offers while the argument is typed. */
function proposals(
  lists: readonly EnumMetadata[],
  id: string | undefined,
): Pick<GridFunction["args"][number], "proposalValues"> {
  const list = lists.find((one) => one.id === id);
  return list === undefined
    ? {}
    : { proposalValues: list.values.map(({ name, stringValue }) => ({ value: stringValue, label: name })) };
}

function gridDescription(metadata: FunctionMetadata, lists: readonly EnumMetadata[]): GridFunction {
  return {
    description: metadata.description ?? "",
    category: "Bathsheet",
    args: metadata.parameters.map((parameter) => {
      const matrix = parameter.dimensionality === "matrix";
      return {
        name: parameter.name,
        description: parameter.description ?? "",
        type: [matrix ? "RANGE" : "ANY"],
        acceptMatrix: matrix,
        acceptErrors: true,
        ...proposals(lists, parameter.customEnumId),
        ...(parameter.optional === true ? { optional: true } : {}),
        ...(parameter.repeating === true ? { repeating: true, optional: true } : {}),
      };
    }),
    compute(this: Record<string, unknown>, ...args: (FunctionArgument | undefined)[]): GridResult {
      (this[answersKey] as Answers | undefined)?.ran(this["__originCellPosition"] as CellPosition | undefined);
      return compute(metadata.id, this[functionBookKey] as FunctionBook | undefined, metadata, args);
    },
    isExported: false,
  };
}

/** The grid refuses to offer the words of one argument twice. */
function offerWords(library: OSpreadsheet, name: string, { args }: GridFunction): void {
  const offered = library.registries.autoCompleteProviders;
  const isNew = args.every((argument) => !offered.contains(`${name}_function_${argument.name}_argument_proposals`));
  if (isNew) library.createAutocompleteArgumentsProvider(name, args);
}

/** Makes every function of functions.json known to formulas and to the formula bar's help. */
export function registerFunctions(library: OSpreadsheet, namespace: string, metadata: FunctionsMetadata): void {
  for (const one of metadata.functions) {
    const name = `${namespace}.${one.name}`;
    const description = gridDescription(one, metadata.enums ?? []);
    library.registries.functionRegistry.replace(name, description);
    offerWords(library, name, description);
  }
}
