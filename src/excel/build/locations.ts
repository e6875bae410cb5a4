/** Where the log's tables and named cells stand in this workbook: a shop moves columns and adds its own. */
import type { AreaPlan, SheetPlan, WorkbookPlan } from "../../joblog/model/plan.ts";
import type { SheetPlacement } from "./plan-placement.ts";

interface Place {
  readonly sheet: string;
  readonly area: AreaPlan;
}

/** A table with the position of each of the log's columns in it, by column id. */
interface LocatedTable extends Place {
  readonly positions: ReadonlyMap<string, number>;
}

export interface Locations {
  readonly table: (name: string) => LocatedTable;
  readonly cell: (name: string) => Place;
  /** The cells in this workbook that a planned area of a planned sheet stands for. */
  readonly area: (plannedSheet: string, area: AreaPlan) => Place;
}

function required<Value>(value: Value | undefined, what: string): Value {
  if (value === undefined) throw new RangeError(`The log has no ${what}.`);
  return value;
}

function isInside(inner: AreaPlan, outer: AreaPlan): boolean {
  return (
    inner.row > outer.row &&
    inner.row < outer.row + outer.rows &&
    inner.column >= outer.column &&
    inner.column < outer.column + outer.columns
  );
}

function dataColumn({ sheet, area, positions }: LocatedTable, columnId: string): Place {
  const column = area.column + required(positions.get(columnId), `column ${columnId}`);
  return { sheet, area: { row: area.row + 1, column, rows: area.rows - 1, columns: 1 } };
}

/** An area of a table's whole length stands for the column however long it is now, a shorter one for its own lines. */
function areaOn(sheet: SheetPlan, planned: AreaPlan, tables: ReadonlyMap<string, LocatedTable>): Place | undefined {
  const table = sheet.tables.find((one) => isInside(planned, one.area));
  const located = table === undefined ? undefined : tables.get(table.name);
  const column = table?.columns[planned.column - table.area.column];
  if (table === undefined || located === undefined || column === undefined) return undefined;
  const whole = dataColumn(located, column.id);
  if (planned.rows === table.area.rows - 1) return whole;
  return {
    ...whole,
    area: {
      ...whole.area,
      row: located.area.row + planned.row - table.area.row,
      rows: planned.rows,
      columns: planned.columns,
    },
  };
}

/** One read trip where sheets of the log were there before, none in a new log. */
export async function locate(
  context: Excel.RequestContext,
  plan: WorkbookPlan,
  placements: readonly SheetPlacement[],
): Promise<Locations> {
  const tables = new Map<string, LocatedTable>();
  const cells = new Map<string, Place>();
  const looks: (() => void)[] = [];
  const { workbook } = context;
  for (const { plan: sheet, actual, kept } of placements) {
    for (const table of sheet.tables) {
      if (!kept) {
        tables.set(table.name, {
          sheet: actual,
          area: table.area,
          positions: new Map(table.columns.map(({ id }, index) => [id, index])),
        });
        continue;
      }
      const headers = workbook.tables.getItem(table.name).getHeaderRowRange().load("values,rowIndex,columnIndex");
      const body = workbook.tables.getItem(table.name).getDataBodyRange().load("rowCount");
      headers.worksheet.load("name");
      looks.push(() => {
        const texts: readonly unknown[] = headers.values[0] ?? [];
        const area = {
          row: headers.rowIndex,
          column: headers.columnIndex,
          rows: body.rowCount + 1,
          columns: texts.length,
        };
        tables.set(table.name, {
          sheet: headers.worksheet.name,
          area,
          positions: new Map(table.columns.map(({ id, header }) => [id, texts.indexOf(header)])),
        });
      });
    }
    for (const name of plan.names.filter((one) => one.sheet === sheet.name)) {
      const one = { rows: 1, columns: 1 };
      if (!kept) {
        cells.set(name.name, { sheet: actual, area: { row: name.row, column: name.column, ...one } });
        continue;
      }
      const range = workbook.names.getItem(name.name).getRange().load("rowIndex,columnIndex");
      range.worksheet.load("name");
      looks.push(() =>
        cells.set(name.name, {
          sheet: range.worksheet.name,
          area: { row: range.rowIndex, column: range.columnIndex, ...one },
        }),
      );
    }
  }
  if (looks.length > 0) await context.sync();
  for (const look of looks) look();
  const sheets = new Map(placements.map((placement) => [placement.plan.name, placement]));
  return {
    table: (name) => required(tables.get(name), `table ${name}`),
    cell: (name) => required(cells.get(name), `named cell ${name}`),
    area: (plannedSheet, area) => {
      const { plan: sheet, actual } = required(sheets.get(plannedSheet), `sheet ${plannedSheet}`);
      const name = plan.names.find(
        (one) => one.sheet === plannedSheet && one.row === area.row && one.column === area.column,
      );
      return (
        areaOn(sheet, area, tables) ??
        (name === undefined ? undefined : cells.get(name.name)) ?? { sheet: actual, area }
      );
    },
  };
}
