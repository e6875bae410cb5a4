import type { Area } from "../../address.ts";
import type { Style } from "../../library.ts";
import { zoneOf } from "../../workbook/grid/grid.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import type { ClientObject } from "../requests/client-object.ts";
import type { Requests } from "../requests/requests.ts";
import { RangeBordersObject } from "./borders.ts";
import { LookObject } from "./look-object.ts";
import { RangeFillObject, RangeFontObject } from "./range-font.ts";

/** The grid measures in pixels, Excel in points: 96 to 72 an inch. */
const pixelsPerPoint = 96 / 72;

const horizontal: Readonly<Record<string, Style["align"]>> = { Left: "left", Center: "center", Right: "right" };
const vertical: Readonly<Record<string, Style["verticalAlign"]>> = { Top: "top", Center: "middle", Bottom: "bottom" };

function nameOf<Value>(words: Readonly<Record<string, Value>>, value: Value, usual: string): string {
  return Object.entries(words).find(([, one]) => one === value)?.[0] ?? usual;
}

type Members =
  | "columnWidth"
  | "rowHeight"
  | "horizontalAlignment"
  | "verticalAlignment"
  | "wrapText"
  | "fill"
  | "font"
  | "borders"
  | "autofitColumns"
  | "autofitRows";

export class RangeFormatObject extends LookObject<Excel.RangeFormat> implements Pick<Excel.RangeFormat, Members> {
  protected readonly looks = {
    horizontalAlignment: (style: Style): string => nameOf(horizontal, style.align, "General"),
    verticalAlignment: (style: Style): string => nameOf(vertical, style.verticalAlign, "Bottom"),
    wrapText: (style: Style): boolean => style.wrapping === "wrap",
    columnWidth: (): null => null,
    rowHeight: (): null => null,
  };

  constructor(requests: Requests, range: ClientObject<Area, object>) {
    super(requests, "RangeFormat", range);
  }

  protected override fetch(property: string, area: Area, workbook: Workbook): unknown {
    const { getters } = workbook.grid.model;
    if (property === "columnWidth") return getters.getColSize(area.sheet, area.column) / pixelsPerPoint;
    if (property === "rowHeight") return getters.getRowSize(area.sheet, area.row) / pixelsPerPoint;
    return super.fetch(property, area, workbook);
  }

  get fill(): Excel.RangeFill {
    return this.part("fill", () => new RangeFillObject(this.requests, "RangeFill", this).face);
  }
  get font(): Excel.RangeFont {
    return this.part("font", () => new RangeFontObject(this.requests, "RangeFont", this).face);
  }
  get borders(): Excel.RangeBorderCollection {
    return this.part("borders", () => new RangeBordersObject(this.requests, this).face);
  }

  get horizontalAlignment(): Excel.HorizontalAlignment {
    return this.loadedValue("horizontalAlignment") as Excel.HorizontalAlignment;
  }
  set horizontalAlignment(name: Excel.RangeFormat["horizontalAlignment"]) {
    this.look("horizontalAlignment", alignStyle("align", horizontal[name]), name);
  }

  get verticalAlignment(): Excel.VerticalAlignment {
    return this.loadedValue("verticalAlignment") as Excel.VerticalAlignment;
  }
  set verticalAlignment(name: Excel.RangeFormat["verticalAlignment"]) {
    this.look("verticalAlignment", alignStyle("verticalAlign", vertical[name]), name);
  }

  get wrapText(): boolean {
    return this.loadedValue("wrapText") as boolean;
  }
  set wrapText(wrap: boolean) {
    this.look("wrapText", { wrapping: wrap ? "wrap" : "overflow" }, wrap);
  }

  get columnWidth(): number {
    return this.loadedValue("columnWidth") as number;
  }
  set columnWidth(points: number) {
    this.resize("columnWidth", "COL", points);
  }

  get rowHeight(): number {
    return this.loadedValue("rowHeight") as number;
  }
  set rowHeight(points: number) {
    this.resize("rowHeight", "ROW", points);
  }

  private resize(member: string, dimension: "COL" | "ROW", points: number): void {
    this.change(
      member,
      (wanted, { grid }) => {
        grid.makeRoom(dimension === "COL" ? { ...wanted, row: 0, rows: 1 } : { ...wanted, column: 0, columns: 1 });
        const { top, bottom, left, right } = zoneOf(wanted);
        const [first, last] = dimension === "COL" ? [left, right] : [top, bottom];
        const elements = Array.from({ length: last - first + 1 }, (_, index) => first + index);
        grid.do("RESIZE_COLUMNS_ROWS", {
          sheetId: wanted.sheet,
          dimension,
          elements,
          size: Math.round(points * pixelsPerPoint),
        });
      },
      points,
    );
  }

  autofitColumns(): void {
    this.change("autofitColumns", ({ sheet, column, columns }, { grid }) => {
      grid.do("AUTORESIZE_COLUMNS", {
        sheetId: sheet,
        cols: Array.from({ length: columns }, (_, index) => column + index),
      });
    });
  }

  autofitRows(): void {
    this.change("autofitRows", ({ sheet, row, rows }, { grid }) => {
      grid.do("AUTORESIZE_ROWS", { sheetId: sheet, rows: Array.from({ length: rows }, (_, index) => row + index) });
    });
  }
}

/** A style with the alignment, or without any where Excel's "General" asks for the usual one. */
function alignStyle<Key extends "align" | "verticalAlign">(key: Key, value: Style[Key]): Style {
  return value === undefined ? {} : { [key]: value };
}
