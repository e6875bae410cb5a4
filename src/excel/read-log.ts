import type { LogDefinition, RowValue, TableDefinition, TableId } from "../joblog/definition.ts";
import type { LogSnapshot, SnapshotRow } from "../joblog/log-snapshot.ts";
import { LogProblem, officeCode } from "./office-problems.ts";
import { columnPositions, logTables, systemOf } from "./table-columns.ts";

function cellContent(value: unknown): RowValue | undefined {
  if (value === "") return undefined;
  return typeof value === "number" || typeof value === "boolean" || typeof value === "string" ? value : undefined;
}

function rowsOf(
  table: TableDefinition,
  sheet: string,
  headers: readonly unknown[],
  body: readonly (readonly unknown[])[],
  system: Parameters<typeof columnPositions>[3],
): readonly SnapshotRow[] {
  const positions = columnPositions(table, sheet, headers, system);
  return body.flatMap((line, position) => {
    const cells: Record<string, RowValue | undefined> = {};
    for (const [column, at] of positions) cells[column.id] = cellContent(line[at]);
    const written = table.columns.some((column) => column.role === "input" && cells[column.id] !== undefined);
    return written ? [{ position, cells }] : [];
  });
}

/** After Excel could not find something: says whether there is no log at all or which part is gone. */
async function explainMissing(context: Excel.RequestContext, log: LogDefinition): Promise<undefined> {
  const { workbook } = context;
  workbook.tables.load("items/name");
  workbook.names.load("items/name");
  await context.sync();
  const tableNames = new Set(workbook.tables.items.map((table) => table.name));
  const cellNames = new Set(workbook.names.items.map((item) => item.name));
  const tables = logTables(log);
  if (!tables.some(({ table }) => tableNames.has(table.name))) return undefined;
  const table = tables.find((one) => !tableNames.has(one.table.name));
  const remedy = "Undo the change (Ctrl+Z), or build the log again: it adds what is missing and leaves your rows alone.";
  if (table !== undefined) {
    throw new LogProblem({
      what: `The log is damaged: the table ${table.table.name} (sheet ${table.sheet.name}) is missing or renamed.`,
      remedy,
    });
  }
  const field = log.sheets.flatMap((sheet) => sheet.fields).find((one) => !cellNames.has(one.name));
  throw new LogProblem({
    what:
      field === undefined
        ? "The log is damaged: a named cell was deleted."
        : `The log is damaged: the named cell ${field.name} ("${field.label}") is missing or renamed.`,
    remedy,
  });
}

/** The whole log in one read trip; undefined where the workbook holds no log. Throws a LogProblem for a damaged one. */
export async function readTables(context: Excel.RequestContext, log: LogDefinition): Promise<LogSnapshot | undefined> {
  const { workbook } = context;
  const fields = log.sheets
    .flatMap((sheet) => sheet.fields)
    .map((field) => ({ field, range: workbook.names.getItem(field.name).getRange().load("values") }));
  const tables = logTables(log).map(({ table, sheet }) => {
    const found = workbook.tables.getItem(table.name);
    return {
      table,
      sheet,
      headers: found.getHeaderRowRange().load("values"),
      body: found.getDataBodyRange().load("values"),
    };
  });
  try {
    await context.sync();
  } catch (error) {
    if (officeCode(error) !== "ItemNotFound" && officeCode(error) !== "InvalidReference") throw error;
    return explainMissing(context, log);
  }
  const fieldValues = Object.fromEntries(fields.map(({ field, range }) => [field.id, cellContent(range.values[0]?.[0])]));
  const system = systemOf(fieldValues["unitSystem"]);
  const rows = Object.fromEntries(
    tables.map(({ table, sheet, headers, body }) => [table.id, rowsOf(table, sheet.name, headers.values[0] ?? [], body.values, system)]),
  ) as Record<TableId, readonly SnapshotRow[]>;
  return { fields: fieldValues, rows };
}
