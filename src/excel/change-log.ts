import type { ColumnDefinition, LogDefinition, RowValue, TableId } from "../joblog/definition.ts";
import { jobLog } from "../joblog/job-log.ts";
import { findField } from "../joblog/references.ts";
import { refuseIfLocked, refuseIfReadOnly, tableOf } from "./append-ground.ts";
import { cellValue } from "./cell-text.ts";
import { LogProblem, problemFrom } from "./office-problems.ts";
import { columnPositions, systemOf } from "./table-columns.ts";

/** What a cell held when the person saw it, and what it is to hold; undefined is blank. */
export interface CellChange {
  readonly before: RowValue | undefined;
  readonly after: RowValue | undefined;
}

/** Typed cells of a row, by column. */
export interface RowChange {
  readonly table: TableId;
  /** Counts the table's data rows from 0. */
  readonly position: number;
  readonly cells: Readonly<Record<string, CellChange>>;
}

export interface LogChanges {
  /** Named cells, by field. */
  readonly fields?: Readonly<Record<string, CellChange>>;
  readonly rows?: readonly RowChange[];
}

interface LoadedField {
  readonly name: string;
  readonly change: CellChange;
  readonly range: Excel.Range;
}

interface LoadedRow {
  readonly change: RowChange;
  readonly worksheet: Excel.Worksheet;
  readonly headers: Excel.Range;
  readonly line: Excel.Range;
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

function loadRow(context: Excel.RequestContext, log: LogDefinition, change: RowChange): LoadedRow {
  const table = context.workbook.tables.getItem(tableOf(log, change.table).table.name);
  const { worksheet } = table;
  worksheet.load("name");
  worksheet.protection.load("protected");
  const line = table.getDataBodyRange().getRow(0).getOffsetRange(change.position, 0).load("values");
  return { change, worksheet, headers: table.getHeaderRowRange().load("values"), line };
}

const written = ({ after }: CellChange): RowValue => (after === undefined ? "" : cellValue(after));

/** Every cell to write, checked against what the person saw. */
function planRow({ change, worksheet, headers, line }: LoadedRow, log: LogDefinition, system: ReturnType<typeof systemOf>): readonly (() => void)[] {
  refuseIfLocked(worksheet);
  const { table, sheet } = tableOf(log, change.table);
  const positions: ReadonlyMap<ColumnDefinition, number> = columnPositions(table, sheet.name, headers.values[0] ?? [], system);
  return [...positions].flatMap(([column, at]) => {
    const cell = change.cells[column.id];
    if (cell === undefined || column.role !== "input") return [];
    refuseIfChanged(`${column.label} (${sheet.name})`, line.values[0]?.[at], cell);
    return [() => { line.getCell(0, at).values = [[written(cell)]]; }];
  });
}

/**
 * Changes typed cells and named cells of the log: one read trip, one write trip. Throws a LogProblem, with
 * nothing changed, where a cell no longer holds what the person saw or where it cannot be written.
 */
export async function changeCells(context: Excel.RequestContext, log: LogDefinition, { fields = {}, rows = [] }: LogChanges): Promise<void> {
  const unitCell = context.workbook.names.getItem(findField(log, "unitSystem").name).getRange().load("values");
  context.workbook.load("readOnly");
  const loadedFields = Object.entries(fields).map(([id, change]) => loadField(context, log, id, change));
  const loadedRows = rows.map((change) => loadRow(context, log, change));
  await context.sync();
  refuseIfReadOnly(context.workbook);
  const system = systemOf(unitCell.values[0]?.[0]);
  for (const { name, change, range } of loadedFields) {
    refuseIfLocked(range.worksheet);
    refuseIfChanged(name, range.values[0]?.[0], change);
  }
  const writes = loadedRows.flatMap((row) => planRow(row, log, system));
  for (const { change, range } of loadedFields) range.values = [[written(change)]];
  for (const write of writes) write();
  await context.sync();
}

/** Changes cells of the open workbook's log; every failure is a LogProblem. */
export async function changeLog(changes: LogChanges): Promise<void> {
  try {
    await Excel.run((context) => changeCells(context, jobLog, changes));
  } catch (error) {
    throw problemFrom(error);
  }
}
