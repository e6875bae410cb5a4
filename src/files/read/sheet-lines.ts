import type { ColumnGroup, LineSize } from "../../state/workbook-state.ts";
import type { CellReader } from "./cells.ts";
import { childOf, childrenOf, isOn, numberOf, type XmlElement } from "./xml-tree.ts";

/** Pixels of a digit of the usual font, by which widths are counted (ECMA-376, 18.3.1.13). */
const pixelsPerDigit = 7;
const pixelsPerPoint = 96 / 72;

function sized(size: number | undefined, hidden: boolean): LineSize {
  return { ...(size === undefined ? {} : { size }), ...(hidden ? { hidden } : {}) };
}

/** The first so many columns that the sheet's part says something of, one by one. */
function columnLines(root: XmlElement, count: number): readonly (readonly [number, XmlElement["attributes"]])[] {
  return childrenOf(childOf(root, "cols"), "col").flatMap(({ attributes }) => {
    const first = (numberOf(attributes["min"]) ?? 1) - 1;
    const last = Math.min(numberOf(attributes["max"]) ?? first + 1, count) - 1;
    return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => [first + index, attributes] as const);
  });
}

/** Columns side by side that are in a group, folded where all of them are hidden. */
export function columnGroups(root: XmlElement, count: number): readonly ColumnGroup[] {
  const groups: ColumnGroup[] = [];
  for (const [column, attributes] of columnLines(root, count)) {
    if ((numberOf(attributes["outlineLevel"]) ?? 0) === 0) continue;
    const hidden = isOn(attributes["hidden"]);
    const group = groups.at(-1);
    if (group?.last === column - 1)
      groups[groups.length - 1] = { first: group.first, last: column, folded: group.folded && hidden };
    else groups.push({ first: column, last: column, folded: hidden });
  }
  return groups;
}

/** Widths of the first so many columns, where the sheet's part has its own. */
export function columnSizes(
  root: XmlElement,
  count: number,
  groups: readonly ColumnGroup[],
): Readonly<Record<number, LineSize>> {
  // What a folded group hides comes back with the group.
  const isFolded = (column: number): boolean =>
    groups.some(({ first, last, folded }) => folded && column >= first && column <= last);
  const sizes: Record<number, LineSize> = {};
  const usual = numberOf(childOf(root, "sheetFormatPr")?.attributes["defaultColWidth"]);
  if (usual !== undefined)
    for (let column = 0; column < count; column += 1) sizes[column] = { size: Math.round(usual * pixelsPerDigit) };
  for (const [column, attributes] of columnLines(root, count)) {
    const width = numberOf(attributes["width"]);
    const size = width === undefined ? undefined : Math.round(width * pixelsPerDigit);
    sizes[column] = sized(size, isOn(attributes["hidden"]) && !isFolded(column));
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
