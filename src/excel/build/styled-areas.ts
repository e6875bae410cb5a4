import type { AreaPlan, CellPlan } from "../../joblog/model/plan.ts";

/** A rectangle of cells that all look the same. */
export interface StyledArea extends AreaPlan {
  readonly style: CellPlan["style"];
  readonly numberFormat: string | undefined;
  readonly align: CellPlan["align"];
}

interface Run extends StyledArea {
  readonly key: string;
}

function lookKey(cell: CellPlan): string {
  return `${cell.style}|${cell.numberFormat ?? ""}|${cell.align ?? ""}`;
}

function runsOfRow(cells: readonly CellPlan[]): Run[] {
  const runs: Run[] = [];
  for (const cell of [...cells].sort((a, b) => a.column - b.column)) {
    const last = runs.at(-1);
    if (last !== undefined && last.key === lookKey(cell) && last.column + last.columns === cell.column) {
      runs[runs.length - 1] = { ...last, columns: last.columns + 1 };
    } else {
      runs.push({
        row: cell.row,
        column: cell.column,
        rows: 1,
        columns: 1,
        style: cell.style,
        numberFormat: cell.numberFormat,
        align: cell.align,
        key: lookKey(cell),
      });
    }
  }
  return runs;
}

/** Joins cells of one look into few rectangles: every rectangle is one command to Excel. */
export function styledAreas(cells: readonly CellPlan[]): readonly StyledArea[] {
  const byRow = new Map<number, CellPlan[]>();
  for (const cell of cells) byRow.set(cell.row, [...(byRow.get(cell.row) ?? []), cell]);
  const done: Run[] = [];
  let open: Run[] = [];
  for (const row of [...byRow.keys()].sort((a, b) => a - b)) {
    const next: Run[] = [];
    for (const run of runsOfRow(byRow.get(row) ?? [])) {
      const above = open.find(
        (one) =>
          one.key === run.key && one.column === run.column && one.columns === run.columns && one.row + one.rows === row,
      );
      if (above === undefined) next.push(run);
      else {
        open = open.filter((one) => one !== above);
        next.push({ ...above, rows: above.rows + 1 });
      }
    }
    done.push(...open);
    open = next;
  }
  return [...done, ...open].map(({ row, column, rows, columns, style, numberFormat, align }) => ({
    row,
    column,
    rows,
    columns,
    style,
    numberFormat,
    align,
  }));
}
