/** Which lines go where, decided before the first cell is written. */
import type { UnitSystem } from "../../core/units/unit-system.ts";
import { columnFormula } from "../../joblog/layout/written-formula.ts";
import type { Cells, ColumnDefinition, LogDefinition, RowValue } from "../../joblog/model/definition.ts";
import { cellValue } from "../cell-text.ts";
import { LogProblem } from "../office-problems.ts";
import { columnPositions } from "../table-columns.ts";
import { type AppendTarget, refuseIfLocked } from "./append-target.ts";

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
  /** Where in the table the columns stand that people type into, and those that are computed. */
  readonly inputs: readonly number[];
  readonly computed: readonly number[];
}

function placesOf(role: ColumnDefinition["role"], positions: Positions): readonly number[] {
  return [...positions].flatMap(([column, at]) => (column.role === role ? [at] : [])).sort((a, b) => a - b);
}

function typedLine({ body }: AppendTarget, row: Cells, positions: Positions): (RowValue | null)[] {
  const line: (RowValue | null)[] = Array.from({ length: body.columnCount }, () => null);
  for (const [column, at] of positions) {
    const value = row[column.id];
    if (column.role === "input" && value !== undefined) line[at] = cellValue(value);
  }
  return line;
}

/** Formulas stand in the first line only, from which they are copied: a row of them can weigh 15 kB. */
function linesOf(target: AppendTarget, positions: Positions, log: LogDefinition, system: UnitSystem): readonly Line[] {
  return target.rows.map((row, index) => {
    const line = typedLine(target, row, positions);
    for (const [column, at] of positions)
      if (index === 0 && column.role === "computed") line[at] = columnFormula(column, target.definition, log, system);
    return line;
  });
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

function changedMeanwhile({ definition, sheet }: AppendTarget, key: string): LogProblem {
  return new LogProblem({
    what: `The row ${key} of table ${definition.name} (sheet ${sheet}) was changed or deleted meanwhile. Nothing was written.`,
    remedy: "Your entry stays here. Look at it again with the new values, then record it.",
  });
}

/** Cells to fill in; throws a LogProblem where their row is gone or a cell holds something else by now. */
function planFills(target: AppendTarget, positions: Positions): readonly CellFill[] {
  const { definition, read, fills } = target;
  const columns = new Map(
    read.flatMap(({ column, range }) =>
      range.isNullObject ? [] : [[column, range.values.map((line) => line[0] as unknown)] as const],
    ),
  );
  const [first] = definition.columns;
  const keys = first === undefined ? [] : (columns.get(first) ?? []);
  return fills.flatMap(({ key, cells }) => {
    const position = keys.findIndex((one) => String(one) === key);
    return [...columns].flatMap(([column, values]): readonly CellFill[] => {
      const value = cells[column.id];
      const at = positions.get(column);
      if (value === undefined || at === undefined || values[position] === value) return [];
      if (values[position] !== "") throw changedMeanwhile(target, key);
      return [{ position, at, column: column.id, key, value }];
    });
  });
}

/** Throws a LogProblem where the sheet is protected, a column is missing or there is no room below. */
export function planTable(target: AppendTarget, log: LogDefinition, system: UnitSystem): PlannedTable {
  refuseIfLocked(target.worksheet);
  const positions = columnPositions(target.definition, target.sheet, target.headers.values[0] ?? [], system);
  const first = firstFree(target);
  const extra = Math.max(0, first + target.rows.length - target.body.rowCount);
  refuseIfNoRoom(target, extra);
  return {
    target,
    extra,
    lines: linesOf(target, positions, log, system).map((line, index) => ({
      position: first + index,
      line,
      row: target.rows[index] ?? {},
    })),
    inputs: placesOf("input", positions),
    computed: placesOf("computed", positions),
    fills: planFills(target, positions),
  };
}
