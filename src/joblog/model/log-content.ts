import { jobLog } from "../job-log.ts";
import type { Cells, LogContent, TableDefinition } from "./definition.ts";
import type { AnyRow, LogSnapshot } from "./log-snapshot.ts";

function inputsOf(table: TableDefinition): readonly string[] {
  return table.columns.flatMap((column) => (column.role === "input" && column.ofCells !== true ? [column.id] : []));
}

/** What was typed into a log, without what its formulas made of it: laid out anew, it gives the same log. */
export function contentOf(log: LogSnapshot): LogContent {
  const fields = jobLog.sheets
    .flatMap((sheet) => sheet.fields)
    .filter((field) => field.formula === undefined && field.fixed !== true);
  const tables = jobLog.sheets.flatMap((sheet) => sheet.tables).filter((table) => inputsOf(table).length > 0);
  const held: Cells = log.fields;
  return {
    fields: Object.fromEntries(fields.map(({ id }) => [id, held[id]])),
    rows: Object.fromEntries(
      tables.map((table) => {
        const rows: readonly AnyRow[] = log.rows[table.id];
        return [
          table.id,
          rows.map(({ cells }) =>
            Object.fromEntries(inputsOf(table).flatMap((id) => (cells[id] === undefined ? [] : [[id, cells[id]]]))),
          ),
        ];
      }),
    ),
  };
}
