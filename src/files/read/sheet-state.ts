import type {
  DressedCell,
  FormulaCell,
  KeptValue,
  Look,
  SheetState,
  StateValue,
  TypedCell,
} from "../../state/workbook-state.ts";
import type { FileCell } from "./cells.ts";
import type { Losses } from "./reading.ts";
import { countedFrom1900, type SheetPart } from "./sheet-parts.ts";
import type { FileTable } from "./tables.ts";
import { type KnownWords, unworkable } from "./workable.ts";
import type { WorkbookParts } from "./workbook-parts.ts";

/** Things counted from 0 in the order in which they were first met. */
class Pool<Item> {
  readonly items: Item[] = [];
  private readonly numbers = new Map<unknown, number>();

  number(key: unknown, item: Item): number {
    const known = this.numbers.get(key);
    if (known !== undefined) return known;
    const number = this.items.push(item) - 1;
    this.numbers.set(key, number);
    return number;
  }
}

type CellParts = Pick<SheetState, "formulas" | "looks" | "typed" | "worked" | "dressed" | "kept">;

function tableAround(tables: readonly FileTable[], { row, column }: FileCell): FileTable | undefined {
  return tables.find(
    ({ area }) =>
      row >= area.row && row < area.row + area.rows && column >= area.column && column < area.column + area.columns,
  );
}

/** Cells of an array formula but its first, which the grid fills by itself where it can work the formula out. */
function spilledPlaces(cells: readonly FileCell[], works: (cell: FileCell) => boolean): ReadonlySet<string> {
  const places = new Set<string>();
  for (const cell of cells) {
    const { array, row, column } = cell;
    if (array === undefined || array.rows * array.columns === 1 || !works(cell)) continue;
    for (let down = 0; down < array.rows; down += 1)
      for (let right = 0; right < array.columns; right += 1)
        if (array.row + down !== row || array.column + right !== column)
          places.add(`${String(array.row + down)},${String(array.column + right)}`);
  }
  return places;
}

/** How formulas stand in their tables; formulas of one text in one table are looked at once. */
class Workability {
  private readonly known: KnownWords;
  private readonly tables: readonly FileTable[];
  private readonly faults = new Map<string, string | undefined>();

  constructor(known: KnownWords, tables: readonly FileTable[]) {
    this.known = known;
    this.tables = tables;
  }

  faultOf(cell: FileCell): string | undefined {
    const { formula } = cell;
    if (formula === undefined) return undefined;
    const table = tableAround(this.tables, cell);
    const key = `${table?.state.name ?? ""}\n${formula}`;
    if (this.faults.has(key)) return this.faults.get(key);
    const around = table === undefined ? undefined : this.known.tables.get(table.state.name.toLowerCase());
    const fault = unworkable(formula, this.known, around);
    this.faults.set(key, fault);
    return fault;
  }
}

/** The cells of a sheet as the state has them, and beside each formula cell the value that the file gives. */
export function cellsState(
  { looks: { cells: looks }, datesFrom1904 }: WorkbookParts,
  sheet: SheetPart,
  known: KnownWords,
  losses: Losses,
): { readonly parts: CellParts; readonly values: readonly (StateValue | null)[] } {
  const values: (StateValue | null)[] = [];
  const formulas = new Pool<string>();
  const worn = new Pool<Look>();
  const typed: TypedCell[] = [];
  const worked: FormulaCell[] = [];
  const dressed: DressedCell[] = [];
  const kept: KeptValue[] = [];
  const workability = new Workability(known, sheet.tables);
  const spilled = spilledPlaces(sheet.cells, (cell) => workability.faultOf(cell) === undefined);
  const faults = new Map<string, number>();
  let withoutValue = 0;
  for (const cell of sheet.cells) {
    const { row, column, formula } = cell;
    const look = looks[cell.look] ?? {};
    const number = worn.number(cell.look, look);
    const value = cell.value === undefined ? undefined : countedFrom1900(cell.value, look, datesFrom1904);
    if (formula !== undefined) {
      worked.push([row, column, number, formulas.number(formula, formula)]);
      values.push(value ?? null);
      const fault = workability.faultOf(cell);
      if (fault === undefined) continue;
      faults.set(fault, (faults.get(fault) ?? 0) + 1);
      if (value === undefined) withoutValue += 1;
      else kept.push([row, column, value]);
    } else if (value !== undefined && (spilled.size === 0 || !spilled.has(`${String(row)},${String(column)}`)))
      typed.push([row, column, number, value]);
    else dressed.push([row, column, number]);
  }
  for (const [fault, count] of faults)
    losses.add(
      count === 1
        ? `1 formula needs ${fault}, which cannot be worked out here: the file's value stays in its place`
        : `${String(count)} formulas need ${fault}, which cannot be worked out here: the file's values stay in their place`,
      sheet.name,
    );
  if (withoutValue > 0)
    losses.add(`${String(withoutValue)} of these have no value in the file, so they show an error`, sheet.name);
  if (sheet.cells.some(({ array }) => array !== undefined && array.rows * array.columns > 1))
    losses.add("formulas that fill several cells: each is kept as the formula of its first cell", sheet.name);
  return { parts: { formulas: formulas.items, looks: worn.items, typed, worked, dressed, kept }, values };
}
