import type { LogRow } from "./definition.ts";
import type { PlacedTable } from "./placement.ts";
import type { CellPlan, TableColumnPlan } from "./plan.ts";
import { headerStyle } from "./table-columns.ts";

/** Words that stand in for a number stand where the numbers do, and so does the header. */
function alignment({ numberFormat }: TableColumnPlan): Pick<CellPlan, "align"> {
  return numberFormat === undefined || numberFormat === "@" || numberFormat === "General" ? {} : { align: "right" };
}

function bodyCell(column: TableColumnPlan, row: number, place: number, content: LogRow): CellPlan {
  const look = { row, column: place, style: column.style, ...(column.numberFormat === undefined ? {} : { numberFormat: column.numberFormat }), ...alignment(column) };
  if (column.formula !== undefined) return { ...look, kind: "formula", formula: column.formula };
  const value = content[column.id];
  return value === undefined ? { ...look, kind: "blank" } : { ...look, kind: "value", value };
}

/** Caption, headers and rows of a table. */
export function tableCells(placed: PlacedTable, columns: readonly TableColumnPlan[], rows: readonly LogRow[]): readonly CellPlan[] {
  const { area, captionRow, table } = placed;
  const caption: CellPlan[] = captionRow === undefined ? [] : [{ row: captionRow, column: area.column, style: "caption", kind: "value", value: table.caption }];
  const headers = table.columns.map((column, index): CellPlan => {
    const planned = columns[index];
    const align = planned === undefined ? {} : alignment(planned);
    return { row: area.row, column: area.column + index, style: headerStyle(column), ...align, kind: "value", value: planned?.header ?? column.label };
  });
  const body = Array.from({ length: area.rows - 1 }, (_, line) =>
    columns.map((column, index) => bodyCell(column, area.row + 1 + line, area.column + index, rows[line] ?? {})));
  return [...caption, ...headers, ...body.flat()];
}
