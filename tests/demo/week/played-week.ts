import { serialOf } from "../../../src/advice/wording/moments.ts";
import type { TableId } from "../../../src/joblog/formula/log-types.ts";
import type { Cells, RowValue } from "../../../src/joblog/model/definition.ts";
import type { LogSnapshot, SnapshotRow } from "../../../src/joblog/model/log-snapshot.ts";
import { openBook, type Played, playWeek } from "../../../src/pane/demo/play-week.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { openWorkbook } from "../../unit/excel/log/open-workbook.ts";

/** The invented week after it was typed into the pane's forms, with the log as it stood after every entry. */
export interface PlayedWeek {
  readonly entries: readonly Played[];
  readonly log: LogSnapshot;
}

/** `present` is made for the new workbook and reads the log after each write. */
export async function playInNewWorkbook(present?: (host: Host) => () => Promise<LogSnapshot>): Promise<PlayedWeek> {
  const host = openWorkbook();
  const entries: Played[] = [];
  const log = await playWeek({
    ...(present === undefined ? {} : { book: { ...openBook, present: present(host) } }),
    afterEntry: (played) => {
      entries.push(played);
    },
  });
  host.answerLate(undefined);
  return { entries, log };
}

/** The log as it stood at a moment. */
export function logAt({ entries }: PlayedWeek, moment: string): LogSnapshot {
  const played = entries.filter(({ event }) => event.at <= moment).at(-1);
  if (played === undefined) throw new RangeError(`Nothing was typed before ${moment}.`);
  return played.log;
}

export function serial(moment: string): number {
  const found = serialOf(moment);
  if (found === undefined) throw new RangeError(`${moment} is no moment.`);
  return found;
}

export type CellsOf<Table extends TableId> = SnapshotRow<Table>["cells"];

/** The one row of a table that fits. */
export function row<Table extends TableId>(log: LogSnapshot, table: Table, fits: CellsOf<Table>): CellsOf<Table> {
  const wanted: Cells = fits;
  const found = log.rows[table].filter(({ cells }) => {
    const held: Cells = cells;
    return Object.entries(wanted).every(([column, value]) =>
      typeof value === "number" ? Math.abs(Number(held[column]) - value) < 1e-6 : held[column] === value,
    );
  });
  const [one] = found;
  if (one === undefined || found.length !== 1)
    throw new RangeError(`${String(found.length)} rows of ${table} fit ${JSON.stringify(fits)}.`);
  return one.cells;
}

export function number<Column extends string>(
  cells: { readonly [Id in Column]?: RowValue | undefined },
  column: Column,
): number {
  const value = cells[column];
  if (typeof value !== "number") throw new TypeError(`${column} holds ${JSON.stringify(value)}, no number.`);
  return value;
}

/** A reading of a bath by its moment. */
export function reading(log: LogSnapshot, bath: string, when: string): CellsOf<"readings"> {
  return row(log, "readings", { bath, when: serial(when) });
}
