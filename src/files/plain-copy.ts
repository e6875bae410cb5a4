import { pageMargins } from "../joblog/layout/page-margins.ts";
import { styleLooks } from "../joblog/layout/styles.ts";
import type { CellPlan, SheetPlan } from "../joblog/model/plan.ts";
import { type Look, type SheetState, stateVersion } from "../state/workbook-state.ts";
import { rowHeights } from "./row-heights.ts";
import type { ShownSheet } from "./write/known-values.ts";
import { writeState } from "./write/write-state.ts";

const pixelsPerCharacter = 7;
const cellPadding = 5;
const pixelsPerPoint = 4 / 3;
const pointsPerInch = 72;

function lookOf({ style, align, numberFormat }: CellPlan): Look {
  const { fill, color, bold, italic, size, wrap, border } = styleLooks[style];
  const line = border === undefined ? undefined : ({ style: "thin", color: border } as const);
  return {
    text: {
      ...(fill === undefined ? {} : { fillColor: fill }),
      ...(color === undefined ? {} : { textColor: color }),
      ...(bold === undefined ? {} : { bold }),
      ...(italic === undefined ? {} : { italic }),
      ...(size === undefined ? {} : { fontSize: size }),
      ...(wrap === true ? { wrapping: "wrap" } : {}),
      ...(align === undefined ? {} : { align }),
      verticalAlign: "top",
    },
    ...(line === undefined ? {} : { border: { top: line, bottom: line, left: line, right: line } }),
    ...(numberFormat === undefined ? {} : { format: numberFormat }),
  };
}

function sheetState(plan: SheetPlan): SheetState {
  const looks: Look[] = [{}];
  const numbers = new Map<string, number>();
  const number = (look: Look): number => {
    const key = JSON.stringify(look);
    const known = numbers.get(key) ?? looks.push(look) - 1;
    numbers.set(key, known);
    return known;
  };
  const typed: SheetState["typed"][number][] = [];
  const dressed: SheetState["dressed"][number][] = [];
  for (const cell of plan.cells) {
    const look = number(lookOf(cell));
    if (cell.kind === "formula") throw new RangeError(`${plan.name} has a formula, and the copy is of values alone.`);
    if (cell.kind === "value") typed.push([cell.row, cell.column, look, cell.value]);
    else dressed.push([cell.row, cell.column, look]);
  }
  const points = pointsPerInch;
  const title = plan.titleRows;
  return {
    id: plan.id,
    name: plan.name,
    rows: Math.max(...plan.cells.map(({ row }) => row)) + 1,
    columns: plan.columnWidths.length,
    formulas: [],
    looks,
    typed,
    worked: [],
    dressed,
    kept: [],
    tables: [],
    validations: [],
    conditionalFormats: [],
    figures: [],
    merges: [],
    columnSizes: Object.fromEntries(
      plan.columnWidths.map((characters, column) => [column, { size: characters * pixelsPerCharacter + cellPadding }]),
    ),
    rowSizes: {},
    frozen: { rows: plan.frozenRows, columns: 0 },
    gridlines: false,
    visible: true,
    locked: false,
    tabColor: plan.tabColor,
    print: {
      orientation: plan.orientation === "portrait" ? "Portrait" : "Landscape",
      paperSize: "Letter",
      zoom: { horizontalFitToPages: plan.pagesWide },
      leftMargin: pageMargins.left * points,
      rightMargin: pageMargins.right * points,
      topMargin: pageMargins.top * points,
      bottomMargin: pageMargins.bottom * points,
      headerMargin: pageMargins.header * points,
      footerMargin: pageMargins.footer * points,
      leftFooter: "&A",
      centerFooter: plan.footer,
      rightFooter: "Page &P of &N",
      ...(plan.pageBreaks === undefined ? {} : { pageBreaks: plan.pageBreaks }),
      ...(title === undefined ? {} : { printTitleRows: `$${String(title.first + 1)}:$${String(title.last + 1)}` }),
    },
  };
}

/** Nobody may be there to make a row higher by hand, so words are taken to be a little wider than on average. */
const spareWidth = 0.92;

function heightsOf(plan: SheetPlan): ShownSheet {
  const narrower = { ...plan, columnWidths: plan.columnWidths.map((width) => width * spareWidth) };
  const heights = new Map(
    [...rowHeights(narrower, () => undefined)].map(([row, points]) => [row, points * pixelsPerPoint] as const),
  );
  return { values: [], spills: new Map(), spilled: [], heights };
}

/** An .xlsx file of sheets that hold values alone. Throws a RangeError where one holds a formula. */
export function plainCopy(plans: readonly SheetPlan[]): Uint8Array {
  const sheets = plans.map(sheetState);
  const order = sheets.map(({ id }) => id);
  const book = { version: stateVersion, order, activeSheet: order[0] ?? "", names: [] } as const;
  return writeState({ book, sheets }, new Map(plans.map((plan) => [plan.id, heightsOf(plan)]))).file;
}
