/** Takes back what a failed or cancelled build or upgrade had added, so that nothing half-written stays. */
import { cellText } from "../cell-text.ts";
import { LogProblem } from "../office-problems.ts";
import type { FormerColumn } from "./former-columns.ts";
import { inTrips } from "./pieces.ts";
import type { SheetPlacement } from "./plan-placement.ts";
import type { Survey } from "./survey-workbook.ts";
import type { SheetFormulas } from "./write-computed.ts";
import type { Structure } from "./write-structure.ts";

interface Added {
  readonly structure: Structure;
  /** Columns that were to be written anew, as they were. */
  readonly former: readonly FormerColumn[];
  /** Named cells that were to be written. */
  readonly cells: SheetFormulas["cells"];
  readonly charts: readonly { readonly sheet: string; readonly name: string }[];
}

/** Columns that are in their table by now, right to left; a batch may have stopped before it made them. */
async function removeColumns(context: Excel.RequestContext, { columns }: Structure): Promise<void> {
  const { tables, worksheets } = context.workbook;
  const headers = columns.map(({ table }) =>
    tables.getItem(table.found.name).getHeaderRowRange().load("values,rowIndex,columnIndex"),
  );
  if (columns.length > 0) await context.sync();
  const rightFirst = columns
    .map((insertion, index) => ({ insertion, range: headers[index] }))
    .sort((a, b) => a.insertion.at - b.insertion.at)
    .reverse();
  for (const { insertion, range } of rightFirst) {
    const first = insertion.columns[0]?.header;
    const texts: readonly unknown[] = range?.values[0] ?? [];
    const at = texts.indexOf(first);
    if (range === undefined || at < 0) continue;
    const worksheet = worksheets.getItem(insertion.table.found.sheet);
    const count = insertion.columns.length;
    const { area } = insertion.table.found;
    if (insertion.wholeColumns) {
      worksheet
        .getRangeByIndexes(0, range.columnIndex + at, 1, count)
        .getEntireColumn()
        .delete("Left");
      continue;
    }
    tables
      .getItem(insertion.table.found.name)
      .resize(worksheet.getRangeByIndexes(range.rowIndex, area.column, area.rows, area.columns));
    worksheet.getRangeByIndexes(range.rowIndex, area.column + area.columns, area.rows, count).clear();
  }
}

/** A formula as a formula; what was typed over one as the text or number that it was. */
const asItStood = (cell: unknown): unknown =>
  typeof cell === "string" && !cell.startsWith("=") ? cellText(cell) : cell;

async function restoreFormulas(context: Excel.RequestContext, survey: Survey, { former, cells }: Added): Promise<void> {
  const columns = former.map((item) => ({
    item,
    rows: item.cells.length,
    width: Math.max(0, ...item.cells.map((cell) => String(cell).length)),
  }));
  for (const trip of inTrips(columns)) {
    for (const { item, first, rows } of trip) {
      const body = context.workbook.tables.getItem(item.table).columns.getItem(item.header).getDataBodyRange();
      body.getRow(first).getResizedRange(rows - 1, 0).formulas = item.cells
        .slice(first, first + rows)
        .map((cell) => [asItStood(cell)]);
    }
    // oxlint-disable-next-line office-addins/no-context-sync-in-loop -- one trip carries only so much
    await context.sync();
  }
  for (const { name } of cells) {
    const before = survey.cells.get(name.name)?.formula;
    if (before !== undefined) context.workbook.names.getItem(name.name).getRange().formulas = [[before]];
  }
}

async function removeRest(
  context: Excel.RequestContext,
  placements: readonly SheetPlacement[],
  { structure, charts }: Added,
): Promise<void> {
  const { workbook } = context;
  const fresh = placements.filter(({ kept }) => !kept);
  const sheets = fresh.map(({ actual }) => workbook.worksheets.getItemOrNullObject(actual));
  const names = placements.flatMap(({ missingNames }) =>
    missingNames.map(({ name }) => workbook.names.getItemOrNullObject(name)),
  );
  const tables = placements
    .filter(({ kept }) => kept)
    .flatMap(({ missingTables }) => missingTables.map(({ name }) => workbook.tables.getItemOrNullObject(name)));
  const drawn = charts.map(({ sheet, name }) => workbook.worksheets.getItem(sheet).charts.getItemOrNullObject(name));
  const rows = structure.fields.map((field) => ({
    field,
    name: workbook.names.getItemOrNullObject(field.names[0]?.name ?? ""),
  }));
  await context.sync();
  for (const item of [...drawn, ...names, ...tables, ...sheets]) if (!item.isNullObject) item.delete();
  for (const { field, name } of rows) {
    if (!name.isNullObject)
      workbook.worksheets
        .getItem(field.sheet)
        .getRangeByIndexes(field.row, 0, field.names.length, 1)
        .getEntireRow()
        .delete("Up");
  }
  await context.sync();
}

/** Leaves the workbook as `survey` found it; throws a LogProblem, caused by `reason`, where Excel does not let it. */
export async function takeBackBuild(
  context: Excel.RequestContext,
  placements: readonly SheetPlacement[],
  survey: Survey,
  added: Added,
  reason: unknown,
): Promise<void> {
  try {
    await restoreFormulas(context, survey, added);
    await removeColumns(context, added.structure);
    await removeRest(context, placements, added);
    context.runtime.enableEvents = true;
    await context.sync();
  } catch {
    throw new LogProblem(
      {
        what: "Excel stopped in the middle of the work and did not let it be taken back.",
        remedy: "Close the workbook without saving and open it again, or undo step by step (Ctrl+Z). Then try again.",
      },
      reason,
    );
  }
}
