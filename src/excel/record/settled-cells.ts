/** Computed cells that change between their formula and the value that it shows. */
import { callingColumns } from "../../joblog/formula/calling-columns.ts";
import type { TableId } from "../../joblog/formula/log-types.ts";
import { columnFormula } from "../../joblog/layout/written-formula.ts";
import type {
  Cells,
  ColumnDefinition,
  ComputedColumn,
  LogDefinition,
  RowValue,
} from "../../joblog/model/definition.ts";
import { LogProblem } from "../office-problems.ts";
import { columnPositions, type systemOf } from "../table-columns.ts";
import { refuseIfLocked } from "./append-target.ts";
import { columnBodies, columnValues, type LoadedTable, loadTable } from "./loaded-table.ts";
import { type CellWrite, type PlannedCell, rowsWrite, type SettledCell } from "./planned-write.ts";
import type { RowPlaces } from "./row-places.ts";

/** A row of a bath, by what it showed when a person decided on it; `position` counts the table's data rows from 0. */
export interface SettledRow {
  readonly table: TableId;
  readonly position: number;
  /** What its first cell holds; undefined where that is blank. */
  readonly key: string | undefined;
  readonly bath: RowValue;
  /** What its cells that call functions show, by column; undefined is blank. */
  readonly cells: Cells;
}

/** The rows of a bath, and what is to stand in their cells that call functions. */
export interface Settling {
  readonly become: SettledCell["after"];
  readonly rows: readonly SettledRow[];
}

interface LoadedRow {
  readonly row: SettledRow;
  readonly line: Excel.Range;
  /** One of its cells that call functions, under each heading that its column can have; all of a row change together. */
  readonly sample: readonly Excel.Range[];
}

interface SettlingTable extends LoadedTable {
  readonly id: TableId;
  readonly rows: readonly LoadedRow[];
}

function loadRows(
  context: Excel.RequestContext,
  log: LogDefinition,
  id: TableId,
  rows: readonly SettledRow[],
  places: RowPlaces<SettledRow>,
): SettlingTable {
  const found = loadTable(context, log, id);
  const { table, definition } = found;
  const body = found.body.load("rowCount");
  const [sampled] = callingColumns(definition, log);
  const column = definition.columns.find((one) => one.id === sampled);
  const bodies = column === undefined ? [] : columnBodies(table, column);
  return {
    ...found,
    id,
    body,
    rows: rows.map((row) => ({
      row,
      line: body.getRow(0).getOffsetRange(places.at(row), 0).load("values"),
      sample: bodies.map((range) => range.getCell(0, 0).getOffsetRange(places.at(row), 0).load("formulas")),
    })),
  };
}

/** Asks for the rows; readable after the next sync. */
export function loadSettling(
  context: Excel.RequestContext,
  log: LogDefinition,
  { rows }: Settling,
  places: RowPlaces<SettledRow>,
): readonly SettlingTable[] {
  return [...new Set(rows.map(({ table }) => table))].map((id) =>
    loadRows(
      context,
      log,
      id,
      rows.filter(({ table }) => table === id),
      places,
    ),
  );
}

const holdsFormula = ({ sample }: LoadedRow): boolean =>
  sample.some((range) => !range.isNullObject && String(range.formulas[0]?.[0]).startsWith("="));

function changedSince(where: string): LogProblem {
  return new LogProblem({
    what: `${where} was changed since it was read. Nothing was written.`,
    remedy: "Wait until Excel has worked everything out, then try again.",
  });
}

/** Cells this close are written in one step, with what lies between them let alone. */
const near = 3;

/** Places by steps that they are written in. */
function steps(places: readonly number[]): readonly (readonly number[])[] {
  const found: number[][] = [];
  for (const place of [...places].sort((a, b) => a - b)) {
    const last = found.at(-1);
    if (last !== undefined && place - (last.at(-1) ?? 0) <= near) last.push(place);
    else found.push([place]);
  }
  return found;
}

type Line = readonly [position: number, cells: ReadonlyMap<number, PlannedCell>];

/** Lines that stand one beneath the other. */
function blocks(lines: readonly Line[]): readonly (readonly Line[])[] {
  const found: Line[][] = [];
  for (const line of [...lines].sort(([a], [b]) => a - b)) {
    const last = found.at(-1);
    if (last !== undefined && last.at(-1)?.[0] === line[0] - 1) last.push(line);
    else found.push([line]);
  }
  return found;
}

function planTable(
  found: SettlingTable,
  log: LogDefinition,
  system: ReturnType<typeof systemOf>,
  places: RowPlaces<SettledRow>,
  become: Settling["become"],
): readonly CellWrite[] {
  refuseIfLocked(found.worksheet);
  const { definition: table, sheet } = found;
  const positions: ReadonlyMap<ColumnDefinition, number> = columnPositions(
    table,
    sheet,
    found.headers.values[0] ?? [],
    system,
  );
  const at = new Map([...positions].map(([column, place]) => [column.id, place]));
  const calling = callingColumns(table, log);
  const computed = [...positions].filter(
    (one): one is [ComputedColumn, number] => one[0].role === "computed" && calling.has(one[0].id),
  );
  const formulas = new Map(computed.map(([column]) => [column.id, columnFormula(column, table, log, system)]));
  const lines = found.rows.flatMap((loaded): readonly Line[] => {
    const { row, line } = loaded;
    const position = places.at(row);
    const values: readonly unknown[] = line.values[0] ?? [];
    const where = `Row ${row.key ?? String(position + 1)} of table ${table.name} (sheet ${sheet})`;
    const keyAt = at.get(table.columns[0]?.id ?? "") ?? 0;
    if (String(values[keyAt]) !== (row.key ?? "") || values[at.get("bath") ?? -1] !== row.bath)
      throw changedSince(where);
    // Rows that somebody types beneath a table take the formulas of its last one.
    if (become === "value" && position === found.body.rowCount - 1) return [];
    const before = holdsFormula(loaded) ? "formula" : "value";
    if (before === become) return [];
    const cells = computed.map(([column, place]): readonly [number, SettledCell] => {
      const value = row.cells[column.id];
      if (values[place] !== (value ?? "")) throw changedSince(`${where}, ${column.label},`);
      return [place, { formula: formulas.get(column.id) ?? "", value, before, after: become }];
    });
    return [[position, new Map(cells)]];
  });
  return steps(computed.map(([, place]) => place)).flatMap((step) =>
    blocks(lines).map((block) =>
      rowsWrite(
        sheet,
        { table: table.name, position: block[0]?.[0] ?? 0 },
        block.map(([, cells]) => new Map(step.map((place) => [place, cells.get(place) ?? null]))),
      ),
    ),
  );
}

/**
 * The writes, each row as the person saw it. Throws a LogProblem where a cell changed since or its sheet is protected,
 * RowMoved where a row stands elsewhere now. A row that is as it shall be already is let alone.
 */
export function planSettling(
  loaded: readonly SettlingTable[],
  log: LogDefinition,
  system: ReturnType<typeof systemOf>,
  places: RowPlaces<SettledRow>,
  become: Settling["become"],
): readonly CellWrite[] {
  for (const { keys, rows } of loaded) {
    const values = columnValues(keys);
    for (const { row } of rows) if (row.key !== undefined) places.look(row, row.key, values);
  }
  places.settle();
  return loaded.flatMap((table) => planTable(table, log, system, places, become));
}
