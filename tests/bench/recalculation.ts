import type { Node } from "../../src/joblog/formula/expression.ts";
import { nodeOf } from "../../src/joblog/formula/expression.ts";
import type { ColumnId, FieldId } from "../../src/joblog/formula/log-names.ts";
import type { TableId } from "../../src/joblog/formula/log-types.ts";
import { logNames, rowNames } from "../../src/joblog/formula/name-log.ts";
import type { LogDefinition } from "../../src/joblog/model/definition.ts";

/** Cells that one entry writes. */
export interface Write {
  /** Rows added at the end of tables. */
  readonly adds?: { readonly [Table in TableId]?: number };
  /** Cells of the last row that already stood in a table. */
  readonly changes?: { readonly [Table in TableId]?: readonly ColumnId<Table>[] };
  /** Cells of the first row, the oldest. */
  readonly changesFirst?: { readonly [Table in TableId]?: readonly ColumnId<Table>[] };
  readonly fields?: readonly FieldId[];
}

/** How many rows each table holds before the entry. */
export type RowCounts = { readonly [Table in TableId]?: number };

/** How many of a table's first rows hold values where columns call functions. */
export type SettledCounts = RowCounts;

/** What a formula looks at, and how many calls of ours stand in it. */
interface Precedents {
  /** Columns of which it takes the cell of its own row. */
  readonly own: ReadonlySet<string>;
  /** Columns that it takes as wholes, as `table.column`. */
  readonly whole: ReadonlySet<string>;
  readonly named: ReadonlySet<string>;
  readonly calls: number;
}

interface Formula extends Precedents {
  readonly table: string;
  readonly column: string;
}

const inField = "";

function precedentsOf(root: Node, order: readonly string[]): Precedents {
  const [own, whole, named] = [new Set<string>(), new Set<string>(), new Set<string>()];
  let calls = 0;
  const visit = (node: Node): void => {
    switch (node.kind) {
      case "here":
        own.add(node.column);
        break;
      case "span":
        for (const column of order.slice(order.indexOf(node.first), order.indexOf(node.last) + 1)) own.add(column);
        break;
      case "column":
        whole.add(`${node.table}.${node.column}`);
        break;
      case "named":
        named.add(node.field);
        break;
      case "operation":
        visit(node.left);
        visit(node.right);
        break;
      case "call":
        calls += 1;
        node.to.forEach(visit);
        break;
      case "apply":
        node.to.forEach(visit);
        break;
      case "literal":
      case "nothing":
      case "heading":
    }
  };
  visit(root);
  return { own, whole, named, calls };
}

function formulasOf(log: LogDefinition): readonly Formula[] {
  const names = logNames(log);
  return log.sheets.flatMap((sheet) => [
    ...sheet.tables.flatMap((table) => {
      const order = table.columns.map(({ id }) => id);
      return table.columns.flatMap((column): Formula[] =>
        column.role === "input"
          ? []
          : [
              {
                table: table.id,
                column: column.id,
                ...precedentsOf(nodeOf(column.formula(rowNames(table), names)), order),
              },
            ],
      );
    }),
    ...sheet.fields.flatMap(({ id, formula }): Formula[] =>
      formula === undefined ? [] : [{ table: inField, column: id, ...precedentsOf(nodeOf(formula(names)), []) }],
    ),
  ]);
}

/** Which rows of each column recalculate. */
class DirtyCells {
  private readonly rows = new Map<string, Set<number>>();

  /** `settled` tells how many of a column's first cells hold values. */
  constructor(private readonly settled: ReadonlyMap<string, number>) {}

  of(table: string, column: string): ReadonlySet<number> {
    return this.rows.get(`${table}.${column}`) ?? new Set();
  }

  isAny(place: string): boolean {
    return (this.rows.get(place)?.size ?? 0) > 0;
  }

  /** Tells whether the cell was clean before. */
  mark(table: string, column: string, row: number): boolean {
    const place = `${table}.${column}`;
    if (row < (this.settled.get(place) ?? 0)) return false;
    const rows = this.rows.get(place) ?? new Set();
    this.rows.set(place, rows);
    const before = rows.size;
    rows.add(row);
    return rows.size > before;
  }
}

/** Calls that recalculate, in all and by `table.column`. */
export interface Recalculated {
  readonly calls: number;
  readonly byColumn: ReadonlyMap<string, number>;
}

/**
 * How many calls of our functions stand in cells that Excel recalculates after an entry. Excel's rule: a cell
 * recalculates where any cell that its formula names was written or recalculated, whether or not that cell's value
 * changed; a column named as a whole is all of its cells, also in INDEX. A call in a branch of IF that is passed over
 * is counted too, so the figure is the most that an entry can cost.
 */
export function recalculated(
  log: LogDefinition,
  counts: RowCounts,
  write: Write,
  settled: SettledCounts = {},
): Recalculated {
  const formulas = formulasOf(log);
  const tables = log.sheets.flatMap((sheet) => sheet.tables);
  const before = new Map<string, number>(
    tables.map(({ id, emptyRows, fixedRows }) => [
      id,
      fixedRows === true ? emptyRows : Math.max(emptyRows, counts[id] ?? 0),
    ]),
  );
  const added = new Map<string, number>(Object.entries(write.adds ?? {}));
  const settledCells = formulas.flatMap(({ table, column, calls }): [string, number][] =>
    calls === 0 ? [] : [[`${table}.${column}`, new Map<string, number>(Object.entries(settled)).get(table) ?? 0]],
  );
  const dirty = new DirtyCells(new Map(settledCells));
  const isWritten = (table: string): boolean => (added.get(table) ?? 0) > 0;
  for (const { id, columns } of tables) {
    const first = before.get(id) ?? 0;
    for (let row = first; row < first + (added.get(id) ?? 0); row += 1)
      for (const column of columns) dirty.mark(id, column.id, row);
    for (const column of write.changes?.[id] ?? []) dirty.mark(id, column, first - 1);
    for (const column of write.changesFirst?.[id] ?? []) dirty.mark(id, column, 0);
  }
  for (const field of write.fields ?? []) dirty.mark(inField, field, 0);
  const rowsOf = (table: string): number =>
    table === inField ? 1 : (before.get(table) ?? 0) + (added.get(table) ?? 0);
  const isDirtyInAll = ({ whole, named }: Formula): boolean =>
    [...whole].some((place) => isWritten(place.slice(0, place.indexOf("."))) || dirty.isAny(place)) ||
    [...named].some((field) => dirty.isAny(`${inField}.${field}`));
  const done = new Set<Formula>();
  for (let changed = true; changed;) {
    changed = false;
    for (const formula of formulas) {
      if (done.has(formula)) continue;
      const { table, column, own } = formula;
      if (isDirtyInAll(formula)) {
        for (let row = 0; row < rowsOf(table); row += 1) changed = dirty.mark(table, column, row) || changed;
        done.add(formula);
      } else {
        for (const neighbor of own)
          for (const row of dirty.of(table, neighbor)) changed = dirty.mark(table, column, row) || changed;
      }
    }
  }
  const byColumn = new Map(
    formulas.flatMap(({ table, column, calls }): [string, number][] => {
      const count = calls * dirty.of(table, column).size;
      return count === 0 ? [] : [[`${table}.${column}`, count]];
    }),
  );
  return { calls: [...byColumn.values()].reduce((sum, count) => sum + count, 0), byColumn };
}
