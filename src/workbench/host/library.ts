/** The grid library as the host sees it; it arrives as a parameter because a page loads it as a script of its own. */
import type * as Library from "@odoo/o-spreadsheet";

export type OSpreadsheet = typeof Library;
export type Model = Library.Model;
export type Zone = Library.Zone;
export type EvaluatedCell = Library.EvaluatedCell;
export type ErrorCell = Library.ErrorCell;
export type Style = Library.Style;
export type CellPosition = Library.CellPosition;
export type CoreTable = Library.CoreTable;
export type DispatchResult = Library.DispatchResult;
export type FunctionResult = Library.FunctionResultObject;
export type FunctionArgument = Library.Arg;
export type BorderDescription = Library.BorderDescr;
export type ConditionalFormat = Library.ConditionalFormat;
export type ValidationCriterion = Library.DataValidationCriterion;
export type ValidationRule = Library.DataValidationRule;
export type GridFunction = Library.AddFunctionDescription;
/** The kinds of chart that the stand-in draws. */
export type GridChart = Extract<Library.ChartDefinition, { type: "line" | "scatter" | "bar" }>;

/** Error words of Excel that the grid lacks or spells otherwise; without them `#VALUE!` would be ordinary text. */
const excelErrors = ["#VALUE!", "#REF!", "#BUSY!"];

/** What the library must know before the first model is made. Safe to repeat. */
export function prepareLibrary(library: OSpreadsheet): void {
  for (const error of excelErrors) library.registries.errorTypes.add(error);
  // The grid names every failed conversion #ERROR; Excel names it #VALUE!, and people search for that word.
  Object.assign(library.CellErrorType, { GenericError: "#VALUE!", InvalidReference: "#REF!" });
}

/** The grid groups with `Object.groupBy`, which Node knows from version 21 on. */
export function ensureGroupBy(): void {
  if (Object.hasOwn(Object, "groupBy")) return;
  const groupBy = <Item>(
    items: Iterable<Item>,
    keyOf: (item: Item, index: number) => PropertyKey,
  ): Record<PropertyKey, Item[]> => {
    const groups = Object.create(null) as Record<PropertyKey, Item[]>;
    let index = 0;
    for (const item of items) (groups[keyOf(item, index++)] ??= []).push(item);
    return groups;
  };
  Object.defineProperty(Object, "groupBy", { value: groupBy, configurable: true, writable: true });
}
