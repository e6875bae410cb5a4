import type { ColumnId, FieldId } from "../../joblog/formula/log-names.ts";
import type { TableId } from "../../joblog/formula/log-types.ts";
import type { ColumnDefinition, LogDefinition, RowValue } from "../../joblog/model/definition.ts";
import { findField } from "../../joblog/model/references.ts";
import { cellValue } from "../cell-text.ts";
import { LogProblem } from "../office-problems.ts";
import { columnPositions, type systemOf } from "../table-columns.ts";
import { refuseIfLocked, tableOf } from "./append-target.ts";

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
  readonly worksheet: Excel.Worksheet;
  readonly headers: Excel.Range;
  readonly line: Excel.Range;
}

/** Cells to change as one read trip found them. */
export interface LoadedChanges {
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

function loadRow(context: Excel.RequestContext, log: LogDefinition, change: AnyChange): LoadedRow {
  const table = context.workbook.tables.getItem(tableOf(log, change.table).table.name);
  const { worksheet } = table;
  worksheet.load("name");
  worksheet.protection.load("protected");
  const line = table.getDataBodyRange().getRow(0).getOffsetRange(change.position, 0).load("values");
  return { change, worksheet, headers: table.getHeaderRowRange().load("values"), line };
}

/** Asks for the cells to change; readable after the next sync. */
export function loadChanges(
  context: Excel.RequestContext,
  log: LogDefinition,
  { fields = {}, rows = [] }: CellChanges,
): LoadedChanges {
  return {
    fields: Object.entries(fields).map(([id, change]) => loadField(context, log, id, change)),
    rows: rows.map((change) => loadRow(context, log, change)),
  };
}

const written = ({ after }: CellChange): RowValue => (after === undefined ? "" : cellValue(after));

function planRow(
  { change, worksheet, headers, line }: LoadedRow,
  log: LogDefinition,
  system: ReturnType<typeof systemOf>,
): readonly (() => void)[] {
  refuseIfLocked(worksheet);
  const { table, sheet } = tableOf(log, change.table);
  const positions: ReadonlyMap<ColumnDefinition, number> = columnPositions(
    table,
    sheet.name,
    headers.values[0] ?? [],
    system,
  );
  return [...positions].flatMap(([column, at]) => {
    const cell = change.cells[column.id];
    if (cell === undefined || column.role !== "input") return [];
    refuseIfChanged(`${column.label} (${sheet.name})`, line.values[0]?.[at], cell);
    return [
      () => {
        line.getCell(0, at).values = [[written(cell)]];
      },
    ];
  });
}

/** The writes, each checked against what the person saw. Throws a LogProblem where a cell changed since or its sheet is protected. */
export function planChanges(
  { fields, rows }: LoadedChanges,
  log: LogDefinition,
  system: ReturnType<typeof systemOf>,
): readonly (() => void)[] {
  for (const { name, change, range } of fields) {
    refuseIfLocked(range.worksheet);
    refuseIfChanged(name, range.values[0]?.[0], change);
  }
  return [
    ...rows.flatMap((row) => planRow(row, log, system)),
    ...fields.map(({ change, range }) => () => {
      range.values = [[written(change)]];
    }),
  ];
}
