import type { ColumnId, FieldId } from "../../joblog/formula/log-names.ts";
import type { TableId } from "../../joblog/formula/log-types.ts";
import type { ColumnDefinition, LogDefinition, RowValue } from "../../joblog/model/definition.ts";
import { findField } from "../../joblog/model/references.ts";
import { LogProblem } from "../office-problems.ts";
import { columnPositions, type systemOf } from "../table-columns.ts";
import { refuseIfLocked } from "./append-target.ts";
import { columnValues, type LoadedTable, loadTable } from "./loaded-table.ts";
import { type CellWrite, isWritten, rowsWrite, type TypedCell } from "./planned-write.ts";
import type { RowPlaces } from "./row-places.ts";

/** What a cell held when the person saw it, and what it is to hold; undefined is blank. */
export interface CellChange {
  readonly before: RowValue | undefined;
  readonly after: RowValue | undefined;
}

/** Typed cells of a row, by column. `position` counts the table's data rows from 0. */
export type RowChange = {
  readonly [Table in TableId]: {
    readonly table: Table;
    readonly position: number;
    readonly cells: { readonly [Id in ColumnId<Table>]?: CellChange };
  };
}[TableId];

/** Typed cells of a row of whichever table. */
export interface AnyChange {
  readonly table: TableId;
  readonly position: number;
  readonly cells: Readonly<Record<string, CellChange>>;
}

/** Named cells, by field. */
export type FieldChanges = { readonly [Id in FieldId]?: CellChange };

export interface CellChanges {
  readonly fields?: FieldChanges;
  readonly rows?: readonly AnyChange[];
}

interface LoadedField {
  readonly name: string;
  readonly change: CellChange;
  readonly range: Excel.Range;
}

interface LoadedRow {
  readonly change: AnyChange;
  readonly table: LoadedTable;
  readonly line: Excel.Range;
}

/** Cells to change as one read trip found them. */
interface LoadedChanges {
  readonly fields: readonly LoadedField[];
  readonly rows: readonly LoadedRow[];
}

function refuseIfChanged(where: string, found: unknown, { before }: CellChange): void {
  if (found === (before ?? "")) return;
  throw new LogProblem({
    what: `${where} was changed since it was read: it holds "${String(found)}". Nothing was written.`,
    remedy: "Look at the new value, then enter your change again.",
  });
}

function loadField(context: Excel.RequestContext, log: LogDefinition, id: string, change: CellChange): LoadedField {
  const { name } = findField(log, id);
  const range = context.workbook.names.getItem(name).getRange().load("values");
  range.worksheet.load("name");
  range.worksheet.protection.load("protected");
  return { name, change, range };
}

/** Asks for the cells to change; readable after the next sync. */
export function loadChanges(
  context: Excel.RequestContext,
  log: LogDefinition,
  { fields = {}, rows = [] }: CellChanges,
  places: RowPlaces<AnyChange>,
): LoadedChanges {
  const tables = new Map([...new Set(rows.map(({ table }) => table))].map((id) => [id, loadTable(context, log, id)]));
  return {
    fields: Object.entries(fields).map(([id, change]) => loadField(context, log, id, change)),
    rows: rows.flatMap((change) => {
      const found = tables.get(change.table);
      if (found === undefined) return [];
      return [{ table: found, change, line: found.body.getRow(0).getOffsetRange(places.at(change), 0).load("values") }];
    }),
  };
}

function planRow(
  { change, table: { worksheet, headers, definition: table, sheet }, line }: LoadedRow,
  system: ReturnType<typeof systemOf>,
  places: RowPlaces<AnyChange>,
): readonly CellWrite[] {
  refuseIfLocked(worksheet);
  const positions: ReadonlyMap<ColumnDefinition, number> = columnPositions(
    table,
    sheet,
    headers.values[0] ?? [],
    system,
  );
  const cells = [...positions].flatMap(([column, at]): readonly (readonly [number, TypedCell])[] => {
    const cell = change.cells[column.id];
    if (cell === undefined || column.role !== "input") return [];
    refuseIfChanged(`${column.label} (${sheet})`, line.values[0]?.[at], cell);
    return [[at, { was: cell.before, becomes: cell.after }]];
  });
  if (!cells.some(([, cell]) => isWritten(cell))) return [];
  return [rowsWrite(sheet, { table: table.name, position: places.at(change) }, [new Map(cells)])];
}

/**
 * The writes, each checked against what the person saw. Throws a LogProblem where a cell changed since or its sheet is
 * protected, RowMoved where its row stands elsewhere now.
 */
export function planChanges(
  { fields, rows }: LoadedChanges,
  system: ReturnType<typeof systemOf>,
  places: RowPlaces<AnyChange>,
): readonly CellWrite[] {
  for (const { change, table } of rows) {
    const key = change.cells[table.definition.columns[0]?.id ?? ""]?.before;
    if (key !== undefined) places.look(change, String(key), columnValues(table.keys));
  }
  places.settle();
  for (const { name, change, range } of fields) {
    refuseIfLocked(range.worksheet);
    refuseIfChanged(name, range.values[0]?.[0], change);
  }
  return [
    ...rows.flatMap((row) => planRow(row, system, places)),
    ...fields.map(({ name, change: { before, after }, range }) => ({
      place: { name },
      lines: [[{ was: before, becomes: after }]],
      sheet: range.worksheet.name,
    })),
  ];
}
