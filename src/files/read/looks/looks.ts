import type { LineState, Look, TextLook } from "../../../state/workbook-state.ts";
import type { PackageParts } from "../package-parts.ts";
import { childOf, childrenOf, isOn, numberOf, type XmlElement } from "../xml-tree.ts";
import { colorReader, themeColors } from "./colors.ts";
import { numberFormat } from "./number-formats.ts";

/** Looks of a workbook's cells and of its conditional formats, by the file's numbers. */
export interface FileLooks {
  readonly cells: readonly Look[];
  /** Whether a cell may be typed into while its sheet is protected. */
  readonly unlocked: readonly boolean[];
  readonly conditional: readonly TextLook[];
  /** The names of the cells' fonts. */
  readonly fonts: readonly string[];
  readonly color: (element: XmlElement | undefined) => string | undefined;
  /** Reads a differential look that stands in the sheet itself. */
  readonly differential: (element: XmlElement) => TextLook;
}

/** The look of cells that say nothing else; see TextLook. */
const usualSize = 10;
const usualColor = "#000000";

/** The grid's five kinds of line, the nearest for each of the format's thirteen. */
const lines: Readonly<Record<string, LineState["style"]>> = {
  thin: "thin",
  hair: "thin",
  medium: "medium",
  thick: "thick",
  double: "thick",
  dashed: "dashed",
  mediumDashed: "dashed",
  dashDot: "dashed",
  mediumDashDot: "dashed",
  slantDashDot: "dashed",
  dotted: "dotted",
  dashDotDot: "dotted",
  mediumDashDotDot: "dotted",
};

const vertical: Readonly<Record<string, TextLook["verticalAlign"]>> = { top: "top", center: "middle" };

function horizontal(word: string | undefined): TextLook["align"] {
  return word === "left" || word === "center" || word === "right" ? word : undefined;
}

/** A switch that is on when its element stands there without a value. */
function isSet(element: XmlElement | undefined): boolean {
  return element !== undefined && (element.attributes["val"] === undefined || isOn(element.attributes["val"]));
}

/** Leaves out what is undefined or false: absent is the usual. */
function given<Fields extends object>(fields: {
  readonly [Key in keyof Fields]: Fields[Key] | undefined | false;
}): Fields {
  const kept = Object.entries(fields).filter(([, value]) => value !== undefined && value !== false);
  return Object.fromEntries(kept) as Fields;
}

class LookReader {
  private readonly color: FileLooks["color"];

  constructor(color: FileLooks["color"]) {
    this.color = color;
  }

  font(font: XmlElement | undefined): TextLook {
    const underline = childOf(font, "u");
    const size = numberOf(childOf(font, "sz")?.attributes["val"]);
    const color = this.color(childOf(font, "color"));
    return given<TextLook>({
      bold: isSet(childOf(font, "b")),
      italic: isSet(childOf(font, "i")),
      underline: underline !== undefined && underline.attributes["val"] !== "none",
      strikethrough: isSet(childOf(font, "strike")),
      fontSize: size === usualSize ? undefined : size,
      textColor: color === usualColor ? undefined : color,
    });
  }

  /** A cell's fill is solid or nothing that the grid draws; a differential one keeps its color in the background. */
  fill(fill: XmlElement | undefined, differential: boolean): TextLook {
    const pattern = childOf(fill, "patternFill");
    const kind = pattern?.attributes["patternType"];
    if (pattern === undefined || kind === "none" || (!differential && kind !== "solid")) return {};
    const front = this.color(childOf(pattern, "fgColor"));
    const back = this.color(childOf(pattern, "bgColor"));
    return given<TextLook>({ fillColor: differential ? (back ?? front) : front });
  }

  border(border: XmlElement | undefined): NonNullable<Look["border"]> {
    const side = (...names: readonly string[]): LineState | undefined => {
      const element = names.map((name) => childOf(border, name)).find((one) => one !== undefined);
      const style = lines[element?.attributes["style"] ?? ""];
      return style === undefined ? undefined : { style, color: this.color(childOf(element, "color")) ?? usualColor };
    };
    return given<NonNullable<Look["border"]>>({
      top: side("top"),
      bottom: side("bottom"),
      left: side("left", "start"),
      right: side("right", "end"),
    });
  }

  alignment(alignment: XmlElement | undefined): TextLook {
    return given<TextLook>({
      align: horizontal(alignment?.attributes["horizontal"]),
      verticalAlign: vertical[alignment?.attributes["vertical"] ?? ""],
      wrapping: isOn(alignment?.attributes["wrapText"]) ? "wrap" : undefined,
    });
  }

  differential(dxf: XmlElement): TextLook {
    const { fontSize: _size, ...font } = this.font(childOf(dxf, "font"));
    return { ...font, ...this.fill(childOf(dxf, "fill"), true) };
  }
}

function isEmpty(fields: object): boolean {
  return Object.keys(fields).length === 0;
}

/** Reads the looks of a workbook whose parts of styles and of the theme may both be missing. */
export function readLooks(parts: PackageParts, styles: string | undefined, theme: string | undefined): FileLooks {
  const themed = themeColors(theme === undefined || !parts.has(theme) ? undefined : parts.tree(theme));
  const color = colorReader(themed);
  const reader = new LookReader(color);
  const root = styles === undefined || !parts.has(styles) ? undefined : parts.tree(styles);
  const fontElements = childrenOf(childOf(root, "fonts"), "font");
  const fonts = fontElements.map((font) => reader.font(font));
  const fills = childrenOf(childOf(root, "fills"), "fill").map((fill) => reader.fill(fill, false));
  const borders = childrenOf(childOf(root, "borders"), "border").map((border) => reader.border(border));
  const own = new Map(
    childrenOf(childOf(root, "numFmts"), "numFmt").map(({ attributes }) => [
      numberOf(attributes["numFmtId"]) ?? -1,
      attributes["formatCode"] ?? "",
    ]),
  );
  const cellFormats = childrenOf(childOf(root, "cellXfs"), "xf");
  const cells = cellFormats.map(({ attributes, children }): Look => {
    const at = <Item>(items: readonly Item[], name: string): Item | undefined => items[numberOf(attributes[name]) ?? 0];
    const text = {
      ...at(fonts, "fontId"),
      ...at(fills, "fillId"),
      ...reader.alignment(children.find(({ name }) => name === "alignment")),
    };
    const border = at(borders, "borderId") ?? {};
    const format = numberFormat(numberOf(attributes["numFmtId"]) ?? 0, own);
    return {
      ...(isEmpty(text) ? {} : { text }),
      ...(isEmpty(border) ? {} : { border }),
      ...(format === undefined ? {} : { format }),
    };
  });
  const names = fontElements.map((font) => childOf(font, "name")?.attributes["val"] ?? "");
  return {
    cells,
    unlocked: cellFormats.map((format) => childOf(format, "protection")?.attributes["locked"] === "0"),
    conditional: childrenOf(childOf(root, "dxfs"), "dxf").map((dxf) => reader.differential(dxf)),
    fonts: cellFormats.map(({ attributes }) => names[numberOf(attributes["fontId"]) ?? 0] ?? ""),
    color,
    differential: (element) => reader.differential(element),
  };
}
