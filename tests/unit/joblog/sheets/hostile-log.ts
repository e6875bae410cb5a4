import type { ColumnId } from "../../../../src/joblog/formula/log-names.ts";
import type { TableId } from "../../../../src/joblog/formula/log-types.ts";
import type { Cells, LogContent, LogRow } from "../../../../src/joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { daysBaseline } from "../../../demo/days/demo-week.ts";
import { demoBath as bath, moment } from "../../../demo/demo-week-times.ts";
import { baselinesWritten } from "../evaluate/baselines-written.ts";
import { workedOut } from "../evaluate/worked-out.ts";
import { weekWith } from "./week-of-sheets.ts";

/** The invented week with something on every sheet that reckons. */
export const fullWeek: LogContent = (() => {
  const { fields, rows } = weekWith({ sewerLow: 6, sewerHigh: 10, permit: "P-1" });
  return {
    fields,
    rows: {
      ...rows,
      baths: (rows.baths ?? []).map((row) => (row.bath === bath ? { ...row, ...daysBaseline } : row)),
      tanks: (rows.tanks ?? []).map((tank) => ({ ...tank, dragOut: 0.2 })),
      readings: (rows.readings ?? []).map((reading) => ({ ...reading, pTitre: 1.43, tTitre: 2.18 })),
      additions: [
        ...(rows.additions ?? []),
        {
          id: "W1",
          bath,
          when: moment(0, "06:55"),
          kind: "water",
          purpose: "opening",
          amount: 117,
          water: "RO",
          account: "claims",
        },
        {
          id: "W2",
          bath,
          when: moment(1, "17:00"),
          kind: "water",
          purpose: "make-up",
          amount: 8.05,
          water: "CITY",
          account: "claims",
          levelBefore: 23.4,
          levelAfter: 25,
        },
      ],
      meterChecks: [
        {
          id: "M1",
          meter: "M-1",
          when: moment(0, "08:00"),
          buffer1: 7,
          asFound1: 7.01,
          mv1: -4.1,
          buffer2: 10.01,
          asFound2: 10.02,
          mv2: -178.4,
          asLeft1: 7,
          asLeft2: 10.01,
          temperature: 77,
        },
        {
          id: "M2",
          meter: "M-1",
          when: moment(3, "08:05"),
          buffer1: 7,
          asFound1: 7.06,
          mv1: -9.8,
          buffer2: 10.01,
          asFound2: 10.15,
          mv2: -180.9,
          asLeft1: 7,
          asLeft2: 10.01,
          temperature: 77,
        },
      ],
      releases: [
        {
          id: "X1",
          bath,
          when: moment(5, "09:30"),
          volume: 120,
          ph: 11.22,
          temperature: 76,
          alkalinity: 683,
          acid: "citric",
          target: 8.5,
        },
      ],
    },
  };
})();

/** The week with some tables' rows made anew from its own. */
export function weekWhere(change: {
  readonly [Table in TableId]?: (row: LogRow<Table>, index: number) => LogRow<Table>;
}): LogContent {
  const changed: Readonly<Partial<Record<string, (row: Cells, index: number) => Cells>>> = change;
  const rows = Object.entries<readonly Cells[]>(fullWeek.rows).map(
    ([id, lines]) => [id, lines.map((row, index) => changed[id]?.(row, index) ?? row)] as const,
  );
  return { fields: fullWeek.fields, rows: Object.fromEntries(rows) };
}

export async function weekOf(content: LogContent, start: LogContent = fullWeek): Promise<LogSnapshot> {
  return workedOut(await baselinesWritten(content), "US", [start]);
}

/** Cells and fields that show an error; a chart passes over its #N/A. */
export function errorsIn(log: LogSnapshot): readonly string[] {
  const isError = (value: unknown): boolean => typeof value === "string" && value.startsWith("#");
  const inTables = Object.entries<readonly AnyRow[]>(log.rows).flatMap(([table, rows]) =>
    rows.flatMap(({ position, cells }) =>
      Object.entries(cells)
        .filter(([column, value]) => isError(value) && !column.startsWith("chart"))
        .map(([column, value]) => `${table}.${column} row ${String(position)}: ${String(value)}`),
    ),
  );
  return [
    ...inTables,
    ...Object.entries(log.fields)
      .filter(([, value]) => isError(value))
      .map(([id, value]) => `${id}: ${String(value)}`),
  ];
}

/** What a row, known by its first column, shows in a column. */
export function shown<Table extends TableId>(
  log: LogSnapshot,
  table: Table,
  key: string,
  column: ColumnId<Table>,
): unknown {
  const row = log.rows[table].find(({ cells }) => Object.values(cells)[0] === key);
  if (row === undefined) throw new RangeError(`${table} has no row ${key}.`);
  const { cells } = row;
  return cells[column];
}
