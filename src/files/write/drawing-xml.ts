import type { FigureState, SheetState } from "../../state/workbook-state.ts";
import type { ShownSheet } from "./known-values.ts";
import { declaration, element } from "./xml.ts";

/** The grid's lines that nobody sized, in pixels. */
const usualColumn = 96;
const usualRow = 23;

/** A pixel in the units of drawings. */
const pixel = 9525;

interface Place {
  readonly line: number;
  readonly offset: number;
}

/** The line that lies so many pixels on, and how far into it. */
function placeAfter(start: number, pixels: number, sizeOf: (line: number) => number): Place {
  let line = start;
  let left = pixels;
  while (left >= sizeOf(line)) {
    left -= sizeOf(line);
    line += 1;
  }
  return { line, offset: left };
}

function corner(name: string, column: Place, row: Place): string {
  return element(
    name,
    {},
    element("xdr:col", {}, String(column.line)),
    element("xdr:colOff", {}, String(Math.round(column.offset * pixel))),
    element("xdr:row", {}, String(row.line)),
    element("xdr:rowOff", {}, String(Math.round(row.offset * pixel))),
  );
}

export interface DrawnChart {
  readonly figure: FigureState;
  readonly name: string;
  readonly relation: string;
}

/** A sheet's drawing: where its charts stand, and by which names the add-in finds them. */
export function drawingPart(state: SheetState, shown: ShownSheet, charts: readonly DrawnChart[]): string {
  const size = (lines: SheetState["columnSizes"], usual: number, line: number): number => {
    const own = lines[line];
    return own?.hidden === true ? 0 : Math.max(1, own?.size ?? usual);
  };
  const columnSize = (column: number): number => size(state.columnSizes, usualColumn, column);
  const rowSize = (row: number): number => size(state.rowSizes, shown.heights.get(row) ?? usualRow, row);
  const anchors = charts.map(({ figure, name, relation }, index) => {
    const [column, row] = [
      placeAfter(figure.column, figure.offset.x, columnSize),
      placeAfter(figure.row, figure.offset.y, rowSize),
    ];
    const [toColumn, toRow] = [
      placeAfter(figure.column, figure.offset.x + figure.width, columnSize),
      placeAfter(figure.row, figure.offset.y + figure.height, rowSize),
    ];
    const frame = element(
      "xdr:graphicFrame",
      { macro: "" },
      element(
        "xdr:nvGraphicFramePr",
        {},
        element("xdr:cNvPr", { id: index + 2, name: name === "" ? `Chart ${String(index + 1)}` : name }),
        element("xdr:cNvGraphicFramePr"),
      ),
      element("xdr:xfrm", {}, element("a:off", { x: 0, y: 0 }), element("a:ext", { cx: 0, cy: 0 })),
      element(
        "a:graphic",
        {},
        element(
          "a:graphicData",
          { uri: "http://schemas.openxmlformats.org/drawingml/2006/chart" },
          element("c:chart", {
            "xmlns:c": "http://schemas.openxmlformats.org/drawingml/2006/chart",
            "xmlns:r": "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
            "r:id": relation,
          }),
        ),
      ),
    );
    return element(
      "xdr:twoCellAnchor",
      {},
      corner("xdr:from", column, row),
      corner("xdr:to", toColumn, toRow),
      frame,
      element("xdr:clientData"),
    );
  });
  return (
    declaration +
    element(
      "xdr:wsDr",
      {
        "xmlns:xdr": "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing",
        "xmlns:a": "http://schemas.openxmlformats.org/drawingml/2006/main",
      },
      ...anchors,
    )
  );
}
