import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { References } from "../formula/formula-text.ts";
import type { TableId } from "../formula/log-types.ts";
import type { FieldDefinition, LogDefinition, TableDefinition } from "./definition.ts";
import { headerOf } from "./headers.ts";

/** In a structured reference `'`, `#`, `[` and `]` of a header carry an apostrophe (Excel's rule). */
export function escapeHeader(header: string): string {
  return header.replaceAll(/['#[\]]/g, "'$&");
}

/** The table of that id. Throws a RangeError where the log has none. */
export function findTable(log: LogDefinition, id: TableId): TableDefinition {
  for (const sheet of log.sheets) {
    const table = sheet.tables.find((one) => one.id === id);
    if (table !== undefined) return table;
  }
  throw new RangeError(`The log has no table "${id}".`);
}

/** The named cell of that id. Throws a RangeError where the log has none. */
export function findField(log: LogDefinition, id: string): FieldDefinition {
  for (const sheet of log.sheets) {
    const field = sheet.fields.find((one) => one.id === id);
    if (field !== undefined) return field;
  }
  throw new RangeError(`The log has no field "${id}".`);
}

function headerIn(table: TableDefinition, column: string, system: UnitSystem): string {
  const found = table.columns.find((one) => one.id === column);
  if (found === undefined) throw new RangeError(`Table ${table.name} has no column "${column}".`);
  return escapeHeader(headerOf(found, system));
}

/**
 * Names for formulas that stand in `table` (fields stand in none and cannot say `here`). Every name
 * is in the full form that Excel stores. Throws a RangeError on an id that the log does not know.
 */
export function referencesFor(log: LogDefinition, table: TableDefinition | undefined, system: UnitSystem): References {
  const part = (area: string, owner: TableDefinition, column: string): string =>
    `${owner.name}[[${area}],[${headerIn(owner, column, system)}]]`;
  const inThisRow = (...columns: readonly string[]): string => {
    if (table === undefined)
      throw new RangeError(`A field has no row, so it cannot refer to its "${columns.join(" to ")}".`);
    return `${table.name}[[#This Row],${columns.map((column) => `[${headerIn(table, column, system)}]`).join(":")}]`;
  };
  return {
    here: (column) => inThisRow(column),
    hereTo: (first, last) => inThisRow(first, last),
    all: (id, column) => part("#Data", findTable(log, id), column),
    header: (id, column) => part("#Headers", findTable(log, id), column),
    named: (field) => findField(log, field).name,
  };
}
