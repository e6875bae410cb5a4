/**
 * Excel works BATH functions out later than a write, in any order; until then a cell shows #BUSY!, 0, or what it
 * showed before, and only the first can be told by looking at it. So the pane works each figure out itself before it
 * speaks of it.
 */
import { asShown } from "../joblog/evaluate/cell-value.ts";
import { EvaluatedLog } from "../joblog/evaluate/evaluated-log.ts";
import type { TableId } from "../joblog/formula/log-types.ts";
import { jobLog } from "../joblog/job-log.ts";
import type { Cells, FieldDefinition, RowValue, SheetDefinition, TableDefinition } from "../joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../joblog/model/log-snapshot.ts";
import { isSettledIn } from "./settled-baths.ts";
import type { Noting, RootOf, UnlikeCell } from "./unlike-cells.ts";
import { shortMoment } from "./wording/moments.ts";

/** How far Excel and we may be apart in a number that was added up in another order, relative to it. */
const tolerance = 1e-9;

export function isSameValue(a: RowValue | undefined, b: RowValue | undefined): boolean {
  if (typeof a !== "number" || typeof b !== "number") return a === b;
  return Math.abs(a - b) <= tolerance * Math.max(1, Math.abs(a), Math.abs(b));
}

/** Their computed cells are what a shop works and reports by. */
const watched: ReadonlySet<TableId> = new Set(["baths", "readings", "additions", "releases"]);

export interface CheckedLog {
  /** Computed cells say what their formulas give for what is typed, whatever the sheet shows yet. */
  readonly log: LogSnapshot;
  readonly noting: Noting;
  /** Looks at the whole sheet. */
  readonly rootOf: RootOf;
  /** A computed cell anywhere in the log that does not show what is due; undefined where all do. */
  readonly anyUnlike: () => UnlikeCell | undefined;
  /** The first cell that a person reads and that shows something else for no other cell's sake, whether advice rests on it or not. */
  readonly typedOver: () => UnlikeCell | undefined;
}

/** A computed cell of a table, by its row. */
interface Place {
  readonly sheet: SheetDefinition;
  readonly table: TableDefinition;
  readonly row: AnyRow;
}

/** What was read from a workbook; its figures are worked out when they are first looked at. */
export function checkedLog(read: LogSnapshot): CheckedLog {
  const worked = new EvaluatedLog(jobLog, read, [], "everything");
  const isSettled = isSettledIn(read.rows);
  let noted: Map<string, UnlikeCell> | undefined;

  const dueIn = ({ table, row }: Place, id: string): RowValue | undefined =>
    asShown(worked.cell(table.id, id, row.position));

  const keyOf = (place: Place): RowValue | undefined => {
    const [first] = place.table.columns;
    if (first === undefined) return undefined;
    return first.role === "computed" ? dueIn(place, first.id) : place.row.cells[first.id];
  };

  const cellAt = (place: Place, id: string): UnlikeCell => {
    const { sheet, table, row } = place;
    const key = keyOf(place);
    const { when } = row.cells;
    const { entry } = table;
    // A running number alone tells nothing to whoever works by the clock.
    const named =
      key === undefined
        ? `Row ${String(row.position + 1)}`
        : entry?.letter === undefined || typeof when !== "number"
          ? String(key)
          : `${entry.word} ${String(key)} of ${shortMoment(when)},`;
    return {
      place: `${named} on the sheet ${sheet.name}`,
      under: table.columns.find((column) => column.id === id)?.label,
      shown: row.cells[id],
      due: dueIn(place, id),
      settledBath: isSettled(row.cells["bath"]) ? String(row.cells["bath"]) : undefined,
    };
  };

  const fieldAt = ({ id, label }: FieldDefinition): UnlikeCell => ({
    place: label,
    under: undefined,
    shown: held[id],
    due: asShown(worked.named(id)),
    settledBath: undefined,
  });

  /** Gives what is due; `cell` puts it in words, which takes longer than to compare. */
  const noteUnlike = (
    key: string,
    due: RowValue | undefined,
    shown: RowValue | undefined,
    cell: () => UnlikeCell,
  ): RowValue | undefined => {
    if (noted !== undefined && !isSameValue(shown, due)) noted.set(key, cell());
    return due;
  };

  /** An object of cells of which those in `computed` are answered by `due`. */
  const answering = (cells: Cells, computed: ReadonlySet<string>, due: (id: string) => RowValue | undefined): Cells =>
    new Proxy(cells, {
      get: (target, id) =>
        typeof id === "string" && computed.has(id) ? due(id) : (Reflect.get(target, id) as unknown),
    });

  const held: Cells = read.fields;
  const definitions = new Map(jobLog.sheets.flatMap(({ fields }) => fields).map((field) => [field.id, field]));
  const computedFields = new Set([...definitions.values()].flatMap(({ id, formula }) => (formula ? [id] : [])));
  const fields = answering(held, computedFields, (id) => {
    const field = definitions.get(id);
    return field === undefined ? held[id] : noteUnlike(id, asShown(worked.named(id)), held[id], () => fieldAt(field));
  });

  const places = jobLog.sheets.flatMap((sheet) =>
    sheet.tables.flatMap((table) => read.rows[table.id].map((row: AnyRow): Place => ({ sheet, table, row }))),
  );
  const computedColumns = new Map(
    jobLog.sheets
      .flatMap(({ tables }) => tables)
      .map(({ id, columns }) => [id, new Set(columns.flatMap((one) => (one.role === "computed" ? [one.id] : [])))]),
  );
  const computedIn = ({ table }: Place): ReadonlySet<string> => computedColumns.get(table.id) ?? new Set();

  const rows = Object.fromEntries([...computedColumns.keys()].map((id): [TableId, AnyRow[]] => [id, []])) as Record<
    TableId,
    AnyRow[]
  >;
  for (const place of places) {
    const { table, row } = place;
    rows[table.id].push({
      position: row.position,
      cells: answering(row.cells, computedIn(place), (id) =>
        noteUnlike(`${table.id} ${id} ${String(row.position)}`, dueIn(place, id), row.cells[id], () =>
          cellAt(place, id),
        ),
      ),
    });
  }

  /** A cell that is unlike also by what the sheet shows in all other rows, so that no other row makes it so. */
  const findRoot = (
    among: readonly Place[] = places,
    columnsOf: (place: Place) => Iterable<string> = computedIn,
  ): UnlikeCell | undefined => {
    for (const place of among) {
      const { table, row } = place;
      const unlike = [...columnsOf(place)].filter((id) => !isSameValue(row.cells[id], dueIn(place, id)));
      if (unlike.length === 0) continue;
      const alone = new EvaluatedLog(jobLog, read, [], (of, cells) => of === table.id && cells === row.cells);
      const root = unlike.find((id) => !isSameValue(row.cells[id], asShown(alone.cell(table.id, id, row.position))));
      if (root !== undefined) return cellAt(place, root);
    }
    return undefined;
  };
  let root: UnlikeCell | undefined;

  return {
    log: { fields, rows },
    noting: (work) => {
      const outer = noted;
      const mine = new Map<string, UnlikeCell>();
      noted = mine;
      try {
        return { answer: work(), unlike: [...mine.values()] };
      } finally {
        noted = outer;
        for (const [key, cell] of mine) outer?.set(key, cell);
      }
    },
    typedOver: () =>
      findRoot(
        places.filter(({ table }) => watched.has(table.id)),
        ({ table }) => table.columns.flatMap((one) => (one.role === "computed" && one.helper !== true ? [one.id] : [])),
      ),
    anyUnlike: () => {
      for (const id of computedFields) {
        const field = definitions.get(id);
        if (field !== undefined && !isSameValue(held[id], asShown(worked.named(id)))) return fieldAt(field);
      }
      for (const place of places) {
        const unlike = [...computedIn(place)].find((id) => !isSameValue(place.row.cells[id], dueIn(place, id)));
        if (unlike !== undefined) return cellAt(place, unlike);
      }
      return undefined;
    },
    rootOf: (unlike) => {
      if (unlike.length === 0) return undefined;
      root ??= findRoot() ?? unlike[0];
      return root;
    },
  };
}
