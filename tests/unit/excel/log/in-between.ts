import type { Host } from "../../../../src/workbench/host/create-host.ts";

/** Acts like another person just before a trip between add-in and workbook: 1 is the next one that carries anything. */
export function beforeTrip(host: Host, trip: number, act: () => void): () => void {
  const { session } = host;
  const execute = session.execute.bind(session);
  let count = 0;
  session.execute = (steps) => {
    if (steps.length > 0) count += 1;
    if (steps.length > 0 && count === trip) act();
    execute(steps);
  };
  return () => {
    session.execute = execute;
  };
}

function areaOf(host: Host, table: string) {
  const found = host.workbook.tables.named(table);
  if (found === undefined) throw new Error(`There is no table ${table}.`);
  return found.area;
}

export function insertSheetRowAbove(host: Host, table: string): void {
  const { sheet, row } = areaOf(host, table);
  host.model.dispatch("ADD_COLUMNS_ROWS", {
    sheetId: sheet,
    sheetName: host.workbook.sheets.nameOf(sheet),
    dimension: "ROW",
    base: row - 1,
    quantity: 1,
    position: "before",
  });
}

/** Position counts data rows from 0. */
export function deleteRowOf(host: Host, table: string, position: number): void {
  const { sheet, row } = areaOf(host, table);
  host.model.dispatch("REMOVE_COLUMNS_ROWS", {
    sheetId: sheet,
    sheetName: host.workbook.sheets.nameOf(sheet),
    dimension: "ROW",
    elements: [row + 1 + position],
  });
}

export function insertColumnIn(host: Host, table: string, at: number): void {
  const { sheet, column } = areaOf(host, table);
  host.model.dispatch("ADD_COLUMNS_ROWS", {
    sheetId: sheet,
    sheetName: host.workbook.sheets.nameOf(sheet),
    dimension: "COL",
    base: column + at,
    quantity: 1,
    position: "before",
  });
}

/** Types into a cell of a table, at -1 its heading, below its end included. */
export function typeAt(host: Host, table: string, position: number, column: number, content: string): void {
  const area = areaOf(host, table);
  host.model.dispatch("UPDATE_CELL", {
    sheetId: area.sheet,
    row: area.row + 1 + position,
    col: area.column + column,
    content,
  });
}

/** Two data rows change places, as by sorting. */
export function swapRows(host: Host, table: string, one: number, other: number, columns: number): void {
  const { sheet, row, column } = areaOf(host, table);
  const content = (position: number, at: number): string =>
    String(host.workbook.cells.formula({ sheet, row: row + 1 + position, column: column + at }));
  for (let at = 0; at < columns; at += 1) {
    const [first, second] = [content(one, at), content(other, at)];
    typeAt(host, table, one, at, second);
    typeAt(host, table, other, at, first);
  }
}
