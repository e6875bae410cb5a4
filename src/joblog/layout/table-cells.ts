import type { Cells, ColumnDefinition } from "../model/definition.ts";
import type { CellPlan, TableColumnPlan } from "../model/plan.ts";
import type { PlacedTable } from "./placement.ts";
import { headerStyle } from "./table-columns.ts";

/** Words that stand in for a number stand where the numbers do, and so does the header. */
function alignment({ type }: ColumnDefinition): Pick<CellPlan, "align"> {
  return type === "text" || type === "choice" || type === "yes or no" ? {} : { align: "right" };
}

function bodyCell(
  column: TableColumnPlan,
  align: Pick<CellPlan, "align">,
  row: number,
  place: number,
  content: Cells,
): CellPlan {
  const look = {
    row,
    column: place,
    style: column.style,
    ...(column.numberFormat === undefined ? {} : { numberFormat: column.numberFormat }),
    ...align,
  };
  if (column.formula !== undefined) return { ...look, kind: "formula", formula: column.formula };
  const value = content[column.id];
  return value === undefined ? { ...look, kind: "blank" } : { ...look, kind: "value", value };
}

/** Caption, headers and rows of a table. */
export function tableCells(
  placed: PlacedTable,
  columns: readonly TableColumnPlan[],
  rows: readonly Cells[],
): readonly CellPlan[] {
  const { area, caption: place, table } = placed;
  const caption: CellPlan[] =
    place === undefined ? [] : [{ ...place, style: "caption", kind: "value", value: table.caption }];
  const aligned = table.columns.map(alignment);
  const headers = table.columns.map((column, index): CellPlan => {
    return {
      row: area.row,
      column: area.column + index,
      style: headerStyle(column),
      ...aligned[index],
      kind: "value",
      value: columns[index]?.header ?? column.label,
    };
  });
  const body = Array.from({ length: area.rows - 1 }, (_, line) =>
    columns.map((column, index) =>
      bodyCell(column, aligned[index] ?? {}, area.row + 1 + line, area.column + index, rows[line] ?? {}),
    ),
  );
  return [...caption, ...headers, ...body.flat()];
}
