/** Taking a write out again: of a batch that broke off, or of one that hit other rows than it was made for. */
import type { RowValue } from "../../joblog/model/definition.ts";
import { cellValue } from "../cell-text.ts";
import { changeSize } from "./grow-table.ts";
import {
  bodyOf,
  type CellWrite,
  copyFormulas,
  isSettled,
  isTyped,
  isWritten,
  type PlannedCell,
  rangeOf,
  settledContent,
  type SizeChange,
} from "./planned-write.ts";

type Content = RowValue | null;

interface WriteToUndo {
  readonly write: CellWrite;
  /** What `Range.formulas` gets to have it as it was; `null` lets a cell alone. */
  readonly back: readonly (readonly Content[])[];
}

interface SizeToUndo {
  readonly size: SizeChange;
  /** What stood in the rows that the table took in; nothing, where it was seen to be blank. */
  readonly edge: readonly (readonly Content[])[];
}

/** All that one batch may have left. */
export interface Leftovers {
  readonly writes: readonly WriteToUndo[];
  readonly sizes: readonly SizeToUndo[];
}

/** Of computed cells only those that were settled: what a batch that broke off left of other formulas is what their columns hold anyway. */
export function leftoversOf(writes: readonly CellWrite[], sizes: readonly SizeChange[]): Leftovers {
  return {
    writes: writes.map((write) => ({
      write,
      back: write.lines.map((line) =>
        line.map((cell) => {
          if (isSettled(cell) && isWritten(cell)) return settledContent(cell, cell.before);
          if (!isTyped(cell) || !isWritten(cell)) return null;
          return cell.was === undefined ? "" : cellValue(cell.was);
        }),
      ),
    })),
    sizes: sizes.map((size) => ({ size, edge: [] })),
  };
}

/** What cells held, so that writing it gives the same again: of typed text Excel would read a number or a formula. */
export function formerContent({ formulas, values }: Excel.Range): readonly (readonly RowValue[])[] {
  const shown = values as RowValue[][];
  return (formulas as RowValue[][]).map((line, row) =>
    line.map((formula, column) => (formula === shown[row]?.[column] ? cellValue(formula) : formula)),
  );
}

/** The write with what its cells truly held, as the batch itself has read it. */
export function hitInstead(write: CellWrite, former: Excel.Range): WriteToUndo {
  const values = former.values as RowValue[][];
  const content = formerContent(former);
  const held = (cell: PlannedCell, value: RowValue | undefined): PlannedCell => {
    if (!isTyped(cell)) return cell;
    const was = value === "" ? undefined : value;
    return { was, becomes: isWritten(cell) ? cell.becomes : was };
  };
  return {
    write: {
      ...write,
      lines: write.lines.map((line, row) => line.map((cell, index) => held(cell, values[row]?.[index]))),
    },
    back: write.lines.map((line, row) =>
      line.map((cell, index) => (isWritten(cell) ? (content[row]?.[index] ?? null) : null)),
    ),
  };
}

type State = "as it was" | "ours" | "other";

/** A cell as it may be found: as text, for a number that came into a cell formatted as text is one. */
interface Seen {
  readonly was: string;
  readonly becomes: string;
  readonly now: string;
}

/** Any formula is the cell's own: Excel need not give it back in our spelling. */
const asSettled = (content: unknown): string =>
  String(content).startsWith("=") ? "formula" : `value ${String(content)}`;

function seen(cell: PlannedCell, value: unknown, formula: unknown): readonly Seen[] {
  if (isTyped(cell)) return [{ was: String(cell.was ?? ""), becomes: String(cell.becomes ?? ""), now: String(value) }];
  if (!isSettled(cell)) return [];
  const held = (kind: "formula" | "value"): string => asSettled(kind === "formula" ? cell.formula : (cell.value ?? ""));
  return [{ was: held(cell.before), becomes: held(cell.after), now: asSettled(formula) }];
}

const hasSettled = ({ lines }: CellWrite): boolean => lines.some((line) => line.some(isSettled));

function stateOf(write: CellWrite, range: Excel.Range): State {
  const { lines } = write;
  const { values } = range;
  // Read for settled cells alone: formulas weigh much.
  const formulas: readonly (readonly unknown[])[] = hasSettled(write) ? range.formulas : [];
  const cells = lines.flatMap((line, row) =>
    line.flatMap((cell, index) => seen(cell, values[row]?.[index], formulas[row]?.[index])),
  );
  if (cells.every(({ was, now }) => now === was)) return "as it was";
  // Where Excel breaks off within a range is not documented, so the cells may be some of this and some of that.
  return cells.every(({ was, becomes, now }) => now === was || now === becomes) ? "ours" : "other";
}

const isOf = ({ place, lines }: CellWrite, { table, rowCount }: SizeChange): boolean =>
  "table" in place && place.table === table && place.position + lines.length > rowCount;

/** Back to the former size. Rows that the table took in are blanked beneath it; those that it let go still stand there. */
function undoSize(workbook: Excel.Workbook, { size: { table, rowCount, extra, computed }, edge }: SizeToUndo): void {
  changeSize(workbook, table, -extra);
  if (extra > 0) {
    bodyOf(workbook, table).getRowsBelow(extra).clear();
    if (edge.length > 0) bodyOf(workbook, table).getRowsBelow(extra).formulas = edge.map((line) => [...line]);
  } else copyFormulas(workbook, { table, position: rowCount + extra - 1, rows: -extra, computed });
}

interface Look {
  readonly writes: readonly (WriteToUndo & { readonly range: Excel.Range })[];
  readonly sizes: readonly (SizeToUndo & { readonly count: OfficeExtension.ClientResult<number> })[];
}

function look({ workbook }: Excel.RequestContext, { writes, sizes }: Leftovers): Look {
  return {
    writes: writes.map((one) => ({
      ...one,
      range: rangeOf(workbook, one.write).load(hasSettled(one.write) ? "values,formulas" : "values"),
    })),
    sizes: sizes.map((one) => ({ ...one, count: workbook.tables.getItem(one.size.table).rows.getCount() })),
  };
}

interface Found {
  readonly states: readonly State[];
  readonly counts: readonly number[];
}

const foundBy = ({ writes, sizes }: Look): Found => ({
  states: writes.map(({ write, range }) => stateOf(write, range)),
  counts: sizes.map(({ count }) => count.value),
});

/**
 * Looks at what is left and takes it out. Gives the names of the sheets where that is not certain, since what is
 * there now is neither what was there before nor what was written, or changes all the time.
 */
export async function undoWrite(context: Excel.RequestContext, leftovers: Leftovers): Promise<readonly string[]> {
  const { workbook } = context;
  const { writes, sizes } = leftovers;
  const first = look(context, leftovers);
  await context.sync();
  const found = foundBy(first);
  const foreign = writes.flatMap(({ write }, index) => (found.states[index] === "other" ? [write] : []));
  const stuck = sizes.flatMap(({ size }, index) => {
    const { rowCount, extra } = size;
    const count = found.counts[index];
    if (count === rowCount) return [];
    return count !== rowCount + extra || foreign.some((write) => isOf(write, size)) ? [size] : [];
  });
  const again = look(context, leftovers);
  writes.forEach(({ write, back }, index) => {
    if (found.states[index] === "ours") rangeOf(workbook, write).formulas = back.map((line) => [...line]);
  });
  sizes.forEach((one, index) => {
    if (found.counts[index] !== one.size.rowCount && !stuck.includes(one.size)) undoSize(workbook, one);
  });
  await context.sync();
  const moved = JSON.stringify(foundBy(again)) !== JSON.stringify(found);
  const unsure = moved
    ? [...writes.map(({ write }) => write), ...sizes.map(({ size }) => size)]
    : [...foreign, ...stuck];
  return [...new Set(unsure.map(({ sheet }) => sheet))];
}
