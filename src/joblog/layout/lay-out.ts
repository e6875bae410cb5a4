import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { LogContent, LogDefinition } from "../model/definition.ts";
import type { WorkbookPlan } from "../model/plan.ts";
import { laidOutSheet } from "./lay-out-sheet.ts";
import { place } from "./placement.ts";

function startRows(log: LogDefinition, system: UnitSystem): LogContent["rows"] {
  return Object.fromEntries(
    log.sheets
      .flatMap((sheet) => sheet.tables)
      .flatMap(({ id, start }) => (start === undefined ? [] : [[id, start(system)]])),
  );
}

/** What stands in a new log that is filled with the content. */
export function filledContent(log: LogDefinition, system: UnitSystem, content: LogContent): LogContent {
  return {
    ...content,
    fields: { ...content.fields, unitSystem: system, logVersion: log.version },
    rows: { ...startRows(log, system), ...content.rows },
  };
}

/**
 * Lays the log out to the cell: sheets, tables with their formulas, checks, colours, charts, names.
 * The content's rows fill the tables from the top. Throws a RangeError where the description refers
 * to a table, column or field that it does not have.
 */
export function layOut(
  log: LogDefinition,
  settings: { readonly system: UnitSystem },
  content: LogContent,
): WorkbookPlan {
  const { system } = settings;
  const filled = filledContent(log, system, content);
  const placement = place(log, system, filled);
  return {
    version: log.version,
    released: log.released,
    sheets: placement.sheets.map((placed) => laidOutSheet(placed, log, system, filled, placement)),
    names: placement.sheets.flatMap((placed) =>
      placed.fields.map(({ field, row, valueColumn }) => ({
        name: field.name,
        sheet: placed.sheet.name,
        row,
        column: valueColumn,
      })),
    ),
  };
}
