import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { TableId } from "../formula/log-types.ts";
import { jobLog } from "../job-log.ts";
import type { Cells, LogContent, RowValue } from "../model/definition.ts";
import type { AnyRow, LogSnapshot } from "../model/log-snapshot.ts";
import { filledContent } from "./lay-out.ts";

const tables = jobLog.sheets
  .flatMap((sheet) => sheet.tables)
  .map(({ id, columns }) => ({ id, inputs: columns.flatMap((one) => (one.role === "input" ? [one.id] : [])) }));

const typedFields = jobLog.sheets.flatMap((sheet) => sheet.fields).filter(({ formula }) => formula === undefined);

/** "" stands for a cell that is cleared. */
const typed = (value: RowValue | undefined): RowValue | undefined => (value === "" ? undefined : value);

/** A log of this content as it would be read before any formula of it was worked out, without laying it out to the cell. */
export function typedContent(system: UnitSystem, given: LogContent): LogSnapshot {
  const content = filledContent(jobLog, system, given);
  const held: Cells = content.fields;
  const rows: Partial<Record<TableId, readonly AnyRow[]>> = {};
  for (const { id, inputs } of tables) {
    const lines: readonly Cells[] = content.rows[id] ?? [];
    rows[id] = lines.flatMap((line, position) => {
      const cells = Object.fromEntries(inputs.map((column) => [column, typed(line[column])]));
      return inputs.some((column) => cells[column] !== undefined) ? [{ position, cells }] : [];
    });
  }
  return {
    fields: Object.fromEntries(typedFields.map(({ id, initial }) => [id, typed(held[id] ?? initial?.[system])])),
    // Every table of the log is among them.
    rows: rows as LogSnapshot["rows"],
  };
}
