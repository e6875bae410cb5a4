import type { SheetData } from "@odoo/o-spreadsheet";

import type {
  ChartState,
  FigureState,
  NameState,
  SheetState,
  TableState,
  WorkbookState,
} from "../../../state/workbook-state.ts";
import { type Area, type Cell, columnLetters, contains, parseLocalAddress, splitAddress } from "../address.ts";
import type { FormulaSurroundings, TableShape } from "../formulas/translate.ts";
import type { OSpreadsheet } from "../library.ts";
import { FormatSpelling } from "../workbook/format-spelling.ts";
import type { Workbook } from "../workbook/workbook.ts";
import { gridChart, seriesId } from "./chart-state.ts";
import { printNotes } from "./print-state.ts";
import { GridLooks, SheetCells } from "./restore-cells.ts";

interface PlacedTable extends TableShape {
  readonly state: TableState;
}

function areaIn(sheet: SheetState, address: string): Area {
  const area = parseLocalAddress(address, sheet);
  if (area === undefined) throw new RangeError(`"${address}" on sheet ${sheet.name} is no address.`);
  return { sheet: sheet.id, ...area };
}

function headersOf(sheet: SheetState, area: Area): readonly string[] {
  const texts = new Map(
    sheet.typed.filter(([row]) => row === area.row).map(([, column, , value]) => [column, value] as const),
  );
  return Array.from({ length: area.columns }, (_, index) => {
    const value = texts.get(area.column + index) ?? "";
    return typeof value === "object" ? value.error : String(value);
  });
}

function placedTables(state: WorkbookState): readonly PlacedTable[] {
  return state.sheets.flatMap((sheet) =>
    sheet.tables.map((table) => {
      const area = areaIn(sheet, table.area);
      return { name: table.name, area, headers: headersOf(sheet, area), state: table };
    }),
  );
}

function surroundings(state: WorkbookState, tables: readonly PlacedTable[]): FormulaSurroundings {
  const byName = new Map(tables.map((table) => [table.name.toLowerCase(), table] as const));
  const sheetNames = new Map(state.sheets.map(({ id, name }) => [id, name] as const));
  return {
    tableNamed: (name) => byName.get(name.toLowerCase()),
    tableAt: (cell) => tables.find(({ area }) => contains(area, cell)),
    sheetName: (sheet) => sheetNames.get(sheet) ?? "",
  };
}

/** Ids in the grid's data; none is kept in a state. */
function ruleId(sheet: SheetState, index: number): string {
  return `${sheet.id}-rule-${String(index)}`;
}

function figureId(sheet: SheetState, index: number): string {
  return `${sheet.id}-figure-${String(index)}`;
}

function gridFigure(
  sheet: SheetState,
  { chart, other, row, column, offset, width, height }: FigureState,
  index: number,
) {
  const id = figureId(sheet, index);
  const tag = other?.tag ?? "chart";
  const drawn: unknown = other === undefined && chart !== undefined ? gridChart(chart) : other?.data;
  const data = tag === "chart" ? { ...(drawn as object), chartId: id } : drawn;
  return { id, tag, data, col: column, row, offset, width, height };
}

function gridTable(
  { area, style, drawnAs, ...table }: TableState,
  drawn: ReadonlySet<string>,
): SheetData["tables"][number] {
  const wanted = drawnAs ?? (style === "" ? "None" : style);
  return {
    range: area,
    type: "static",
    config: {
      hasFilters: table.filterButtons,
      totalRow: table.totalsRow,
      firstColumn: table.firstColumn,
      lastColumn: table.lastColumn,
      numberOfHeaders: table.headerRow ? 1 : 0,
      bandedRows: table.bandedRows,
      bandedColumns: table.bandedColumns,
      automaticAutofill: false,
      styleId: drawn.has(wanted) ? wanted : "TableStyleMedium2",
    },
  };
}

function gridLines(lines: SheetState["columnSizes"]): SheetData["cols"] {
  return Object.fromEntries(
    Object.entries(lines).map(([index, { size, hidden }]) => [
      index,
      { ...(size === undefined ? {} : { size }), ...(hidden === true ? { isHidden: true } : {}) },
    ]),
  );
}

interface Means {
  readonly library: OSpreadsheet;
  readonly looks: GridLooks;
  readonly around: FormulaSurroundings;
  readonly formats: FormatSpelling;
  readonly drawn: ReadonlySet<string>;
}

function gridSheet(state: SheetState, means: Means): object {
  const { cells } = new SheetCells(state, { ...means, inGrid: (format) => means.formats.inGrid(format) });
  return {
    id: state.id,
    name: state.name,
    rowNumber: state.rows,
    colNumber: state.columns,
    ...cells,
    rows: gridLines(state.rowSizes),
    cols: gridLines(state.columnSizes),
    merges: state.merges,
    figures: state.figures.map((figure, index) => gridFigure(state, figure, index)),
    conditionalFormats: state.conditionalFormats.map((format, index) => ({
      ...structuredClone(format),
      id: `${state.id}-format-${String(index)}`,
    })),
    dataValidationRules: state.validations.map(({ ranges, criterion, blocks }, index) => ({
      id: ruleId(state, index),
      ranges,
      criterion: structuredClone(criterion),
      isBlocking: blocks,
    })),
    tables: state.tables.map((table) => gridTable(table, means.drawn)),
    areGridLinesVisible: state.gridlines,
    isVisible: state.visible,
    isLocked: state.locked,
    ...(state.tabColor === undefined ? {} : { color: state.tabColor }),
    ...(state.frozen.rows === 0 && state.frozen.columns === 0
      ? {}
      : { panes: { ySplit: state.frozen.rows, xSplit: state.frozen.columns } }),
    headerGroups: {
      ROW: [],
      COL: (state.columnGroups ?? []).map(({ first, last, folded }) => ({ start: first, end: last, isFolded: folded })),
    },
    ...structuredClone(state.others),
  };
}

const drawnStyles = new WeakMap<OSpreadsheet, ReadonlySet<string>>();

function stylesThatAreDrawn(library: OSpreadsheet): ReadonlySet<string> {
  const known =
    drawnStyles.get(library) ?? new Set(["None", ...Object.keys(new library.Model({}).getters.getTableStyles())]);
  drawnStyles.set(library, known);
  return known;
}

/** Whether a name stands for an area on a sheet of the workbook, as it must in the grid. */
function isOfGrid({ refersTo, sheet }: NameState, state: WorkbookState): boolean {
  if (sheet !== undefined) return false;
  const { sheetName, local } = splitAddress(refersTo);
  const on = state.sheets.find(({ name }) => name.toLowerCase() === sheetName?.toLowerCase());
  return on !== undefined && parseLocalAddress(local, on) !== undefined;
}

function noteChart(workbook: Workbook, sheet: SheetState, figure: FigureState, index: number): void {
  const id = figureId(sheet, index);
  const chart: ChartState | undefined = figure.chart;
  const name = chart?.name ?? figure.other?.name;
  if (name !== undefined && name !== "") workbook.charts.names.set(id, name);
  if (chart === undefined) return;
  if (chart.automaticMinimum === true && chart.y?.min !== undefined) workbook.chartScale.chosen.set(id, chart.y.min);
  const ids = figure.other === undefined ? chart.series.map((_, at) => seriesId(at)) : workbook.charts.seriesOf(id);
  chart.series.forEach(({ dashed, markers, x }, at) => {
    const series = ids[at];
    if (series === undefined) return;
    const note = { ...(dashed === undefined ? {} : { dashed }), ...(markers === undefined ? {} : { markers }) };
    if (Object.keys(note).length > 0) workbook.charts.noteSeries(id, series, note);
    if (x !== undefined) workbook.charts.noteOwnX(id, series, workbook.area(x, sheet.id));
  });
}

/** What the grid knows nothing of. */
function noteBeyondGrid(workbook: Workbook, state: WorkbookState, tables: readonly PlacedTable[]): void {
  for (const { name, comment } of state.book.names)
    if (comment !== undefined) workbook.names.comments.set(name.toLowerCase(), comment);
  workbook.names.beyondGrid = state.book.names.filter((name) => !isOfGrid(name, state));
  for (const sheet of state.sheets) {
    const notes = printNotes(sheet.print);
    if (notes.size > 0) workbook.notes.set(sheet.id, notes);
    sheet.validations.forEach(({ words }, index) => {
      if (words !== undefined) workbook.validations.words.set(ruleId(sheet, index), { ...words });
    });
    sheet.figures.forEach((figure, index) => {
      noteChart(workbook, sheet, figure, index);
    });
  }
  workbook.tables.adopt(
    tables.map(({ area, state: { name, style, calculated } }) => ({
      cell: area,
      name,
      style,
      calculated: calculated.map(({ header, formula, row }) => [
        header.toLowerCase(),
        row === undefined ? { kind: "same text", text: formula } : { kind: "relative", text: formula, row },
      ]),
    })),
  );
}

function noteFormulas(workbook: Workbook, sheet: SheetState): void {
  const kept = new Set(sheet.kept.map(([row, column]) => `${columnLetters(column)}${String(row)}`));
  for (const [row, column, , formula] of sheet.worked) {
    const cell: Cell = { sheet: sheet.id, row, column };
    const text = sheet.formulas[formula];
    if (text === undefined) continue;
    if (kept.has(`${columnLetters(column)}${String(row)}`)) workbook.formulas.hold(cell, text);
    else workbook.formulas.adopt(cell, text);
  }
}

/** Opens a workbook from its state; `open` makes it over the grid's data. */
export function restoreWorkbook(
  state: WorkbookState,
  library: OSpreadsheet,
  open: (data: object, formats: FormatSpelling) => Workbook,
): Workbook {
  const tables = placedTables(state);
  const looks = new GridLooks();
  const formats = new FormatSpelling(library);
  const means: Means = {
    library,
    looks,
    formats,
    around: surroundings(state, tables),
    drawn: stylesThatAreDrawn(library),
  };
  const sheets = state.sheets.map((sheet) => gridSheet(sheet, means));
  const namedRanges = state.book.names.filter((name) => isOfGrid(name, state));
  const workbook = open(
    {
      ...library.helpers.createEmptyWorkbookData(),
      ...structuredClone(state.book.others),
      sheets,
      styles: looks.styles,
      formats: looks.formats,
      borders: looks.borders,
      namedRanges: Object.fromEntries(namedRanges.map(({ name, refersTo }) => [name, refersTo.replaceAll("$", "")])),
    },
    formats,
  );
  noteBeyondGrid(workbook, state, tables);
  for (const sheet of state.sheets) noteFormulas(workbook, sheet);
  if (workbook.sheets.exists(state.book.activeSheet)) workbook.activate(state.book.activeSheet);
  return workbook;
}
