import { cellAddress } from "../../joblog/layout/addresses.ts";
import type { SheetState, StateValue } from "../../state/workbook-state.ts";
import { isKnownError } from "../cell-value.ts";
import { storedFormula } from "../stored-formula.ts";
import type { ShownSheet } from "./known-values.ts";
import type { FileLooks } from "./looks.ts";
import { zoneOf, zoneText } from "./references.ts";
import { element, textOf } from "./xml.ts";

/** Texts of all sheets, each once. */
export class SharedTexts {
  readonly items: string[] = [];
  private readonly numbers = new Map<string, number>();

  number(text: string): number {
    const known = this.numbers.get(text);
    if (known !== undefined) return known;
    const number = this.items.push(text) - 1;
    this.numbers.set(text, number);
    return number;
  }
}

/** Text that Excel would take for something else when the cell is edited. */
const looksTyped = /^[=+\-@'#]|^\s*[\d.,($€£]|^(?:true|false)$/i;

/** Functions whose parameters files spell in a way of their own. */
const hasOwnParameters = /(?<![\w.])(?:LET|LAMBDA|MAP|REDUCE|SCAN|MAKEARRAY|BYROW|BYCOL)\(/i;

interface Means {
  readonly looks: FileLooks;
  readonly texts: SharedTexts;
  readonly lost: (what: string) => void;
}

interface CellContent {
  readonly type?: string;
  readonly formula?: string;
  readonly value?: string;
}

/** Cells of a sheet's rows, in order. */
export class CellsXml {
  private readonly rows = new Map<number, Map<number, string>>();
  private readonly state: SheetState;
  private readonly means: Means;
  private readonly headers = new Set<string>();
  private readonly plainLooks = new Map<number, number>();
  private readonly quotedLooks = new Map<number, number>();
  private readonly stored = new Map<number, string | undefined>();

  constructor(state: SheetState, shown: ShownSheet, means: Means) {
    this.state = state;
    this.means = means;
    for (const { area } of state.tables) this.noteHeaders(area);
    const spilled = new Map(shown.spilled.map(([row, column, value]) => [cellAddress(row, column), value] as const));
    for (const [row, column, look] of state.dressed) {
      const value = spilled.get(cellAddress(row, column));
      this.put(row, column, this.numberOf(look), value === undefined ? {} : this.literal(value, row, column));
      spilled.delete(cellAddress(row, column));
    }
    for (const [row, column, value] of shown.spilled)
      if (spilled.has(cellAddress(row, column))) this.put(row, column, 0, this.literal(value, row, column));
    for (const [row, column, look, value] of state.typed) {
      const quoted = typeof value === "string" && looksTyped.test(value) && this.format(look) !== "@";
      this.put(row, column, this.numberOf(look, quoted), this.literal(value, row, column));
    }
    state.worked.forEach(([row, column, look, formula], index) => {
      this.put(row, column, this.numberOf(look), this.worked(row, column, formula, index, shown));
    });
  }

  private noteHeaders(area: string): void {
    const zone = zoneOf(area);
    if (zone === undefined) return;
    for (let column = zone.left; column <= zone.right; column += 1) this.headers.add(cellAddress(zone.top, column));
  }

  private format(look: number): string | undefined {
    return this.state.looks[look]?.format;
  }

  private numberOf(look: number, quoted = false): number {
    const known = quoted ? this.quotedLooks : this.plainLooks;
    const number = known.get(look) ?? this.means.looks.cell(this.state.looks[look] ?? {}, quoted);
    known.set(look, number);
    return number;
  }

  /** Looked at once for all the cells that hold it; undefined where it is written as its values. */
  private storedText(formula: number): string | undefined {
    if (this.stored.has(formula)) return this.stored.get(formula);
    const text = this.state.formulas[formula] ?? "";
    const stored = hasOwnParameters.test(text) ? undefined : textOf(storedFormula(text));
    this.stored.set(formula, stored);
    return stored;
  }

  /** A heading of a table must be text, or Excel repairs the file. */
  private literal(value: StateValue, row: number, column: number): CellContent {
    const isHeader = this.headers.has(cellAddress(row, column));
    if (isHeader) return { type: "s", value: String(this.means.texts.number(asText(value))) };
    if (typeof value === "string")
      return value === "" ? {} : { type: "s", value: String(this.means.texts.number(value)) };
    return this.plain(value, row, column);
  }

  private plain(value: Exclude<StateValue, string>, row: number, column: number): CellContent {
    if (typeof value === "number") return { value: String(value) };
    if (typeof value === "boolean") return { type: "b", value: value ? "1" : "0" };
    if (isKnownError(value.error)) return { type: "e", value: value.error };
    this.means.lost(`the error ${value.error} in cell ${cellAddress(row, column)} (saved as #VALUE!)`);
    return { type: "e", value: "#VALUE!" };
  }

  private worked(row: number, column: number, formula: number, index: number, shown: ShownSheet): CellContent {
    const value = shown.values[index];
    const place = `${this.state.name}, cell ${cellAddress(row, column)}`;
    if (value === undefined) throw new RangeError(`The formula at ${place} has no value to store beside it.`);
    if (this.headers.has(cellAddress(row, column))) return this.literal(value, row, column);
    const stored = this.storedText(formula);
    if (stored === undefined) {
      this.means.lost(
        `the formula in cell ${cellAddress(row, column)} (LET, LAMBDA and their like are saved as their value)`,
      );
      return this.literal(value, row, column);
    }
    const spill = shown.spills.get(index);
    const zone = {
      top: row,
      left: column,
      bottom: row + (spill?.rows ?? 1) - 1,
      right: column + (spill?.columns ?? 1) - 1,
    };
    // Not worked out here for want of the function: Excel is asked to work it out when it opens the file.
    if (typeof value === "object" && value.error === "#NAME?") return { formula: element("f", { ca: 1 }, stored) };
    const content = typeof value === "string" ? { type: "str", value: textOf(value) } : this.plain(value, row, column);
    return {
      ...content,
      formula:
        spill === undefined ? element("f", {}, stored) : element("f", { t: "array", ref: zoneText(zone) }, stored),
    };
  }

  private put(row: number, column: number, look: number, { type, formula = "", value }: CellContent): void {
    const cells = this.rows.get(row) ?? new Map<number, string>();
    this.rows.set(row, cells);
    const content = value === undefined ? formula : `${formula}<v>${value}</v>`;
    cells.set(
      column,
      element("c", { r: cellAddress(row, column), s: look === 0 ? undefined : look, t: type }, content),
    );
  }

  /** The rows' elements with what `attributesOf` says of each, also of rows without cells. */
  sheetData(rows: readonly number[], attributesOf: (row: number) => Readonly<Record<string, string | number>>): string {
    const all = [...new Set([...this.rows.keys(), ...rows])].sort((a, b) => a - b);
    return element(
      "sheetData",
      {},
      ...all.map((row) => {
        const cells = [...(this.rows.get(row) ?? [])].sort(([a], [b]) => a - b).map(([, cell]) => cell);
        return element("row", { r: row + 1, ...attributesOf(row) }, ...cells);
      }),
    );
  }

  /** The area that holds every cell. */
  dimension(): string {
    const rows = [...this.rows.keys()];
    const columns = [...this.rows.values()].flatMap((cells) => [...cells.keys()]);
    if (rows.length === 0) return "A1";
    const limits = (numbers: readonly number[]): readonly [number, number] => [
      numbers.reduce((a, b) => Math.min(a, b)),
      numbers.reduce((a, b) => Math.max(a, b)),
    ];
    const [[top, bottom], [left, right]] = [limits(rows), limits(columns.length === 0 ? [0] : columns)];
    return zoneText({ top, left, bottom, right });
  }
}

export function asText(value: StateValue): string {
  if (typeof value === "object") return value.error;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return String(value);
}
