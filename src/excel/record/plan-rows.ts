/** Which lines go where, decided before the first cell is written. */
import type { UnitSystem } from "../../core/units/unit-system.ts";
import { columnFormula } from "../../joblog/layout/written-formula.ts";
import type {
  Cells,
  ColumnDefinition,
  ComputedColumn,
  LogDefinition,
  RowValue,
  TableDefinition,
} from "../../joblog/model/definition.ts";
import { freeNumbers } from "../../joblog/model/running-number.ts";
import { isSameText } from "../../joblog/model/same-text.ts";
import { LogProblem } from "../office-problems.ts";
import { columnPositions } from "../table-columns.ts";
import { type AppendTarget, refuseIfLocked } from "./append-target.ts";
import { columnValues } from "./loaded-table.ts";
import { type CellWrite, type PlannedCell, rowsWrite, type WritePlan } from "./planned-write.ts";
import type { FilledCells, WrittenRow } from "./receipt.ts";

type Positions = ReadonlyMap<ColumnDefinition, number>;

/** What goes into one table, and what its receipt says of it. */
export interface PlannedTable extends WritePlan {
  readonly rows: readonly WrittenRow[];
  readonly fills: readonly FilledCells[];
}

function placesOf(role: ColumnDefinition["role"], positions: Positions): readonly number[] {
  return [...positions].flatMap(([column, at]) => (column.role === role ? [at] : [])).sort((a, b) => a - b);
}

/** Formulas stand in the first line only, from which they are copied: a row of them can weigh 15 kB. */
function lineOf(
  row: Cells,
  positions: Positions,
  formula: (column: ComputedColumn) => string | undefined,
): ReadonlyMap<number, PlannedCell> {
  return new Map(
    [...positions].flatMap(([column, at]): readonly (readonly [number, PlannedCell])[] => {
      if (column.role === "computed") return [[at, { formula: formula(column) }]];
      const value = row[column.id];
      return value === undefined ? [] : [[at, { was: undefined, becomes: value }]];
    }),
  );
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
    what: `Two rows of table ${definition.name} (sheet ${sheet}) have the number ${key}, so it is not known which one is meant. Nothing was written.`,
    remedy: "Give one of them another number on that sheet, then record this again. Your entry stays here.",
  });
}

interface PlannedFills {
  readonly writes: readonly CellWrite[];
  readonly filled: readonly FilledCells[];
}

/** Cells to fill in; throws a LogProblem where their row is gone or a cell holds something else by now. */
function planFills(target: AppendTarget, positions: Positions): PlannedFills {
  const { definition, sheet, read, fills } = target;
  const [keyColumn] = definition.columns;
  const columns = new Map(
    read.flatMap(({ column, range }) =>
      range.isNullObject ? [] : [[column, range.values.map((line) => line[0] as unknown)] as const],
    ),
  );
  const keys = columnValues(target.keys);
  const texts = keys.map(String);
  const planned = fills.flatMap(({ key, cells }) => {
    const position = texts.indexOf(key);
    if (position < 0) throw changedMeanwhile(target, key);
    if (position !== texts.lastIndexOf(key)) throw severalRows(target, key);
    const blanks = [...columns].flatMap(([column, values]) => {
      const value = cells[column.id];
      const at = positions.get(column);
      if (value === undefined || at === undefined || values[position] === value) return [];
      if (values[position] !== "") throw changedMeanwhile(target, key);
      return [{ column, at, value }];
    });
    if (blanks.length === 0) return [];
    const keyAt = keyColumn === undefined ? undefined : positions.get(keyColumn);
    const keyCell = { was: keys[position] as RowValue, becomes: keys[position] as RowValue };
    const line = new Map<number, PlannedCell>(blanks.map(({ at, value }) => [at, { was: undefined, becomes: value }]));
    if (keyAt !== undefined) line.set(keyAt, keyCell);
    const given = Object.fromEntries(blanks.map(({ column, value }) => [column.id, value]));
    return [
      {
        write: rowsWrite(sheet, { table: definition.name, position }, [line]),
        filled: { table: definition.id, position, key, cells: given },
      },
    ];
  });
  return { writes: planned.map(({ write }) => write), filled: planned.map(({ filled }) => filled) };
}

/** Throws a LogProblem where the sheet is protected, a column is missing, a key is taken or there is no room below. */
export function planTable(
  target: AppendTarget,
  log: LogDefinition,
  system: UnitSystem,
  idsAsGiven: boolean,
): PlannedTable {
  refuseIfLocked(target.worksheet);
  const { definition, sheet, body } = target;
  const { id, name: table } = definition;
  const positions = columnPositions(definition, sheet, target.headers.values[0] ?? [], system);
  const [inputs, computed] = [placesOf("input", positions), placesOf("computed", positions)];
  const first = firstFree(target);
  const extra = Math.max(0, first + target.rows.length - body.rowCount);
  refuseIfNoRoom(target, extra);
  const rows = numberedRows(target, log, idsAsGiven);
  const formulaOf = (column: ComputedColumn): string => columnFormula(column, definition, log, system);
  const lines = rows.map((row, index) => lineOf(row, positions, index === 0 ? formulaOf : () => undefined));
  const { writes: fills, filled } = planFills(target, positions);
  return {
    sizes: extra === 0 ? [] : [{ table, sheet, rowCount: body.rowCount, extra, inputs, computed }],
    writes: [...fills, ...(lines.length === 0 ? [] : [rowsWrite(sheet, { table, position: first }, lines)])],
    copies: rows.length < 2 ? [] : [{ table, position: first, rows: rows.length - 1, computed }],
    rows: rows.map((cells, index) => ({
      table: id,
      position: first + index,
      cells,
      grown: first + index >= body.rowCount,
    })),
    fills: filled,
  };
}
