import type { UnitSystem } from "../../../../src/core/units/unit-system.ts";
import { asShown } from "../../../../src/joblog/evaluate/cell-value.ts";
import { EvaluatedLog } from "../../../../src/joblog/evaluate/evaluated-log.ts";
import type { TableId } from "../../../../src/joblog/formula/log-types.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import { typedContent } from "../../../../src/joblog/layout/typed-content.ts";
import type { LogContent, RowValue } from "../../../../src/joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { logOf } from "../../excel/log/prepared-log.ts";

/** Objects whose properties are worked out when they are first looked at. */
function whenAsked(object: object, name: string, value: () => unknown): void {
  Object.defineProperty(object, name, {
    configurable: true,
    enumerable: true,
    get: () => {
      const found = value();
      Object.defineProperty(object, name, { value: found, enumerable: true });
      return found;
    },
  });
}

/** A log of this content with its formulas worked out without a spreadsheet, each table when it is asked for. */
export function evaluated(content: LogContent, system: UnitSystem = "US"): LogSnapshot {
  const typed = typedContent(system, content);
  const log = new EvaluatedLog(jobLog, typed, [], "everything");
  const fields: Record<string, RowValue | undefined> = { ...typed.fields };
  const rows: Partial<Record<TableId, readonly AnyRow[]>> = {};
  for (const sheet of jobLog.sheets) {
    for (const { id, formula } of sheet.fields)
      if (formula !== undefined) whenAsked(fields, id, () => asShown(log.named(id)));
    for (const { id: table, columns, fixedRows } of sheet.tables) {
      const [first] = columns;
      const typedAt = new Set(typed.rows[table].map(({ position }) => position));
      whenAsked(rows, table, () =>
        Array.from({ length: log.linesIn(table) }, (_, position): AnyRow => ({
          position,
          cells: Object.fromEntries(columns.map(({ id }) => [id, asShown(log.cell(table, id, position))])),
        })).filter(({ position, cells }) =>
          fixedRows === true && first !== undefined ? cells[first.id] !== undefined : typedAt.has(position),
        ),
      );
    }
  }
  return { fields, rows: rows as LogSnapshot["rows"] };
}

/**
 * A log of this content with all its formulas worked out. Without a spreadsheet, in a hundredth of the time;
 * SHEETS=grid has the stand-in's grid do it, for which the contract of the two stands elsewhere.
 */
export function workedOut(
  content: LogContent,
  system: UnitSystem = "US",
  starts: readonly LogContent[] = [],
): Promise<LogSnapshot> {
  return process.env["SHEETS"] === "grid"
    ? logOf(content, system, starts)
    : Promise.resolve(evaluated(content, system));
}
