import type { TableId } from "../../../src/joblog/formula/log-types.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import type { InputColumn, LogContent, RowValue, UnitOf } from "../../../src/joblog/model/definition.ts";
import { findField, findTable } from "../../../src/joblog/model/references.ts";
import { readInput } from "../../../src/pane/controls/read-input.ts";
import type { Played } from "../../../src/pane/demo/play-week.ts";
import type { WeekEvent } from "../../../src/pane/demo/week-event.ts";
import { inOtherUnit, type OtherSystem } from "./conversion.ts";

/** Fields that hold a difference of temperatures: no 32 to take off. */
export const temperatureDifferences: readonly string[] = [
  "temperatureGap",
  "baths.temperatureSpread",
  "readings.degreesApart",
];

function valueIn(
  value: RowValue | undefined,
  unit: UnitOf | undefined,
  to: OtherSystem,
  id: string,
): RowValue | undefined {
  return typeof value === "number"
    ? inOtherUnit(value, unit, to, temperatureDifferences.includes(id) ? "difference" : "figure")
    : value;
}

/** What a US log holds, as a shop with other units would have typed it into its sheets. */
export function contentIn({ fields, rows }: LogContent, to: OtherSystem): LogContent {
  return {
    fields: Object.fromEntries(
      Object.entries(fields).map(([id, value]) => [id, valueIn(value, findField(jobLog, id).unit, to, id)]),
    ),
    rows: Object.fromEntries(
      Object.entries(rows).map(([table, lines]) => {
        const units = new Map(findTable(jobLog, table as TableId).columns.map(({ id, unit }) => [id, unit]));
        return [
          table,
          lines.map((line) =>
            Object.fromEntries(Object.entries(line).map(([id, value]) => [id, valueIn(value, units.get(id), to, id)])),
          ),
        ];
      }),
    ),
  };
}

/** Twelve figures: more than the ten that a form keeps of a figure in another unit, and no noise of the division behind them. */
function typedIn(column: InputColumn, text: string, to: OtherSystem): string {
  if (column.unit === undefined || column.unit.US === column.unit[to]) return text;
  const reading = readInput(column, "US", text);
  if (reading.read !== "value" || typeof reading.value !== "number")
    throw new TypeError(`${column.id}: "${text}" is no figure.`);
  return String(Number(inOtherUnit(reading.value, column.unit, to).toPrecision(12)));
}

/** The same entry as a shop with other units types it: bare figures, by the units that the US form showed. */
export function eventIn({ event, filled }: Played, to: OtherSystem): WeekEvent {
  const columns = new Map(
    filled.groups.flatMap(({ fields }) => fields.map(({ key, column }) => [key, column] as const)),
  );
  const draft = Object.entries(event.draft).map(([key, text = ""]): readonly [string, string] => {
    const column = columns.get(key);
    return [key, column === undefined ? text : typedIn(column, text, to)];
  });
  return { ...event, draft: Object.fromEntries(draft) };
}
