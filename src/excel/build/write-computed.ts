import type { NamePlan, TableColumnPlan, TablePlan, WorkbookPlan } from "../../joblog/model/plan.ts";
import type { Locations } from "./locations.ts";
import type { SheetPlacement } from "./plan-placement.ts";
import type { RangeFiller, Trial } from "./range-filler.ts";
import { isSettledColumn, type SettledRows } from "./settled-rows.ts";
import type { Survey } from "./survey-workbook.ts";

/** Which formulas of tables and cells that were there before are written anew. */
export type Rewriting = "none" | "changed" | "all";

interface ComputedColumnOf {
  readonly table: TablePlan;
  readonly column: TableColumnPlan & { readonly formula: string };
}

interface ComputedCell {
  readonly name: NamePlan;
  readonly formula: string;
}

/** Formulas to write on one sheet. */
export interface SheetFormulas {
  readonly columns: readonly ComputedColumnOf[];
  readonly cells: readonly ComputedCell[];
}

function isWanted(present: unknown, formula: string, rewriting: Rewriting): boolean {
  return present === undefined || rewriting === "all" || (rewriting === "changed" && present !== formula);
}

/**
 * The computed columns and named cells of a sheet that lack their formula or are to get it anew. The first row, by which
 * that is told, may be of a settled bath; then the last one tells it.
 */
export function formulasFor(
  { plan: sheet, kept }: SheetPlacement,
  plan: WorkbookPlan,
  survey: Survey,
  rewriting: Rewriting,
  settled: SettledRows | undefined,
): SheetFormulas {
  const columns = sheet.tables.flatMap((table) => {
    const found = kept ? survey.tables.find(({ name }) => name === table.name) : undefined;
    return table.columns.flatMap((column): readonly ComputedColumnOf[] => {
      const { formula } = column;
      if (formula === undefined) return [];
      const at = found?.headers.indexOf(column.header) ?? -1;
      const telling =
        settled !== undefined && isSettledColumn(table, column) ? settled.lastRow.get(table.name) : undefined;
      return isWanted((telling ?? found?.firstRow)?.[at], formula, rewriting)
        ? [{ table, column: { ...column, formula } }]
        : [];
    });
  });
  const cells = plan.names
    .filter((name) => name.sheet === sheet.name)
    .flatMap((name): readonly ComputedCell[] => {
      const cell = sheet.cells.find((one) => one.row === name.row && one.column === name.column);
      if (cell?.kind !== "formula") return [];
      return isWanted(kept ? survey.cells.get(name.name)?.formula : undefined, cell.formula, rewriting)
        ? [{ name, formula: cell.formula }]
        : [];
    });
  return { columns, cells };
}

function placeOf({ table, column }: ComputedColumnOf, locations: Locations): ReturnType<Locations["cell"]> {
  const { sheet, area, positions } = locations.table(table.name);
  const at = area.column + (positions.get(column.id) ?? 0);
  return { sheet, area: { row: area.row + 1, column: at, rows: area.rows - 1, columns: 1 } };
}

/** The first of these columns that has several rows and a number format; undefined where none has. */
export function trialColumn(
  context: Excel.RequestContext,
  formulas: readonly SheetFormulas[],
  locations: Locations,
): Trial | undefined {
  for (const one of formulas.flatMap(({ columns }) => columns)) {
    const { sheet, area } = placeOf(one, locations);
    const { formula, numberFormat } = one.column;
    if (numberFormat !== undefined && area.rows > 1)
      return { worksheet: context.workbook.worksheets.getItem(sheet), area, formula, numberFormat };
  }
  return undefined;
}

/** Whether formulas of settled cells are among those: then all of them come back, for half a row would follow what the other half does not. */
export function bringsFormulasBack(
  formulas: Iterable<SheetFormulas>,
  survey: Survey,
  settled: SettledRows | undefined,
): settled is SettledRows {
  return (
    settled !== undefined &&
    [...formulas].some(({ columns }) =>
      columns.some(
        ({ table, column }) =>
          isSettledColumn(table, column) &&
          survey.tables.some(({ name, headers }) => name === table.name && headers.includes(column.header)),
      ),
    )
  );
}

/** The columns of a sheet whose cells were settled, those among them that are to get their formula anyway left out. */
export function settledFormulas({ plan: sheet, kept }: SheetPlacement, { columns }: SheetFormulas): SheetFormulas {
  const added = sheet.tables.flatMap((table) =>
    table.columns.flatMap((column): readonly ComputedColumnOf[] => {
      const { formula } = column;
      const isThere = columns.some((one) => one.table === table && one.column.id === column.id);
      return !kept || formula === undefined || isThere || !isSettledColumn(table, column)
        ? []
        : [{ table, column: { ...column, formula } }];
    }),
  );
  return { columns: added, cells: [] };
}

/** One command for each column, however many rows it has. */
export function writeFormulas(
  context: Excel.RequestContext,
  { columns, cells }: SheetFormulas,
  locations: Locations,
  filler: RangeFiller,
): void {
  for (const one of columns) {
    const { sheet, area } = placeOf(one, locations);
    filler.formulas(context.workbook.worksheets.getItem(sheet), area, one.column.formula);
  }
  for (const { name, formula } of cells) {
    const { sheet, area } = locations.cell(name.name);
    context.workbook.worksheets.getItem(sheet).getRangeByIndexes(area.row, area.column, 1, 1).formulas = [[formula]];
  }
}
