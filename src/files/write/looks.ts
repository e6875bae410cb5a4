import { fontName, fontSize } from "../../joblog/layout/styles.ts";
import type { LineState, Look, TextLook } from "../../state/workbook-state.ts";
import { declaration, element } from "./xml.ts";

const mainNamespace = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

/** Items of one kind by number, each once. */
class Pool {
  readonly items: string[];
  private readonly numbers = new Map<string, number>();

  constructor(first: readonly string[]) {
    this.items = [];
    for (const item of first) this.number(item);
  }

  number(item: string): number {
    const known = this.numbers.get(item);
    if (known !== undefined) return known;
    const number = this.items.push(item) - 1;
    this.numbers.set(item, number);
    return number;
  }
}

function argb(color: string): string {
  const digits = color.replace("#", "");
  const six = digits.length === 3 ? Array.from(digits, (digit) => digit + digit).join("") : digits.slice(0, 6);
  return `FF${six.toUpperCase()}`;
}

/** The children in the order that Excel writes and the schema asks for (ECMA-376, CT_Font). */
function font(look: TextLook, isWhole: boolean): string {
  const flag = (name: string, on: boolean | undefined): string => (on === true ? element(name) : "");
  const size = look.fontSize ?? (isWhole ? fontSize : undefined);
  return element(
    "font",
    {},
    flag("b", look.bold),
    flag("i", look.italic),
    flag("strike", look.strikethrough),
    flag("u", look.underline),
    size === undefined ? "" : element("sz", { val: size }),
    look.textColor === undefined ? "" : element("color", { rgb: argb(look.textColor) }),
    isWhole ? element("name", { val: fontName }) + element("family", { val: 2 }) : "",
  );
}

function solid(color: string): string {
  return element(
    "fill",
    {},
    element(
      "patternFill",
      { patternType: "solid" },
      element("fgColor", { rgb: argb(color) }),
      element("bgColor", { indexed: 64 }),
    ),
  );
}

function line(name: string, state: LineState | undefined): string {
  return state === undefined
    ? element(name)
    : element(name, { style: state.style }, element("color", { rgb: argb(state.color) }));
}

function border({ left, right, top, bottom }: NonNullable<Look["border"]>): string {
  return element(
    "border",
    {},
    line("left", left),
    line("right", right),
    line("top", top),
    line("bottom", bottom),
    element("diagonal"),
  );
}

const vertical = { top: "top", middle: "center", bottom: undefined } as const;

/** The format counts turns to the left as 0 to 90 and those to the right as 91 to 180; the grid has radians to the right. */
function textRotation(radians: number | undefined): number | undefined {
  if (radians === undefined) return undefined;
  const degrees = Math.round((radians * 180) / Math.PI);
  const turned = Math.max(-90, Math.min(90, degrees));
  return turned > 0 ? 90 + turned : -turned;
}

function alignment({ align, verticalAlign, wrapping, rotation }: TextLook): string {
  const attributes = {
    horizontal: align,
    vertical: verticalAlign === undefined ? undefined : vertical[verticalAlign],
    textRotation: textRotation(rotation),
    wrapText: wrapping === "wrap" ? 1 : undefined,
  };
  return Object.values(attributes).every((value) => value === undefined) ? "" : element("alignment", attributes);
}

/** Numbers below are the format's own (ECMA-376, 18.8.30). */
const firstOwnFormat = 164;

/** All looks of a file's cells and of its conditional formats. */
export class FileLooks {
  private readonly fonts = new Pool([font({}, true)]);
  /** The first two are fixed by the format. */
  private readonly fills = new Pool([
    element("fill", {}, element("patternFill", { patternType: "none" })),
    element("fill", {}, element("patternFill", { patternType: "gray125" })),
  ]);
  private readonly borders = new Pool([border({})]);
  private readonly formats = new Pool([]);
  private readonly cells = new Pool([element("xf", { numFmtId: 0, fontId: 0, fillId: 0, borderId: 0, xfId: 0 })]);
  private readonly conditional = new Pool([]);

  /** Number of the look of a cell. `quoted` keeps a text what it is when it is edited. */
  cell(look: Look, quoted = false): number {
    const text = look.text ?? {};
    const isGeneral = look.format === undefined || look.format.toLowerCase() === "general";
    const numFmtId = isGeneral ? 0 : look.format === "@" ? 49 : firstOwnFormat + this.formats.number(look.format ?? "");
    const fontId = this.fonts.number(font(text, true));
    const fillId = text.fillColor === undefined ? 0 : this.fills.number(solid(text.fillColor));
    const borderId = look.border === undefined ? 0 : this.borders.number(border(look.border));
    const aligned = alignment(text);
    return this.cells.number(
      element(
        "xf",
        {
          numFmtId,
          fontId,
          fillId,
          borderId,
          xfId: 0,
          quotePrefix: quoted ? 1 : undefined,
          applyNumberFormat: numFmtId === 0 ? undefined : 1,
          applyFont: fontId === 0 ? undefined : 1,
          applyFill: fillId === 0 ? undefined : 1,
          applyBorder: borderId === 0 ? undefined : 1,
          applyAlignment: aligned === "" ? undefined : 1,
        },
        aligned,
      ),
    );
  }

  /** Number of the look of a conditional format, whose fill keeps its color in the background. */
  differential(look: TextLook): number {
    const ownFont = font(look, false);
    const fill =
      look.fillColor === undefined
        ? ""
        : element(
            "fill",
            {},
            element("patternFill", { patternType: "solid" }, element("bgColor", { rgb: argb(look.fillColor) })),
          );
    return this.conditional.number(element("dxf", {}, ownFont === "<font/>" ? "" : ownFont, fill));
  }

  part(): string {
    const list = (name: string, items: readonly string[]): string =>
      items.length === 0 ? "" : element(name, { count: items.length }, ...items);
    const formats = this.formats.items.map((formatCode, index) =>
      element("numFmt", { numFmtId: firstOwnFormat + index, formatCode }),
    );
    return (
      declaration +
      element(
        "styleSheet",
        { xmlns: mainNamespace },
        list("numFmts", formats),
        list("fonts", this.fonts.items),
        list("fills", this.fills.items),
        list("borders", this.borders.items),
        list("cellStyleXfs", [element("xf", { numFmtId: 0, fontId: 0, fillId: 0, borderId: 0 })]),
        list("cellXfs", this.cells.items),
        list("cellStyles", [element("cellStyle", { name: "Normal", xfId: 0, builtinId: 0 })]),
        element("dxfs", { count: this.conditional.items.length }, ...this.conditional.items),
        element("tableStyles", {
          count: 0,
          defaultTableStyle: "TableStyleMedium2",
          defaultPivotStyle: "PivotStyleLight16",
        }),
      )
    );
  }
}
