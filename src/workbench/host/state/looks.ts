import type { LineState, Look, TextLook } from "../../../state/workbook-state.ts";
import type { Style } from "../library.ts";
import type { FormatSpelling } from "../workbook/format-spelling.ts";
import type { GridBorder } from "./grid-data.ts";

const sides = ["top", "bottom", "left", "right"] as const;

function plainStyle(style: Style): TextLook {
  const given = Object.entries(style).filter(([, value]) => value !== undefined && value !== false && value !== "");
  return Object.fromEntries(given) as TextLook;
}

function plainBorder(border: GridBorder): NonNullable<Look["border"]> {
  return Object.fromEntries(
    sides.flatMap((side): readonly (readonly [string, LineState])[] => {
      const line = border[side];
      return line === undefined ? [] : [[side, { style: line.style, color: line.color }]];
    }),
  );
}

function borderKey(border: GridBorder): string {
  let key = "";
  for (const side of sides) key += `${border[side]?.style ?? ""} ${border[side]?.color ?? ""}|`;
  return key;
}

/** Styles are never changed in place, and most cells share theirs with others. */
const keys = new WeakMap<Style, string>();

function styleKey(style: Style): string {
  const known = keys.get(style) ?? JSON.stringify(Object.entries(plainStyle(style)).sort());
  keys.set(style, known);
  return known === "[]" ? "" : known;
}

/** A sheet's looks, each once, in the order in which they are met. */
export class LookPool {
  readonly looks: Look[] = [];
  private readonly numbers = new Map<string, number>();
  private readonly spelling: FormatSpelling;

  constructor(spelling: FormatSpelling) {
    this.spelling = spelling;
    this.number("", {});
  }

  private number(key: string, look: Look): number {
    const number = this.looks.push(look) - 1;
    this.numbers.set(key, number);
    return number;
  }

  /** Number of a look; 0 is the look that is none. */
  numberOf(style: Style | undefined, border: GridBorder | undefined, format = ""): number {
    const ofStyle = style === undefined ? "" : styleKey(style);
    const key =
      border === undefined && format === ""
        ? ofStyle
        : `${ofStyle}\n${border === undefined ? "" : borderKey(border)}\n${format}`;
    const known = this.numbers.get(key);
    if (known !== undefined) return known;
    return this.number(key, {
      ...(ofStyle === "" || style === undefined ? {} : { text: plainStyle(style) }),
      ...(border === undefined ? {} : { border: plainBorder(border) }),
      ...(format === "" ? {} : { format: this.spelling.inExcel(format) }),
    });
  }
}
