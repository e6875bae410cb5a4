import { openLimits } from "../../files/read/read-address.ts";
import { unescaped } from "../../files/read/texts.ts";
import type { StateValue } from "../../state/workbook-state.ts";
import { cellKey } from "../job/log-in-book.ts";
import { NotPlain } from "./not-plain.ts";

/** An area of a sheet whose computed columns need not be read; rows and columns from 0. */
export interface ScannedTable {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
  /** Headings of columns in which nobody types. */
  readonly computed: ReadonlySet<string>;
}

const entities: Readonly<Record<string, string>> = { lt: "<", gt: ">", amp: "&", quot: '"', apos: "'" };

/** The text of a part as XML has it, with entities resolved. */
function plainText(text: string): string {
  if (!text.includes("&")) return text;
  return text.replaceAll(/&(#?\w*);?/g, (whole, name: string) => {
    const known = entities[name];
    if (known !== undefined && whole.endsWith(";")) return known;
    const code = /^#(?:x([0-9a-fA-F]{1,6})|(\d{1,7}))$/.exec(name);
    const point =
      code === null ? Number.NaN : Number.parseInt(code[1] ?? code[2] ?? "", code[1] === undefined ? 10 : 16);
    if (!whole.endsWith(";") || !(point > 0 && point <= 0x10ffff)) throw new NotPlain("An entity");
    return String.fromCodePoint(point);
  });
}

/** A text of bytes, a character each, as the UTF-8 that it is. It is a copy: a part of a text would keep the whole of it. */
const decoded = (bytes: string): string => Buffer.from(bytes, "latin1").toString("utf8");

const copied = (text: string): string => Buffer.from(text, "utf8").toString("utf8");

/** The text between a tag that begins at or after `from` and its end; undefined where there is none before `end`. */
function within(xml: string, tag: string, from: number, end: number): string | undefined {
  const open = xml.indexOf(`<${tag}`, from);
  if (open < 0 || open >= end) return undefined;
  const start = xml.indexOf(">", open) + 1;
  if (start <= 0 || start > end) throw new NotPlain("A cell");
  if (xml.charCodeAt(start - 2) === slash) return "";
  const stop = xml.indexOf(`</${tag}>`, start);
  if (stop < 0 || stop > end) throw new NotPlain("A cell");
  return xml.slice(start, stop);
}

const rowEnd = "</row>";
const slash = 47;
const quote = 34;
const letterA = 65;
const digit0 = 48;

/** An attribute of a tag, as it stands there. */
export const attribute = (tag: string, name: string): string | undefined => {
  const at = tag.indexOf(` ${name}="`);
  if (at < 0) return undefined;
  const from = at + name.length + 3;
  const to = tag.indexOf('"', from);
  if (to < 0) throw new NotPlain("A tag");
  return tag.slice(from, to);
};

/** Takes the cells of a sheet's part from its text, without making a tree of it. */
class SheetScan {
  readonly cells = new Map<number, StateValue>();
  private count = 0;
  /** Columns that nobody types into, by table, once its headings are read. */
  private readonly skipped = new Map<ScannedTable, ReadonlySet<number>>();

  constructor(
    private readonly xml: string,
    private readonly strings: readonly string[],
    private readonly tables: readonly ScannedTable[],
  ) {}

  run(): ReadonlyMap<number, StateValue> {
    const { xml } = this;
    const start = xml.indexOf("<sheetData>");
    const stop = xml.lastIndexOf("</sheetData>");
    if (!xml.slice(0, 2000).includes("<worksheet") || !xml.slice(-100).trimEnd().endsWith("</worksheet>"))
      throw new NotPlain("The sheet");
    // Comments, data sections and types of its own. Marks that are rare are found soonest.
    if (["!--", "!DOCTYPE", "![CDATA["].some((mark) => xml.includes(mark))) throw new NotPlain("The sheet");
    if (start < 0 && stop < 0 && xml.includes("<sheetData/>")) return this.cells;
    // XML turns a carriage return into a line's end.
    if (start < 0 || stop < start || xml.includes("\r", start)) throw new NotPlain("The sheet");
    let at = start + "<sheetData>".length;
    let last = -1;
    while (at < stop) {
      if (!xml.startsWith("<row", at)) {
        if (xml.slice(at, stop).trim() === "") break;
        throw new NotPlain("A row");
      }
      const end = xml.indexOf(">", at);
      const row = Number(attribute(xml.slice(at, end), "r")) - 1;
      if (!(row > last) || row >= openLimits.rows) throw new NotPlain("A row");
      last = row;
      at = xml.charCodeAt(end - 1) === slash ? end + 1 : this.row(row, end + 1, stop);
    }
    return this.cells;
  }

  /** Takes a row's cells, and gives the place after its end. */
  private row(row: number, from: number, to: number): number {
    const { xml } = this;
    const inTable = this.tables.filter((one) => row > one.row && row < one.row + one.rows);
    const skipped = inTable.map((table) => this.skippedOf(table));
    let at = from;
    while (at < to) {
      if (!xml.startsWith("<c ", at)) {
        if (xml.startsWith(rowEnd, at)) return at + rowEnd.length;
        throw new NotPlain("A row");
      }
      if (!xml.startsWith('r="', at + 3)) throw new NotPlain("A cell");
      let place = at + 6;
      let column = 0;
      let code = xml.charCodeAt(place);
      while (code >= letterA && code < letterA + 26) {
        column = column * 26 + code - letterA + 1;
        place += 1;
        code = xml.charCodeAt(place);
      }
      let number = 0;
      while (code >= digit0 && code < digit0 + 10) {
        number = number * 10 + code - digit0;
        place += 1;
        code = xml.charCodeAt(place);
      }
      if (code !== quote || number !== row + 1 || column === 0 || column > openLimits.columns)
        throw new NotPlain("A cell");
      this.count += 1;
      if (this.count > openLimits.cells) throw new NotPlain("The sheet");
      const end = xml.indexOf(">", place);
      if (xml.charCodeAt(end - 1) === slash) {
        at = end + 1;
        continue;
      }
      const close = xml.indexOf("</c>", end);
      if (close < 0 || close > to) throw new NotPlain("A cell");
      if (!skipped.some((columns) => columns.has(column - 1)))
        this.take(row, column - 1, xml.slice(place, end), end + 1, close);
      at = close + "</c>".length;
    }
    throw new NotPlain("A row");
  }

  private skippedOf(table: ScannedTable): ReadonlySet<number> {
    const known = this.skipped.get(table);
    if (known !== undefined) return known;
    const columns = new Set<number>();
    for (let column = table.column; column < table.column + table.columns; column += 1) {
      const heading = this.cells.get(cellKey(table.row, column));
      if (typeof heading === "string" && table.computed.has(heading)) columns.add(column);
    }
    this.skipped.set(table, columns);
    return columns;
  }

  private take(row: number, column: number, tag: string, from: number, to: number): void {
    const { xml } = this;
    const hasFormula = xml.startsWith("<f", from);
    const value = this.valueOf(attribute(tag, "t"), from, to);
    // A blank text is no entry, nor what a formula shows as nothing.
    if (value === undefined || value === "") return;
    if (hasFormula && /^[^>]*\bt="(?:array|dataTable)"/.test(xml.slice(from, to))) throw new NotPlain("A formula");
    this.cells.set(cellKey(row, column), value);
  }

  private valueOf(kind: string | undefined, from: number, to: number): StateValue | undefined {
    if (kind === "inlineStr") {
      const inline = within(this.xml, "is", from, to);
      if (inline === undefined || /<r[ >P]/.test(inline)) throw new NotPlain("A text");
      return unescaped(plainText(decoded(within(inline, "t", 0, inline.length) ?? "")));
    }
    const text = within(this.xml, "v", from, to);
    if (text === undefined) return undefined;
    switch (kind) {
      case undefined:
      case "n": {
        const number = text.trim() === "" ? Number.NaN : Number(text);
        return Number.isFinite(number) ? number : undefined;
      }
      case "s": {
        const shared = this.strings[Number(text)];
        if (shared === undefined) throw new NotPlain("A text");
        return shared;
      }
      case "str":
        return unescaped(plainText(decoded(text)));
      case "b":
        return text.trim() === "1" || text.trim() === "true";
      case "e":
        return { error: text.trim() };
      default:
        throw new NotPlain("A cell");
    }
  }
}

/** What the cells of a sheet show, by `cellKey`; those of computed columns are left out. `xml` has a character a byte. */
export function scanSheet(
  xml: string,
  strings: readonly string[],
  tables: readonly ScannedTable[],
): ReadonlyMap<number, StateValue> {
  return new SheetScan(xml, strings, tables).run();
}

/** The texts that the sheets of a workbook share. */
export function scanStrings(xml: string): readonly string[] {
  if (
    xml.includes("<!") ||
    xml.includes("<rPh") ||
    !xml.includes("<sst") ||
    !xml.trimEnd().endsWith(xml.includes("</sst>") ? "</sst>" : "/>")
  )
    throw new NotPlain("The texts");
  const strings: string[] = [];
  for (const [, item = ""] of xml.matchAll(/<si(?:\s[^>]*)?(?:\/>|>([^]*?)<\/si>)/g)) {
    const parts = [...item.matchAll(/<t(?:\s[^>]*)?(?:\/>|>([^<]*)<\/t>)/g)].map(([, text = ""]) => plainText(text));
    strings.push(copied(unescaped(parts.join(""))));
  }
  return strings;
}
