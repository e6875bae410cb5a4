import type { CellChange, RowChange } from "../../../src/excel/record/cell-changes.ts";
import type { LogEdit } from "../../../src/excel/record/log-edit.ts";
import type { TableId } from "../../../src/joblog/formula/log-types.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import type { NewRow } from "../../../src/joblog/model/definition.ts";
import type { Cells, RowValue } from "../../../src/joblog/model/definition.ts";
import type { CellPlan, SheetPlan, WorkbookPlan } from "../../../src/joblog/model/plan.ts";

/** What a person would have to type into an empty log to come to a plan. */
export interface TypedCells {
  /** Where each table stands: one with a full table above it is further down. */
  readonly places: readonly string[];
  readonly fields: ReadonlyMap<string, RowValue | undefined>;
  readonly rows: ReadonlyMap<TableId, readonly Cells[]>;
}

function valueIn(cell: CellPlan | undefined): RowValue | undefined {
  return cell?.kind === "value" ? cell.value : undefined;
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

function changesIn(from: Cells, to: Cells): Readonly<Record<string, CellChange>> {
  return Object.fromEntries(
    Object.keys(to).flatMap((id) => (from[id] === to[id] ? [] : [[id, { before: from[id], after: to[id] }] as const])),
  );
}

/** What is to be typed to come from one log to another: undefined where a row would have to go or a table to move. */
export function changesBetween(from: TypedCells, to: TypedCells): (LogEdit & { readonly cells: number }) | undefined {
  if (from.places.join() !== to.places.join()) return undefined;
  const fields = changesIn(Object.fromEntries(from.fields), Object.fromEntries(to.fields));
  const rows: RowChange[] = [];
  const added: NewRow[] = [];
  for (const [table, wanted] of to.rows) {
    const had = from.rows.get(table) ?? [];
    if (had.length > wanted.length) return undefined;
    for (const [position, row] of wanted.entries()) {
      const before = had[position];
      // Both logs are laid out from the description that gives a table its columns.
      if (before === undefined) added.push({ table, row } as NewRow);
      else rows.push({ table, position, cells: changesIn(before, row) } as RowChange);
    }
  }
  const changed = rows.filter(({ cells }) => Object.keys(cells).length > 0);
  const written = [fields, ...changed.map(({ cells }) => cells), ...added.map(({ row }) => row)];
  return {
    fields,
    changes: changed,
    rows: added,
    cells: written.reduce((sum, one) => sum + Object.keys(one).length, 0),
  };
}
