import { jobLog } from "../../../src/joblog/job-log.ts";
import type { Cells, ColumnDefinition, RowValue, UnitOf } from "../../../src/joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import { mass, priceByVolume, volume } from "../../../src/joblog/model/units-of.ts";
import { inOtherUnit, type OtherSystem } from "./conversion.ts";
import { temperatureDifferences } from "./week-in.ts";

/** A millionth of the unit or of the figure, whichever is more: a form keeps ten figures of an amount, and the stock's variance six decimals. */
const tolerance = 1e-6;

/** Helper columns that hold an amount or a price without a unit in the header. */
const unitsUnsaid: Readonly<Record<string, UnitOf>> = {
  "additions.price": priceByVolume,
  "additions.dayIssue": volume,
  "readings.roundAmount": volume,
};

/** Columns that name a unit in words. */
const unitsNamed: Readonly<Record<string, readonly UnitOf[]>> = { "releases.acidUnit": [mass, volume] };

/** The one cell that is not compared. */
const namesTheSystem = "unitSystem";

function differs(
  ours: RowValue | undefined,
  theirs: RowValue | undefined,
  unit: UnitOf | undefined,
  to: OtherSystem,
  id: string,
): boolean {
  const named = unitsNamed[id];
  if (named !== undefined && ours !== undefined) return !named.some((one) => one.US === ours && one[to] === theirs);
  if (typeof ours !== "number" || typeof theirs !== "number") return ours !== theirs;
  const expected = inOtherUnit(ours, unit, to, temperatureDifferences.includes(id) ? "difference" : "figure");
  return !(Math.abs(theirs - expected) <= tolerance * Math.max(1, Math.abs(expected)));
}

const unitOf = (table: string, column: ColumnDefinition): UnitOf | undefined =>
  column.unit ?? unitsUnsaid[`${table}.${column.id}`];

export interface Comparison {
  /** Cells that are not the same thing in both logs. */
  readonly unlike: readonly string[];
  /** Columns and named cells that had something to compare. */
  readonly filled: ReadonlySet<string>;
}

/** Holds every cell of every table and every named cell of two logs against each other, inputs and helpers as well; words must be the same. */
export function compareLogs(us: LogSnapshot, other: LogSnapshot, to: OtherSystem): Comparison {
  const unlike: string[] = [];
  const filled = new Set<string>();
  const hold = (
    id: string,
    place: string,
    ours: RowValue | undefined,
    theirs: RowValue | undefined,
    unit: UnitOf | undefined,
  ): void => {
    if (ours !== undefined) filled.add(id);
    if (differs(ours, theirs, unit, to, id)) unlike.push(`${id}${place}: US ${String(ours)}, ${to} ${String(theirs)}`);
  };
  const named: readonly [Cells, Cells] = [us.fields, other.fields];
  for (const { fields, tables } of jobLog.sheets) {
    for (const { id, unit } of fields) {
      if (id !== namesTheSystem) hold(id, "", named[0][id], named[1][id], unit);
    }
    for (const { id, columns } of tables) {
      const ours: readonly AnyRow[] = us.rows[id];
      const theirs: readonly AnyRow[] = other.rows[id];
      if (ours.length !== theirs.length)
        unlike.push(`${id}: US ${String(ours.length)} rows, ${to} ${String(theirs.length)}`);
      ours.forEach(({ position, cells }, index) => {
        for (const column of columns)
          hold(
            `${id}.${column.id}`,
            ` row ${String(position)}`,
            cells[column.id],
            theirs[index]?.cells[column.id],
            unitOf(id, column),
          );
      });
    }
  }
  return { unlike, filled };
}

/** Ids of all columns and named cells of the log, but for the one that names the system. */
export const everything: readonly string[] = jobLog.sheets.flatMap(({ fields, tables }) => [
  ...fields.map(({ id }) => id).filter((id) => id !== namesTheSystem),
  ...tables.flatMap(({ id, columns }) => columns.map((column) => `${id}.${column.id}`)),
]);
