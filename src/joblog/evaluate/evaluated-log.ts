import { type Node, nodeOf } from "../formula/expression.ts";
import type { TableId } from "../formula/log-types.ts";
import { logNames, rowNames } from "../formula/name-log.ts";
import type {
  Cells,
  ColumnDefinition,
  ComputedColumn,
  FieldDefinition,
  LogDefinition,
  RowValue,
  TableDefinition,
} from "../model/definition.ts";
import type { LogSnapshot } from "../model/log-snapshot.ts";
import { isCellError } from "../model/log-snapshot.ts";
import { CellError, type Scalar, scalarOf } from "./cell-value.ts";
import { type Surroundings, valueOf } from "./value-of.ts";

/** A row to be worked out as if it stood in the log. */
export interface DraftRow {
  readonly table: TableId;
  readonly cells: Cells;
}

/** Which computed cells of the log are worked out anew; all others count as the sheet shows them. */
export type Fresh = "everything" | ((table: TableId, cells: Cells) => boolean);

interface Line {
  readonly typed: Cells;
  /** What the sheet shows in computed cells; undefined where they are worked out here. */
  readonly shown: Cells | undefined;
  readonly known: Map<string, Scalar>;
}

/** What does not depend on a log's content. */
interface Described {
  readonly table: TableDefinition;
  readonly columns: ReadonlyMap<string, ColumnDefinition>;
  readonly order: readonly string[];
  readonly names: ReturnType<typeof rowNames>;
  /** Formulas by column: putting one together takes longer than working it out. */
  readonly nodes: Map<string, Node>;
}

interface Sheet extends Described {
  readonly lines: readonly Line[];
  readonly whole: Map<string, readonly Scalar[]>;
}

const described = new WeakMap<LogDefinition, readonly Described[]>();

function describe(definition: LogDefinition): readonly Described[] {
  const known = described.get(definition);
  if (known !== undefined) return known;
  const tables = definition.sheets
    .flatMap((sheet) => sheet.tables)
    .map((table) => ({
      table,
      columns: new Map(table.columns.map((column) => [column.id, column])),
      order: table.columns.map(({ id }) => id),
      names: rowNames(table),
      nodes: new Map<string, Node>(),
    }));
  described.set(definition, tables);
  return tables;
}

const asScalar = (value: RowValue | undefined): Scalar =>
  value === undefined ? null : isCellError(value) ? new CellError(String(value)) : value;

/**
 * A log whose formulas are worked out here, without a spreadsheet: what a row will say once it is recorded.
 * Cells are worked out when they are asked for, each at most once.
 */
export class EvaluatedLog {
  private readonly sheets: ReadonlyMap<TableId, Sheet>;
  private readonly fields: ReadonlyMap<string, FieldDefinition>;
  private readonly held: Cells;
  private readonly knownFields = new Map<string, Scalar>();

  constructor(
    private readonly definition: LogDefinition,
    private readonly log: LogSnapshot,
    drafts: readonly DraftRow[] = [],
    private readonly fresh: Fresh = () => false,
  ) {
    this.sheets = new Map(
      describe(definition).map((one) => {
        const ofDrafts = drafts.filter(({ table }) => table === one.table.id).map(({ cells }) => cells);
        return [one.table.id, { ...one, lines: this.linesOf(one.table, ofDrafts), whole: new Map() }];
      }),
    );
    this.held = log.fields;
    this.fields = new Map(definition.sheets.flatMap((sheet) => sheet.fields).map((field) => [field.id, field]));
  }

  /**
   * Blank rows between the others keep their place, for positions are counted; those at the end of a table are
   * not in a snapshot. A table of Excel always has one row.
   */
  private linesOf({ id: table, fixedRows, emptyRows }: TableDefinition, drafts: readonly Cells[]): readonly Line[] {
    const rows = this.log.rows[table];
    const length = Math.max(fixedRows === true ? emptyRows : 1, ...rows.map(({ position }) => position + 1));
    const lines = Array.from({ length }, (): Line => ({ typed: {}, shown: undefined, known: new Map() }));
    for (const { position, cells } of rows) {
      const anew = this.fresh === "everything" || this.fresh(table, cells);
      lines[position] = { typed: cells, shown: anew ? undefined : cells, known: new Map() };
    }
    return [...lines, ...drafts.map((cells): Line => ({ typed: cells, shown: undefined, known: new Map() }))];
  }

  private sheet(table: TableId): Sheet {
    const sheet = this.sheets.get(table);
    if (sheet === undefined) throw new RangeError(`The log has no table "${table}".`);
    return sheet;
  }

  /** How many rows a table has, blank ones among the others and drafts at the end counted. */
  linesIn(table: TableId): number {
    return this.sheet(table).lines.length;
  }

  /** What a cell holds or would show; undefined beyond the table's last row. */
  cell(table: TableId, column: string, line: number): Scalar | undefined {
    const sheet = this.sheet(table);
    const at = sheet.lines[line];
    if (at === undefined) return undefined;
    const known = at.known.get(column);
    if (known !== undefined) return known;
    const definition = sheet.columns.get(column);
    if (definition === undefined) throw new RangeError(`The table "${table}" has no column "${column}".`);
    const value = definition.role === "input" ? asScalar(at.typed[column]) : this.computed(table, definition, line, at);
    at.known.set(column, value);
    return value;
  }

  private computed(table: TableId, column: ComputedColumn, line: number, { shown }: Line): Scalar {
    if (shown !== undefined) return asScalar(shown[column.id]);
    const { names, nodes } = this.sheet(table);
    const node = nodes.get(column.id) ?? nodeOf(column.formula(names, logNames(this.definition)));
    nodes.set(column.id, node);
    return scalarOf(valueOf(node, this.around(table, line)));
  }

  /** What a named cell holds or would show. */
  named(field: string): Scalar {
    const known = this.knownFields.get(field);
    if (known !== undefined) return known;
    const definition = this.fields.get(field);
    if (definition === undefined) throw new RangeError(`The log has no field "${field}".`);
    const { formula } = definition;
    const value =
      formula !== undefined && this.fresh === "everything"
        ? scalarOf(valueOf(nodeOf(formula(logNames(this.definition))), this.around(undefined, undefined)))
        : asScalar(this.held[field]);
    this.knownFields.set(field, value);
    return value;
  }

  private around(table: TableId | undefined, line: number | undefined): Surroundings {
    const here = (column: string): Scalar =>
      table === undefined || line === undefined ? new CellError("#VALUE!") : (this.cell(table, column, line) ?? null);
    return {
      line,
      here,
      span: (first, last) => {
        const { order } = this.sheet(table ?? "baths");
        return order.slice(order.indexOf(first), order.indexOf(last) + 1).map(here);
      },
      column: (of, column) => this.column(of, column),
      cell: (of, column, at) => this.cell(of, column, at),
      named: (field) => this.named(field),
    };
  }

  private column(table: TableId, column: string): readonly Scalar[] {
    const sheet = this.sheet(table);
    const known = sheet.whole.get(column);
    if (known !== undefined) return known;
    const cells = sheet.lines.map((_, line) => this.cell(table, column, line) ?? null);
    sheet.whole.set(column, cells);
    return cells;
  }
}
