import type { TableId } from "../formula/log-types.ts";
import { jobLog } from "../job-log.ts";
import type { Cells, RowValue } from "../model/definition.ts";
import type { AnyRow, LogSnapshot } from "../model/log-snapshot.ts";
import type { CellPlan, SheetPlan, WorkbookPlan } from "../model/plan.ts";

/** What a person would have to type into an empty log to come to a plan. */
export interface TypedCells {
  /** Where each table stands: one with a full table above it is further down. */
  readonly places: readonly string[];
  readonly fields: ReadonlyMap<string, RowValue | undefined>;
  readonly rows: ReadonlyMap<TableId, readonly Cells[]>;
}

function valueIn(cell: CellPlan | undefined): RowValue | undefined {
  return cell?.kind === "value" && cell.value !== "" ? cell.value : undefined;
}

function finder(sheet: SheetPlan): (row: number, column: number) => RowValue | undefined {
  const cells = new Map(sheet.cells.map((cell) => [`${String(cell.row)} ${String(cell.column)}`, cell]));
  return (row, column) => valueIn(cells.get(`${String(row)} ${String(column)}`));
}

const isBlank = (row: Cells): boolean => Object.values(row).every((value) => value === undefined);

function rowsOf(sheet: SheetPlan, id: TableId, at: ReturnType<typeof finder>): readonly Cells[] {
  const table = sheet.tables.find((one) => one.id === id);
  if (table === undefined) return [];
  const { row: top, column: left, rows: height } = table.area;
  const rows = Array.from({ length: height - 1 }, (_, line): Cells =>
    Object.fromEntries(
      table.columns.flatMap(({ id: column, formula }, index) =>
        formula === undefined ? [[column, at(top + 1 + line, left + index)] as const] : [],
      ),
    ),
  );
  return rows.slice(0, rows.findLastIndex((row) => !isBlank(row)) + 1);
}

export function typedCells(plan: WorkbookPlan): TypedCells {
  const sheets = plan.sheets.map((sheet) => ({ sheet, at: finder(sheet) }));
  const fields = jobLog.sheets
    .flatMap((sheet) => sheet.fields)
    .filter(({ formula }) => formula === undefined)
    .map(({ id, name }) => {
      const place = plan.names.find((one) => one.name === name);
      const on = sheets.find(({ sheet }) => sheet.name === place?.sheet);
      return [id, place === undefined ? undefined : on?.at(place.row, place.column)] as const;
    });
  const rows = jobLog.sheets.flatMap((definition) =>
    definition.tables.map(({ id }) => {
      const on = sheets.find(({ sheet }) => sheet.id === definition.id);
      return [id, on === undefined ? [] : rowsOf(on.sheet, id, on.at)] as const;
    }),
  );
  const places = plan.sheets.flatMap(({ tables }) =>
    tables.map(({ id, area }) => `${id} ${String(area.row)} ${String(area.column)}`),
  );
  return { places, fields: new Map(fields), rows: new Map(rows) };
}

const isWritten = (cells: Cells): boolean => Object.values(cells).some((value) => value !== undefined);

/** A planned log as it would be read before any formula of it was worked out. */
export function typedLog(plan: WorkbookPlan): LogSnapshot {
  const { fields, rows } = typedCells(plan);
  const written: Partial<Record<TableId, readonly AnyRow[]>> = {};
  for (const [table, lines] of rows)
    written[table] = lines.flatMap((cells, position) => (isWritten(cells) ? [{ position, cells }] : []));
  return { fields: Object.fromEntries(fields), rows: written as LogSnapshot["rows"] };
}
