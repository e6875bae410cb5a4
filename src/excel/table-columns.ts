import { type UnitSystem, unitSystems } from "../core/units/unit-system.ts";
import type { ColumnDefinition, LogDefinition, SheetDefinition, TableDefinition } from "../joblog/model/definition.ts";
import { headerOf } from "../joblog/model/headers.ts";
import { DamagedLog } from "./log-problems.ts";
import { LogProblem } from "./office-problems.ts";

/** The log's tables with the sheet each stands on. */
export function logTables(
  log: LogDefinition,
): readonly { readonly table: TableDefinition; readonly sheet: SheetDefinition }[] {
  return log.sheets.flatMap((sheet) => sheet.tables.map((table) => ({ table, sheet })));
}

/**
 * Where each column of the log stands in the table as it is now, counted from 0. Columns are known by
 * their header text, so a shop may move them and add its own; a missing or renamed one is a LogProblem.
 */
export function columnPositions(
  table: TableDefinition,
  sheet: string,
  headers: readonly unknown[],
  system: UnitSystem,
): ReadonlyMap<ColumnDefinition, number> {
  const positions = new Map<ColumnDefinition, number>();
  for (const column of table.columns) {
    const header = headerOf(column, system);
    const position = headers.indexOf(header);
    if (position < 0) {
      throw new DamagedLog({
        what: `The log is damaged: the column "${header}" of table ${table.name} (sheet ${sheet}) is missing or renamed.`,
        remedy: "Undo the change (Ctrl+Z) or give the column that heading again. Your rows are untouched.",
      });
    }
    positions.set(column, position);
  }
  return positions;
}

/** The unit system named in the log's own cell. */
export function systemOf(value: unknown): UnitSystem {
  const system = unitSystems.find((one) => one === value);
  if (system === undefined) {
    throw new LogProblem({
      what: `The log's unit system reads "${String(value)}".`,
      remedy: `Set the cell named Unit.System back to ${unitSystems.join(", ")}: whichever the log was built with.`,
    });
  }
  return system;
}
