import type { TableId } from "../../joblog/formula/log-types.ts";
import type { LogDefinition, RowValue, TableDefinition } from "../../joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { findField } from "../../joblog/model/references.ts";
import { folded } from "../../joblog/model/same-text.ts";
import { DamagedLog, NewerLog, OlderLog } from "../log-problems.ts";
import { columnPositions, logTables, systemOf } from "../table-columns.ts";

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
): readonly AnyRow[] {
  const positions = columnPositions(table, sheet, headers, system);
  return body.flatMap((line, position) => {
    const cells: Record<string, RowValue | undefined> = {};
    for (const [column, at] of positions) cells[column.id] = cellContent(line[at]);
    const [first] = table.columns;
    const written =
      table.fixedRows === true && first !== undefined
        ? cells[first.id] !== undefined
        : table.columns.some((column) => column.role === "input" && cells[column.id] !== undefined);
    return written ? [{ position, cells }] : [];
  });
}

/** Throws OlderLog or NewerLog where the log's cell names another version; a blank or foreign value is left to the checks that follow. */
function refuseOtherVersion(value: unknown, log: LogDefinition): void {
  if (typeof value !== "number" || value === log.version) return;
  throw value < log.version ? new OlderLog(value, log.version) : new NewerLog(value, log.version);
}

/**
 * After Excel could not find a part of the log: undefined where there is no log at all, else a LogProblem
 * that names the part or says that the log is of another version. Wants a context of its own: one whose batch failed is spent.
 */
export async function explainMissing(context: Excel.RequestContext, log: LogDefinition): Promise<undefined> {
  const { workbook } = context;
  workbook.tables.load("items/name");
  workbook.names.load("items/name");
  const version = workbook.names
    .getItemOrNullObject(findField(log, "logVersion").name)
    .getRangeOrNullObject()
    .load("values");
  await context.sync();
  const tableNames = new Set(workbook.tables.items.map((table) => folded(table.name)));
  const cellNames = new Set(workbook.names.items.map((item) => folded(item.name)));
  const tables = logTables(log);
  const fields = log.sheets.flatMap((sheet) => sheet.fields);
  // A table of the log's name alone can be the shop's own; the named cells are the log's mark.
  if (
    !fields.some((field) => cellNames.has(folded(field.name))) ||
    !tables.some(({ table }) => tableNames.has(folded(table.name)))
  )
    return undefined;
  if (!version.isNullObject) refuseOtherVersion(version.values[0]?.[0], log);
  const table = tables.find((one) => !tableNames.has(folded(one.table.name)));
  const remedy = "Undo the change (Ctrl+Z), or choose Add what is missing: it leaves your rows alone.";
  if (table !== undefined) {
    throw new DamagedLog({
      what: `The log is damaged: the table ${table.table.name} (sheet ${table.sheet.name}) is missing or renamed.`,
      remedy,
    });
  }
  const field = fields.find((one) => !cellNames.has(folded(one.name)));
  throw new DamagedLog({
    what:
      field === undefined
        ? "The log is damaged: a named cell was deleted."
        : `The log is damaged: the named cell ${field.name} ("${field.label}") is missing or renamed.`,
    remedy,
  });
}

/**
 * The whole log in one read trip. Throws Office's ItemNotFound where a part is missing, a LogProblem where
 * a column is or the log is of another version.
 */
export async function readTables(context: Excel.RequestContext, log: LogDefinition): Promise<LogSnapshot> {
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
  await context.sync();
  const fieldValues = Object.fromEntries(
    fields.map(({ field, range }) => [field.id, cellContent(range.values[0]?.[0])]),
  );
  refuseOtherVersion(fieldValues["logVersion"], log);
  const system = systemOf(fieldValues["unitSystem"]);
  const rows = Object.fromEntries(
    tables.map(({ table, sheet, headers, body }) => [
      table.id,
      rowsOf(table, sheet.name, headers.values[0] ?? [], body.values, system),
    ]),
  ) as Record<TableId, readonly AnyRow[]>;
  return { fields: fieldValues, rows };
}
