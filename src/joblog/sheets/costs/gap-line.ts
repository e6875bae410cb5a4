import { when } from "../../formula/choices.ts";
import { isBlank } from "../../formula/conditions.ts";
import type { Column, Expression } from "../../formula/expression.ts";
import type { Log, Row } from "../../formula/log-names.ts";
import type { TableId } from "../../formula/log-types.ts";
import { lineOf } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";

/** Where a row stands that says, in the cell given, why its cost is not placed: Baths and Costs find the first by it. */
export function gapLine<Table extends TableId>(
  gapOf: (row: Row<Table>, log: Log) => readonly [cell: Expression, column: Column],
): ComputedColumn {
  return columnsOf<Table>().helper(
    {
      id: "gapLine",
      label: "Gap row",
      type: "whole number",
      format: "0",
      width: 8,
      help: "Position of the row, where it says that something is open.",
    },
    (row, log) => {
      const [cell, column] = gapOf(row, log);
      return when(isBlank(cell), "").otherwise(lineOf(cell, column));
    },
  );
}
