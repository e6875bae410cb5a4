import type { Area } from "../address.ts";
import { invalidArgument } from "../excel-error.ts";
import type { Style } from "../library.ts";
import { positionOf, zoneOf } from "../workbook/grid.ts";
import type { Workbook } from "../workbook/workbook.ts";
import { RangeBordersObject } from "./borders.ts";
import { ClientObject, partOf, type Requests } from "./client-object.ts";
import { mapArea } from "./matrix.ts";

/** The grid measures in pixels, Excel in points: 96 to 72 an inch. */
const pixelsPerPoint = 96 / 72;

const horizontal: Readonly<Record<string, Style["align"]>> = { Left: "left", Center: "center", Right: "right" };
const vertical: Readonly<Record<string, Style["verticalAlign"]>> = { Top: "top", Center: "middle", Bottom: "bottom" };

function nameOf<Value>(words: Readonly<Record<string, Value>>, value: Value, usual: string): string {
  return Object.entries(words).find(([, one]) => one === value)?.[0] ?? usual;
}

export function checkedColor(color: string, location: string): string {
  if (!/^#[0-9a-f]{6}$/i.test(color)) throw invalidArgument(`"${color}" is no #RRGGBB colour.`, location);
  return color.toUpperCase();
}

/** One value where all cells agree, null where they differ, as Excel reports a mixed look. */
function common(area: Area, workbook: Workbook, read: (style: Style) => unknown): unknown {
  const inside = workbook.grid.clip(area);
  const found = new Set(inside === undefined ? [read({})] : mapArea(inside, (cell) => read(workbook.grid.model.getters.getCell(positionOf(cell))?.style ?? {})).flat());
  return found.size === 1 ? [...found][0] : null;
}

abstract class LookObject<Face extends object> extends ClientObject<Area, Face> {
  protected abstract readonly looks: Readonly<Record<string, (style: Style) => unknown>>;

  constructor(requests: Requests, kind: string, range: ClientObject<Area, object>) {
    super(requests, kind, partOf(range, "look", (area) => area));
  }

  protected get scalars(): readonly string[] {
    return Object.keys(this.looks);
  }

  protected fetch(property: string, area: Area, workbook: Workbook): unknown {
    return common(area, workbook, this.looks[property] ?? ((): unknown => null));
  }

  protected look(member: string, style: Style, value: unknown): void {
    this.change(member, (area, workbook) => {
      workbook.requireUnlocked(area.sheet, `${this.kind}.${member}`);
      workbook.grid.look(area, style);
    }, value);
  }
}

class RangeFillObject extends LookObject<Excel.RangeFill> implements Pick<Excel.RangeFill, "color" | "clear"> {
  protected readonly looks = { color: (style: Style): string => style.fillColor ?? "#FFFFFF" };

  get color(): string { return this.loadedValue("color") as string; }
  set color(color: string) { this.look("color", { fillColor: checkedColor(color, "RangeFill.color") }, color); }

  clear(): void {
    this.change("clear", (area, workbook) => { workbook.grid.look(area, { fillColor: "" }); });
  }
}

class RangeFontObject extends LookObject<Excel.RangeFont> implements Pick<Excel.RangeFont, "bold" | "italic" | "color" | "size" | "underline" | "name"> {
  protected readonly looks = {
    bold: (style: Style): boolean => style.bold ?? false,
    italic: (style: Style): boolean => style.italic ?? false,
    color: (style: Style): string => style.textColor ?? "#000000",
    size: (style: Style): number => style.fontSize ?? 10,
    underline: (style: Style): string => (style.underline === true ? "Single" : "None"),
    name: (): string => "Arial",
  };

  get bold(): boolean { return this.loadedValue("bold") as boolean; }
  set bold(bold: boolean) { this.look("bold", { bold }, bold); }
  get italic(): boolean { return this.loadedValue("italic") as boolean; }
  set italic(italic: boolean) { this.look("italic", { italic }, italic); }
  get color(): string { return this.loadedValue("color") as string; }
  set color(color: string) { this.look("color", { textColor: checkedColor(color, "RangeFont.color") }, color); }
  get size(): number { return this.loadedValue("size") as number; }
  set size(size: number) { this.look("size", { fontSize: size }, size); }
  get underline(): Excel.RangeUnderlineStyle { return this.loadedValue("underline") as Excel.RangeUnderlineStyle; }
  set underline(underline: Excel.RangeUnderlineStyle | "None" | "Single" | "Double" | "SingleAccountant" | "DoubleAccountant") {
    this.look("underline", { underline: underline !== "None" }, underline);
  }
  /** The grid has one typeface; the name is read back and not drawn. */
  get name(): string { return this.loadedValue("name") as string; }
  set name(name: string) { this.change("name", () => undefined, name); }
}

type Members = "columnWidth" | "rowHeight" | "horizontalAlignment" | "verticalAlignment" | "wrapText" | "fill" | "font" | "borders" | "autofitColumns" | "autofitRows";

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

  get fill(): Excel.RangeFill { return this.part("fill", () => new RangeFillObject(this.requests, "RangeFill", this).face); }
  get font(): Excel.RangeFont { return this.part("font", () => new RangeFontObject(this.requests, "RangeFont", this).face); }
  get borders(): Excel.RangeBorderCollection { return this.part("borders", () => new RangeBordersObject(this.requests, this).face); }

  get horizontalAlignment(): Excel.HorizontalAlignment { return this.loadedValue("horizontalAlignment") as Excel.HorizontalAlignment; }
  set horizontalAlignment(name: Excel.RangeFormat["horizontalAlignment"]) { this.look("horizontalAlignment", alignStyle("align", horizontal[name]), name); }

  get verticalAlignment(): Excel.VerticalAlignment { return this.loadedValue("verticalAlignment") as Excel.VerticalAlignment; }
  set verticalAlignment(name: Excel.RangeFormat["verticalAlignment"]) { this.look("verticalAlignment", alignStyle("verticalAlign", vertical[name]), name); }

  get wrapText(): boolean { return this.loadedValue("wrapText") as boolean; }
  set wrapText(wrap: boolean) { this.look("wrapText", { wrapping: wrap ? "wrap" : "overflow" }, wrap); }

  get columnWidth(): number { return this.loadedValue("columnWidth") as number; }
  set columnWidth(points: number) { this.resize("columnWidth", "COL", points); }

  get rowHeight(): number { return this.loadedValue("rowHeight") as number; }
  set rowHeight(points: number) { this.resize("rowHeight", "ROW", points); }

  private resize(member: string, dimension: "COL" | "ROW", points: number): void {
    this.change(member, (wanted, { grid }) => {
      grid.makeRoom(dimension === "COL" ? { ...wanted, row: 0, rows: 1 } : { ...wanted, column: 0, columns: 1 });
      const { top, bottom, left, right } = zoneOf(wanted);
      const [first, last] = dimension === "COL" ? [left, right] : [top, bottom];
      const elements = Array.from({ length: last - first + 1 }, (_, index) => first + index);
      grid.do("RESIZE_COLUMNS_ROWS", { sheetId: wanted.sheet, dimension, elements, size: Math.round(points * pixelsPerPoint) });
    }, points);
  }

  autofitColumns(): void {
    this.change("autofitColumns", ({ sheet, column, columns }, { grid }) => { grid.do("AUTORESIZE_COLUMNS", { sheetId: sheet, cols: Array.from({ length: columns }, (_, index) => column + index) }); });
  }

  autofitRows(): void {
    this.change("autofitRows", ({ sheet, row, rows }, { grid }) => { grid.do("AUTORESIZE_ROWS", { sheetId: sheet, rows: Array.from({ length: rows }, (_, index) => row + index) }); });
  }
}

/** A style with the alignment, or without any where Excel's "General" asks for the usual one. */
function alignStyle<Key extends "align" | "verticalAlign">(key: Key, value: Style[Key]): Style {
  return value === undefined ? {} : { [key]: value };
}
