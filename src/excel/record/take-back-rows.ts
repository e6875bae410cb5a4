import type { TableId } from "../../joblog/formula/log-types.ts";
import type { Cells, ColumnDefinition, LogDefinition, RowValue } from "../../joblog/model/definition.ts";
import { findField } from "../../joblog/model/references.ts";
import { LogProblem } from "../office-problems.ts";
import { columnPositions, systemOf } from "../table-columns.ts";
import { refuseIfLocked, refuseIfReadOnly } from "./append-target.ts";
import { type AnyChange, loadChanges, planChanges } from "./cell-changes.ts";
import { columnValues, type LoadedTable, loadTable } from "./loaded-table.ts";
import { type PlannedCell, rowsWrite, type WritePlan } from "./planned-write.ts";
import type { FilledCells, Receipt, WrittenRow } from "./receipt.ts";
import { type RowPlaces, rowPlaces } from "./row-places.ts";
import { type Planner, writeSurely } from "./sure-write.ts";

/** A row of the entry, or one that it filled in. */
type EntryRow = WrittenRow | FilledCells;

interface EntryTable extends LoadedTable {
  readonly id: TableId;
  readonly rows: ReadonlyMap<EntryRow, Excel.Range>;
}

/** Columns that people type into, with their places in the table. */
type Inputs = readonly (readonly [ColumnDefinition, number])[];

const changedSince = (table: string): LogProblem =>
  new LogProblem({
    what: `The last entry (table ${table}) was changed since, or deleted, so it was not taken back. Nothing was changed.`,
    remedy: "Correct it in the sheet, or delete its row there.",
  });

/** The rows by their present cells; a row beyond the table's end gives cells that do not match. */
function load(
  context: Excel.RequestContext,
  log: LogDefinition,
  id: TableId,
  rows: readonly EntryRow[],
  places: RowPlaces<EntryRow>,
): EntryTable {
  const table = loadTable(context, log, id);
  const body = table.body.load("rowCount");
  return {
    ...table,
    id,
    body,
    rows: new Map(rows.map((row) => [row, body.getRow(0).getOffsetRange(places.at(row), 0).load("values")])),
  };
}

/** Whether every cell still holds what was written; `undefined` was left blank. */
function isUnchanged(line: readonly unknown[], cells: Cells, columns: Inputs): boolean {
  return columns.every(([column, at]) => line[at] === (cells[column.id] ?? ""));
}

/** How many data rows may be cut off the end of a table: those that it grew for and that are still its last. */
function cutRows(rows: readonly WrittenRow[], rowCount: number, places: RowPlaces<EntryRow>): ReadonlySet<WrittenRow> {
  const cut = new Set<WrittenRow>();
  for (const row of [...rows].sort((a, b) => places.at(b) - places.at(a))) {
    if (!row.grown || places.at(row) !== rowCount - 1 - cut.size) break;
    cut.add(row);
  }
  return cut;
}

const isRow = (row: EntryRow): row is WrittenRow => "grown" in row;

function keyOf(row: EntryRow, inputs: Inputs): string | undefined {
  if (!isRow(row)) return row.key;
  const value = row.cells[inputs[0]?.[0].id ?? ""];
  return value === undefined ? undefined : String(value);
}

type Positions = ReturnType<typeof columnPositions>;

const inputsOf = (positions: Positions): Inputs => [...positions].filter(([{ role }]) => role === "input");

function isWhole({ rows, body }: EntryTable, inputs: Inputs, places: RowPlaces<EntryRow>): boolean {
  const [key] = inputs;
  return [...rows].every(([row, range]) => {
    const line: readonly unknown[] = range.values[0] ?? [];
    if (places.at(row) >= body.rowCount) return false;
    if (isRow(row)) return isUnchanged(line, row.cells, inputs);
    const filled = inputs.filter(([column]) => row.cells[column.id] !== undefined);
    return key !== undefined && String(line[key[1]]) === row.key && isUnchanged(line, row.cells, filled);
  });
}

/** Rows at the end go with all they hold; others are blanked, and the next entry takes them if they are the last. */
function planRemoval(found: EntryTable, positions: Positions, places: RowPlaces<EntryRow>): WritePlan {
  refuseIfLocked(found.worksheet);
  const { definition: table, sheet } = found;
  const inputs = inputsOf(positions);
  if (!isWhole(found, inputs, places)) throw changedSince(table.name);
  const rows = [...found.rows.keys()];
  const { rowCount } = found.body;
  const cut = cutRows(rows.filter(isRow), rowCount, places);
  const [keyColumn] = table.columns;
  const writes = rows.flatMap((row) => {
    if (isRow(row) && cut.has(row)) return [];
    const held: readonly unknown[] = found.rows.get(row)?.values[0] ?? [];
    const line = inputs.flatMap(([column, at]): readonly (readonly [number, PlannedCell])[] => {
      const was = held[at] === "" ? undefined : (held[at] as RowValue);
      if (isRow(row) || row.cells[column.id] !== undefined) return [[at, { was, becomes: undefined }]];
      return column === keyColumn ? [[at, { was, becomes: was }]] : [];
    });
    return [rowsWrite(sheet, { table: table.name, position: places.at(row) }, [new Map(line)])];
  });
  const at = (role: ColumnDefinition["role"]): readonly number[] =>
    [...positions].flatMap(([column, place]) => (column.role === role ? [place] : [])).sort((a, b) => a - b);
  const size = { table: table.name, sheet, rowCount, extra: -cut.size };
  return {
    sizes: cut.size === 0 ? [] : [{ ...size, inputs: at("input"), computed: at("computed") }],
    writes,
    copies: [],
  };
}

function undone(change: AnyChange): AnyChange {
  const cells = Object.entries(change.cells).map(
    ([id, { before, after }]) => [id, { before: after, after: before }] as const,
  );
  return { ...change, cells: Object.fromEntries(cells) };
}

function removalPlanner(log: LogDefinition, { rows, fills, changes }: Receipt): Planner<WritePlan> {
  const entryRows: readonly EntryRow[] = [...rows, ...fills];
  const places = rowPlaces<EntryRow>();
  const changePlaces = rowPlaces<AnyChange>();
  const back = changes.map(undone);
  return (context) => {
    const unitCell = context.workbook.names.getItem(findField(log, "unitSystem").name).getRange().load("values");
    context.workbook.load("readOnly");
    const tables = [...new Set(entryRows.map(({ table }) => table))].map((id) =>
      load(
        context,
        log,
        id,
        entryRows.filter(({ table }) => table === id),
        places,
      ),
    );
    const changed = loadChanges(context, log, { rows: back }, changePlaces);
    return () => {
      refuseIfReadOnly(context.workbook);
      const system = systemOf(unitCell.values[0]?.[0]);
      const placed = tables.map((found) => {
        const { definition: table, sheet } = found;
        return { found, positions: columnPositions(table, sheet, found.headers.values[0] ?? [], system) };
      });
      for (const { found, positions } of placed) {
        const keys = columnValues(found.keys);
        for (const row of found.rows.keys()) {
          const key = keyOf(row, inputsOf(positions));
          if (key !== undefined) places.look(row, key, keys);
        }
      }
      places.settle();
      const undo = planChanges(changed, system, changePlaces);
      const removals = placed.map(({ found, positions }) => planRemoval(found, positions, places));
      return {
        sizes: removals.flatMap(({ sizes }) => sizes),
        writes: [...removals.flatMap(({ writes }) => writes), ...undo],
        copies: [],
      };
    };
  };
}

/**
 * Takes one entry back: its rows are emptied (cut off where the table had grown for them), the cells
 * that it filled in are blank again, those that it changed hold what they held before. Its rows are found by their
 * keys, wherever they stand by now. One read trip, one write trip, one that clears what was cut off. Throws a LogProblem, with nothing
 * changed, where any of its cells holds something else by now.
 */
export async function removeEntry(context: Excel.RequestContext, log: LogDefinition, receipt: Receipt): Promise<void> {
  await writeSurely(context, removalPlanner(log, receipt));
}
