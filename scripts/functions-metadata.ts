import { catalogue } from "../functions/catalogue.ts";
import { helpAnchor } from "./reference-page.ts";
import type { Argument, FunctionResult, WorksheetFunction } from "../functions/define-function.ts";
import type { FunctionMetadata, FunctionsMetadata, ParameterMetadata } from "../src/workbench/host/functions/metadata.ts";

function matrixOnly(dimensionality: "scalar" | "matrix"): { dimensionality?: "matrix" } {
  return dimensionality === "matrix" ? { dimensionality } : {};
}

function parameter(argument: Argument<unknown>): ParameterMetadata {
  return {
    name: argument.name,
    description: argument.unit === undefined ? argument.help : `${argument.help}; bare number: ${argument.unit}`,
    type: argument.excelType,
    ...matrixOnly(argument.dimensionality),
    ...(argument.optional ? { optional: true } : {}),
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
export function functionsMetadata(helpBaseUrl: string): FunctionsMetadata & { readonly allowCustomDataForDataTypeAny: true } {
  return {
    allowCustomDataForDataTypeAny: true,
    functions: catalogue.map((fn) => entry(fn, helpBaseUrl)),
  };
}
