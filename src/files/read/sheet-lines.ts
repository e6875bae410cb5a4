import type { LineSize } from "../../state/workbook-state.ts";
import type { CellReader } from "./cells.ts";
import { childOf, childrenOf, isOn, numberOf, type XmlElement } from "./xml-tree.ts";

/** Pixels of a digit of the usual font, by which widths are counted (ECMA-376, 18.3.1.13). */
const pixelsPerDigit = 7;
const pixelsPerPoint = 96 / 72;

function sized(size: number | undefined, hidden: boolean): LineSize {
  return { ...(size === undefined ? {} : { size }), ...(hidden ? { hidden } : {}) };
}

/** Widths of the first so many columns, where the sheet's part has its own. */
export function columnSizes(root: XmlElement, count: number): Readonly<Record<number, LineSize>> {
  const sizes: Record<number, LineSize> = {};
  const usual = numberOf(childOf(root, "sheetFormatPr")?.attributes["defaultColWidth"]);
  if (usual !== undefined)
    for (let column = 0; column < count; column += 1) sizes[column] = { size: Math.round(usual * pixelsPerDigit) };
  for (const { attributes } of childrenOf(childOf(root, "cols"), "col")) {
    const first = (numberOf(attributes["min"]) ?? 1) - 1;
    const last = Math.min(numberOf(attributes["max"]) ?? first + 1, count) - 1;
    const width = numberOf(attributes["width"]);
    const size = width === undefined ? undefined : Math.round(width * pixelsPerDigit);
    for (let column = first; column <= last; column += 1) sizes[column] = sized(size, isOn(attributes["hidden"]));
  }
  return sizes;
}

/** Heights that were set. */
export function rowSizes(rows: CellReader["rows"], count: number): Readonly<Record<number, LineSize>> {
  return Object.fromEntries(
    rows
      .filter(({ row }) => row < count)
      .map(({ row, height, hidden }) => [
        row,
        sized(height === undefined ? undefined : Math.round(height * pixelsPerPoint), hidden),
      ]),
  );
}

/** Rows and columns that stay in view; a split that moves freezes nothing. */
export function frozenLines(root: XmlElement): { readonly rows: number; readonly columns: number } {
  const pane = childOf(root, "sheetViews", "sheetView", "pane")?.attributes ?? {};
  if (pane["state"]?.startsWith("frozen") !== true) return { rows: 0, columns: 0 };
  return { rows: numberOf(pane["ySplit"]) ?? 0, columns: numberOf(pane["xSplit"]) ?? 0 };
}
