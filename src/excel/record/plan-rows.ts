/** Which lines go where, decided before the first cell is written. */
import type { UnitSystem } from "../../core/units/unit-system.ts";
import { columnFormula } from "../../joblog/layout/written-formula.ts";
import type {
  Cells,
  ColumnDefinition,
  LogDefinition,
  RowValue,
  TableDefinition,
} from "../../joblog/model/definition.ts";
import { freeNumbers } from "../../joblog/model/running-number.ts";
import { isSameText } from "../../joblog/model/same-text.ts";
import { cellValue } from "../cell-text.ts";
import { LogProblem } from "../office-problems.ts";
import { columnPositions } from "../table-columns.ts";
import { type AppendTarget, columnValues, refuseIfLocked } from "./append-target.ts";

type Positions = ReadonlyMap<ColumnDefinition, number>;

/** `null` leaves a cell as it is. */
type Line = readonly (RowValue | null)[];

interface CellFill {
  readonly position: number;
  readonly at: number;
  readonly column: string;
  readonly key: string;
  readonly value: RowValue;
}

export interface PlannedTable {
  readonly target: AppendTarget;
  /** How far the table must grow. */
  readonly extra: number;
  readonly lines: readonly { readonly position: number; readonly line: Line; readonly row: Cells }[];
  readonly fills: readonly CellFill[];
  /** Where each column of the log stands in the table. */
  readonly positions: Positions;
}

function lineOf(target: AppendTarget, row: Cells, positions: Positions, log: LogDefinition, system: UnitSystem): Line {
  const line: (RowValue | null)[] = Array.from({ length: target.body.columnCount }, () => null);
  for (const [column, at] of positions) {
    if (column.role === "computed") line[at] = columnFormula(column, target.definition, log, system);
    else {
      const value = row[column.id];
      if (value !== undefined) line[at] = cellValue(value);
    }
  }
  return line;
}

/** The first data row beneath everything that a person has typed; blank lines further up stay blank. */
function firstFree({ used, body }: AppendTarget): number {
  const ends = used.flatMap(({ range }) =>
    range.isNullObject ? [] : [range.rowIndex + range.rowCount - body.rowIndex],
  );
  return Math.max(0, ...ends);
}

function refuseIfNoRoom({ definition, worksheet, body, below }: AppendTarget, extra: number): void {
  const firstBelow = body.rowIndex + body.rowCount + 1;
  if (below.values.slice(0, extra).some((line) => line.some((value) => value !== ""))) {
    throw new LogProblem({
      what: `The table ${definition.name} is full, and the cells under it on sheet ${worksheet.name} are not blank. Nothing was written.`,
      remedy: `On that sheet, right-click row number ${String(firstBelow)}, choose Insert to make room under the table, then try again. Your entry stays here.`,
    });
  }
}

/** Tables whose keys other tables look up: a second row of the same key would never be found. */
const isLookedUp = (log: LogDefinition, { id }: TableDefinition): boolean =>
  log.sheets
    .flatMap(({ tables }) => tables.flatMap(({ columns }) => columns))
    .some((column) => column.role === "input" && column.choices?.kind === "column" && column.choices.table === id);

function takenKey({ definition, sheet }: AppendTarget, key: string): LogProblem {
  return new LogProblem({
    what: `The table ${definition.name} (sheet ${sheet}) holds a row ${key} by now; somebody was faster. Nothing was written.`,
    remedy: "Your entry stays here. Give it another name, or correct that row.",
  });
}

/** The rows with numbers that no other row bears. A number that somebody gave is never changed: it may stand on a tag. */
function numberedRows(target: AppendTarget, log: LogDefinition, idsAsGiven: boolean): readonly Cells[] {
  const { definition, rows } = target;
  const [key] = definition.columns;
  const letter = definition.entry?.letter;
  const renumbers = letter !== undefined && !idsAsGiven;
  if (key === undefined || (letter === undefined && !isLookedUp(log, definition))) return rows;
  const taken = columnValues(target.keys)
    .map(String)
    .filter((one) => one !== "");
  const wanted = rows.map((row) => (row[key.id] === undefined ? undefined : String(row[key.id])));
  if (renumbers)
    return freeNumbers(wanted, taken, letter).map((id, index) =>
      id === wanted[index] ? (rows[index] ?? {}) : { ...rows[index], [key.id]: id },
    );
  const inUse = wanted.find((one) => one !== undefined && taken.some((other) => isSameText(one, other)));
  if (inUse !== undefined) throw takenKey(target, inUse);
  return rows;
}

function changedMeanwhile({ definition, sheet }: AppendTarget, key: string): LogProblem {
  return new LogProblem({
    what: `The row ${key} of table ${definition.name} (sheet ${sheet}) was changed or deleted meanwhile. Nothing was written.`,
    remedy: "Your entry stays here. Look at it again with the new values, then record it.",
  });
}

function severalRows({ definition, sheet }: AppendTarget, key: string): LogProblem {
  return new LogProblem({
    what: `Two rows of table ${definition.name} (sheet ${sheet}) bear the number ${key}, so it is not known which one is meant. Nothing was written.`,
    remedy: "Give one of them another number on that sheet, then record this again. Your entry stays here.",
  });
}

/** Cells to fill in; throws a LogProblem where their row is gone or a cell holds something else by now. */
function planFills(target: AppendTarget, positions: Positions): readonly CellFill[] {
  const { read, fills } = target;
  const columns = new Map(
    read.flatMap(({ column, range }) =>
      range.isNullObject ? [] : [[column, range.values.map((line) => line[0] as unknown)] as const],
    ),
  );
  const keys = columnValues(target.keys).map(String);
  return fills.flatMap(({ key, cells }) => {
    const position = keys.indexOf(key);
    if (position !== keys.lastIndexOf(key)) throw severalRows(target, key);
    return [...columns].flatMap(([column, values]): readonly CellFill[] => {
      const value = cells[column.id];
      const at = positions.get(column);
      if (value === undefined || at === undefined || values[position] === value) return [];
      if (values[position] !== "") throw changedMeanwhile(target, key);
      return [{ position, at, column: column.id, key, value }];
    });
  });
}

/** Throws a LogProblem where the sheet is protected, a column is missing, a key is taken or there is no room below. */
export function planTable(
  target: AppendTarget,
  log: LogDefinition,
  system: UnitSystem,
  idsAsGiven: boolean,
): PlannedTable {
  refuseIfLocked(target.worksheet);
  const positions = columnPositions(target.definition, target.sheet, target.headers.values[0] ?? [], system);
  const first = firstFree(target);
  const extra = Math.max(0, first + target.rows.length - target.body.rowCount);
  refuseIfNoRoom(target, extra);
  return {
    target,
    extra,
    lines: numberedRows(target, log, idsAsGiven).map((row, index) => ({
      position: first + index,
      line: lineOf(target, row, positions, log, system),
      row,
    })),
    fills: planFills(target, positions),
    positions,
  };
}
