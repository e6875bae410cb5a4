import type { Style } from "../../library.ts";
import { checkedColor, LookObject } from "./look-object.ts";

export class RangeFillObject extends LookObject<Excel.RangeFill> implements Pick<Excel.RangeFill, "color" | "clear"> {
  protected readonly looks = { color: (style: Style): string => style.fillColor ?? "#FFFFFF" };

  get color(): string {
    return this.loadedValue("color") as string;
  }
  set color(color: string) {
    this.look("color", { fillColor: checkedColor(color, "RangeFill.color") }, color);
  }

  clear(): void {
    this.change("clear", (area, workbook) => {
      workbook.grid.look(area, { fillColor: "" });
    });
  }
}

export class RangeFontObject
  extends LookObject<Excel.RangeFont>
  implements Pick<Excel.RangeFont, "bold" | "italic" | "color" | "size" | "underline" | "name">
{
  protected readonly looks = {
    bold: (style: Style): boolean => style.bold ?? false,
    italic: (style: Style): boolean => style.italic ?? false,
    color: (style: Style): string => style.textColor ?? "#000000",
    size: (style: Style): number => style.fontSize ?? 10,
    underline: (style: Style): string => (style.underline === true ? "Single" : "None"),
    name: (): string => "Arial",
  };

  get bold(): boolean {
    return this.loadedValue("bold") as boolean;
  }
  set bold(bold: boolean) {
    this.look("bold", { bold }, bold);
  }
  get italic(): boolean {
    return this.loadedValue("italic") as boolean;
  }
  set italic(italic: boolean) {
    this.look("italic", { italic }, italic);
  }
  get color(): string {
    return this.loadedValue("color") as string;
  }
  set color(color: string) {
    this.look("color", { textColor: checkedColor(color, "RangeFont.color") }, color);
  }
  get size(): number {
    return this.loadedValue("size") as number;
  }
  set size(size: number) {
    this.look("size", { fontSize: size }, size);
  }
  get underline(): Excel.RangeUnderlineStyle {
    return this.loadedValue("underline") as Excel.RangeUnderlineStyle;
  }
  set underline(
    underline: Excel.RangeUnderlineStyle | "None" | "Single" | "Double" | "SingleAccountant" | "DoubleAccountant",
  ) {
    this.look("underline", { underline: underline !== "None" }, underline);
  }
  /** The grid has one typeface; the name is read back and not drawn. */
  get name(): string {
    return this.loadedValue("name") as string;
  }
  set name(name: string) {
    this.change("name", () => undefined, name);
  }
}
