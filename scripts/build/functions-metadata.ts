import { catalogue } from "../../functions/catalogue.ts";
import type { Argument, FunctionResult, WorksheetFunction } from "../../functions/define-function.ts";
import type {
  EnumMetadata,
  FunctionMetadata,
  FunctionsMetadata,
  ParameterMetadata,
} from "../../src/workbench/host/functions/metadata.ts";
import { helpAnchor } from "../reference-page/reference-function.ts";

function matrixOnly(dimensionality: "scalar" | "matrix"): { dimensionality?: "matrix" } {
  return dimensionality === "matrix" ? { dimensionality } : {};
}

/**
 * The words that Excel offers for an argument. Excel knows such lists of texts only, so an argument
 * that may also be a range, such as builder, has none.
 */
export function offeredWords({ excelType, dimensionality, choices }: Argument<unknown>): readonly string[] | undefined {
  return excelType === "string" && dimensionality === "scalar" ? choices : undefined;
}

/** Every list of words under the name of the first argument that takes it; a name in use gets its function's before it. */
function wordLists(functions: readonly WorksheetFunction[]): ReadonlyMap<string, EnumMetadata> {
  const lists = new Map<string, EnumMetadata>();
  const taken = new Set<string>();
  for (const fn of functions) {
    for (const argument of fn.arguments) {
      const words = offeredWords(argument);
      if (words === undefined || lists.has(words.join())) continue;
      const name = argument.name.toUpperCase();
      const id = taken.has(name) ? `${fn.id}_${name}` : name;
      taken.add(id);
      lists.set(words.join(), {
        id,
        type: "string",
        values: words.map((word) => ({ name: word, stringValue: word, tooltip: "" })),
      });
    }
  }
  return lists;
}

const lists = wordLists(catalogue);

function parameter(argument: Argument<unknown>): ParameterMetadata {
  const list = lists.get(offeredWords(argument)?.join() ?? "");
  return {
    name: argument.name,
    description: argument.unit === undefined ? argument.help : `${argument.help}; bare number: ${argument.unit}`,
    type: argument.excelType,
    ...matrixOnly(argument.dimensionality),
    ...(argument.optional ? { optional: true } : {}),
    ...(list === undefined ? {} : { customEnumId: list.id }),
  };
}

function result({ excelType, dimensionality }: FunctionResult): FunctionMetadata["result"] & object {
  return { ...(excelType === "any" ? {} : { type: excelType }), ...matrixOnly(dimensionality) };
}

function entry(fn: WorksheetFunction, helpBaseUrl: string): FunctionMetadata {
  return {
    id: fn.id,
    name: fn.id,
    description: fn.summary,
    helpUrl: `${helpBaseUrl.replace(/\/?$/, "/")}reference.html#${helpAnchor(fn)}`,
    parameters: fn.arguments.map(parameter),
    result: result(fn.result),
  };
}

/**
 * What Excel reads as functions.json, in the shape that Microsoft's generator writes. That generator
 * reads syntax only and refuses branded types, so the file is derived from the catalogue instead.
 *
 * @param helpBaseUrl https address of the folder that holds reference.html
 */
export function functionsMetadata(
  helpBaseUrl: string,
): FunctionsMetadata & { readonly allowCustomDataForDataTypeAny: true } {
  return {
    allowCustomDataForDataTypeAny: true,
    functions: catalogue.map((fn) => entry(fn, helpBaseUrl)),
    enums: [...lists.values()],
  };
}
