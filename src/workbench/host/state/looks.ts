import type { LineState, Look, TextLook } from "../../../state/workbook-state.ts";
import type { BorderDescription, Style } from "../library.ts";
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

/** Numbers of contents, by the objects that hold them: the grid changes none in place, and cells share most. */
class Contents<Held extends object> {
  private readonly numbers = new Map<string, number>();
  private readonly known = new WeakMap<Held, number>();
  private readonly textOf: (held: Held) => string;

  constructor(textOf: (held: Held) => string) {
    this.textOf = textOf;
  }

  /** 0 for nothing. */
  number(held: Held | undefined): number {
    if (held === undefined) return 0;
    const known = this.known.get(held);
    if (known !== undefined) return known;
    const text = this.textOf(held);
    const number = text === "" ? 0 : (this.numbers.get(text) ?? this.numbers.size + 1);
    if (number !== 0) this.numbers.set(text, number);
    this.known.set(held, number);
    return number;
  }
}

const styles = new Contents<Style>((style) => {
  const members = Object.entries(plainStyle(style)).sort();
  return members.length === 0 ? "" : JSON.stringify(members);
});

/** A border's lines are exchanged in it, so only the lines are known by their objects. */
const lines = new Contents<BorderDescription>(({ style, color }) => `${style} ${color}`);

/** Contents that fit into one number, as nearly all do. */
const mostLines = 64;
const mostStyles = 4096;

function keyOf(style: number, { top, bottom, left, right }: GridBorder): number | string {
  const [t, b, l, r] = [lines.number(top), lines.number(bottom), lines.number(left), lines.number(right)];
  if (style >= mostStyles || Math.max(t, b, l, r) >= mostLines) return [style, t, b, l, r].join(" ");
  return (((style * mostLines + t) * mostLines + b) * mostLines + l) * mostLines + r;
}

const noBorder: GridBorder = {};

/** A sheet's looks, each once, in the order in which they are met. */
export class LookPool {
  readonly looks: Look[] = [{}];
  /** By format, then by style and border. */
  private readonly numbers = new Map<string, Map<number | string, number>>([["", new Map([[0, 0]])]]);
  private readonly spelling: FormatSpelling;

  constructor(spelling: FormatSpelling) {
    this.spelling = spelling;
  }

  /** Number of a look; 0 is the look that is none. */
  numberOf(style: Style | undefined, border: GridBorder = noBorder, format = ""): number {
    const styleNumber = styles.number(style);
    const key = keyOf(styleNumber, border);
    const known = this.numbers.get(format) ?? new Map<number | string, number>();
    this.numbers.set(format, known);
    const number = known.get(key);
    if (number !== undefined) return number;
    const added = this.looks.push({
      ...(styleNumber === 0 || style === undefined ? {} : { text: plainStyle(style) }),
      ...(border === noBorder ? {} : { border: plainBorder(border) }),
      ...(format === "" ? {} : { format: this.spelling.inExcel(format) }),
    });
    known.set(key, added - 1);
    return added - 1;
  }
}
