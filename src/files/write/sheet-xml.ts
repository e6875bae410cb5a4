import { cellAddress } from "../../joblog/layout/addresses.ts";
import type { SheetState } from "../../state/workbook-state.ts";
import { CellsXml, type SharedTexts } from "./cells-xml.ts";
import type { ShownSheet } from "./known-values.ts";
import type { FileLooks } from "./looks.ts";
import { fits, printXml } from "./print-xml.ts";
import { conditionalFormatsXml, validationsXml } from "./rules-xml.ts";
import { declaration, element } from "./xml.ts";

/** Pixels of a digit of the usual font, by which widths are counted (ECMA-376, 18.3.1.13). */
const pixelsPerDigit = 7;
const pointsPerPixel = 0.75;

/** Width of the grid's columns that nobody sized, in pixels. */
const usualColumn = 96;

/** Points of a row of Arial 10 in Excel. */
const usualRow = 12.75;

interface Means {
  readonly looks: FileLooks;
  readonly texts: SharedTexts;
  readonly lost: (what: string) => void;
  readonly isActive: boolean;
  /** Relations of the sheet to its drawing and its tables. */
  readonly drawing: string | undefined;
  readonly tables: readonly string[];
}

function width(pixels: number): number {
  return Number((pixels / pixelsPerDigit).toFixed(6));
}

const groupsAt = ({ columnGroups = [] }: SheetState, column: number): NonNullable<SheetState["columnGroups"]> =>
  columnGroups.filter(({ first, last }) => column >= first && column <= last);

/** How deep columns are grouped at most. */
const deepest = (state: SheetState): number =>
  Math.max(0, ...(state.columnGroups ?? []).map(({ first }) => groupsAt(state, first).length));

/** The format marks a folded group at the column after it, where the button that opens it stands. */
function columns(state: SheetState): string {
  const { columnSizes, columnGroups = [] } = state;
  const afterFolded = new Set(columnGroups.flatMap(({ last, folded }) => (folded ? [last + 1] : [])));
  const grouped = columnGroups.flatMap(({ first, last }) =>
    Array.from({ length: last - first + 1 }, (_, index) => first + index),
  );
  const all = [...new Set([...Object.keys(columnSizes).map(Number), ...grouped, ...afterFolded])].sort((a, b) => a - b);
  if (all.length === 0) return "";
  const written = all.map((column) => {
    const { size, hidden } = columnSizes[column] ?? {};
    const groups = groupsAt(state, column);
    return element("col", {
      min: column + 1,
      max: column + 1,
      width: width(size ?? usualColumn),
      hidden: hidden === true || groups.some(({ folded }) => folded) ? 1 : undefined,
      customWidth: size === undefined ? undefined : 1,
      outlineLevel: groups.length === 0 ? undefined : groups.length,
      collapsed: afterFolded.has(column) ? 1 : undefined,
    });
  });
  return element("cols", {}, ...written);
}

function view({ frozen: { rows, columns: left }, gridlines }: SheetState, isActive: boolean): string {
  const attributes = {
    showGridLines: gridlines ? undefined : 0,
    tabSelected: isActive ? 1 : undefined,
    workbookViewId: 0,
  };
  if (rows === 0 && left === 0) return element("sheetViews", {}, element("sheetView", attributes));
  const first = cellAddress(rows, left);
  const activePane = rows === 0 ? "topRight" : left === 0 ? "bottomLeft" : "bottomRight";
  return element(
    "sheetViews",
    {},
    element(
      "sheetView",
      attributes,
      element("pane", {
        xSplit: left === 0 ? undefined : left,
        ySplit: rows === 0 ? undefined : rows,
        topLeftCell: first,
        activePane,
        state: "frozen",
      }),
      element("selection", { pane: activePane, activeCell: first, sqref: first }),
    ),
  );
}

function rowAttributes(state: SheetState, shown: ShownSheet, row: number): Readonly<Record<string, string | number>> {
  const { size, hidden } = state.rowSizes[row] ?? {};
  const wanted = shown.heights.get(row);
  return {
    ...(size === undefined ? {} : { ht: size * pointsPerPixel, customHeight: 1 }),
    // Excel finds this height out by itself when the text changes; not every program does when it opens a file.
    ...(size === undefined && wanted !== undefined ? { ht: wanted * pointsPerPixel } : {}),
    ...(hidden === true ? { hidden: 1 } : {}),
  };
}

/** A sheet's part. */
export function sheetPart(state: SheetState, shown: ShownSheet, means: Means): string {
  const cells = new CellsXml(state, shown, means);
  const sizedRows = [...Object.keys(state.rowSizes).map(Number), ...shown.heights.keys()];
  const tab =
    state.tabColor === undefined
      ? ""
      : element("tabColor", { rgb: `FF${state.tabColor.replace("#", "").toUpperCase()}` });
  const fitting = fits(state.print.zoom) ? element("pageSetUpPr", { fitToPage: 1 }) : "";
  return (
    declaration +
    element(
      "worksheet",
      {
        xmlns: "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
        "xmlns:r": "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
      },
      tab + fitting === "" ? "" : element("sheetPr", {}, tab, fitting),
      element("dimension", { ref: cells.dimension() }),
      view(state, means.isActive),
      element("sheetFormatPr", {
        defaultColWidth: width(usualColumn),
        defaultRowHeight: usualRow,
        outlineLevelCol: deepest(state) === 0 ? undefined : deepest(state),
      }),
      columns(state),
      cells.sheetData(sizedRows, (row) => rowAttributes(state, shown, row)),
      state.locked ? element("sheetProtection", { sheet: 1, objects: 1, scenarios: 1 }) : "",
      state.merges.length === 0
        ? ""
        : element(
            "mergeCells",
            { count: state.merges.length },
            ...state.merges.map((ref) => element("mergeCell", { ref })),
          ),
      conditionalFormatsXml(state, means.looks, means.lost),
      validationsXml(state, means.lost),
      printXml(state.print),
      means.drawing === undefined ? "" : element("drawing", { "r:id": means.drawing }),
      means.tables.length === 0
        ? ""
        : element(
            "tableParts",
            { count: means.tables.length },
            ...means.tables.map((id) => element("tablePart", { "r:id": id })),
          ),
    )
  );
}
