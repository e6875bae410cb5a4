import type { TableId } from "../../joblog/formula/log-types.ts";
import type { RowValue } from "../../joblog/model/definition.ts";
import { cellValue } from "../cell-text.ts";
import { cellsOfRow } from "./append-target.ts";

/** A cell that a batch was to write: what it held, what it was to hold. */
export interface CellLeft {
  readonly position: number;
  readonly at: number;
  readonly was: RowValue | undefined;
  readonly written: RowValue;
}

/** What a batch that failed may have left in a table. */
export interface TableLeft {
  readonly id: TableId;
  readonly name: string;
  readonly cells: readonly CellLeft[];
  /** Data rows before the batch, and how many it was to add. */
  readonly rowCount: number;
  readonly extra: number;
}

/**
 * Excel stops at the first step of a batch that it cannot do, and keeps those before. Cells that hold what was to be
 * written get back what they held, and rows that a table grew by go again. Wants a context of its own: one whose
 * batch failed is spent.
 */
export async function clearLeftovers(context: Excel.RequestContext, tables: readonly TableLeft[]): Promise<void> {
  const looked = tables.map(({ name, cells, ...rest }) => {
    const table = context.workbook.tables.getItem(name);
    return {
      ...rest,
      table,
      count: table.rows.getCount(),
      cells: cells.map((cell) => ({ ...cell, range: cellsOfRow(table, cell.position, cell.at, 1).load("values") })),
    };
  });
  await context.sync();
  for (const { table, cells } of looked) {
    for (const { range, position, at, was, written } of cells) {
      if (range.values[0]?.[0] !== written) continue;
      const cell = cellsOfRow(table, position, at, 1);
      if (was === undefined) cell.clear("Contents");
      else cell.values = [[cellValue(was)]];
    }
  }
  for (const { table, count, rowCount, extra, cells } of looked) {
    if (extra === 0 || count.value !== rowCount + extra) continue;
    const foreign = cells.some(
      ({ position, range, written }) =>
        position >= rowCount && range.values[0]?.[0] !== written && range.values[0]?.[0] !== "",
    );
    if (foreign) continue;
    table.resize(table.getRange().getResizedRange(-extra, 0));
    table.getDataBodyRange().getRowsBelow(extra).clear();
  }
  await context.sync();
}
