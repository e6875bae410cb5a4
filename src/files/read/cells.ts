import type { AreaPlan } from "../../joblog/model/plan.ts";
import type { StateValue } from "../../state/workbook-state.ts";
import { FileRefused } from "../unpack.ts";
import { movedFormula } from "./formulas/moved-formula.ts";
import { shownFormula } from "./formulas/shown-formula.ts";
import { lettersOf, openLimits, readArea, readCell } from "./read-address.ts";
import { hasRuns, richText, unescaped } from "./texts.ts";
import { childOf, isOn, numberOf, type XmlElement } from "./xml-tree.ts";

/** A cell as its file has it. */
export interface FileCell {
  readonly row: number;
  readonly column: number;
  /** Number of its look in the file's list. */
  readonly look: number;
  readonly value: StateValue | undefined;
  /** As Excel shows it, with "=". */
  readonly formula: string | undefined;
  /** Where an array formula's results stand. */
  readonly array: AreaPlan | undefined;
}

interface FileRow {
  readonly row: number;
  /** In points, where a person or a program set it. */
  readonly height: number | undefined;
  readonly hidden: boolean;
}

/** What the cells of a file have in common. */
export interface CellSources {
  readonly strings: readonly string[];
  /** Cells read so far, over all sheets. */
  count: number;
}

interface SharedFormula {
  readonly text: string;
  readonly row: number;
  readonly column: number;
}

const dayMs = 86_400_000;
/** Serial number of 1 January 1970. */
const unixDay = 25_569;

/** Serial number of a date that stands as text; undefined where it is none. */
function serialOf(text: string): number | undefined {
  const ms = Date.parse(/[zZ]$|[+-]\d\d:?\d\d$/.test(text) || !text.includes("T") ? text : `${text}Z`);
  return Number.isNaN(ms) ? undefined : ms / dayMs + unixDay;
}

function lastPlace(): string {
  return `row ${openLimits.rows.toLocaleString("en-US")} and column ${lettersOf(openLimits.columns - 1)}`;
}

/** Takes the cells and rows of one sheet's part as they are read. */
export class CellReader {
  readonly cells: FileCell[] = [];
  readonly rows: FileRow[] = [];
  /** What some cells hold that is not taken over. */
  readonly left = new Set<string>();
  private readonly sheet: string;
  private readonly sources: CellSources;
  private readonly shared = new Map<string, SharedFormula>();
  private readonly shown = new Map<string, string>();
  private openRow: XmlElement | undefined;
  private row = -1;
  private column = -1;

  constructor(sheet: string, sources: CellSources) {
    this.sheet = sheet;
    this.sources = sources;
  }

  /** For `readXml`: true for a cell or row, which then need not be kept. */
  readonly take = (element: XmlElement, parent: XmlElement): boolean => {
    if (element.name === "c" && parent.name === "row") {
      this.enter(parent);
      this.takeCell(element);
      return true;
    }
    if (element.name !== "row" || parent.name !== "sheetData") return false;
    this.enter(element);
    this.openRow = undefined;
    const { customHeight, ht, hidden } = element.attributes;
    const height = isOn(customHeight) ? numberOf(ht) : undefined;
    const known = this.row < openLimits.rows;
    if (known && (height !== undefined || isOn(hidden)))
      this.rows.push({ row: this.row, height, hidden: isOn(hidden) });
    return true;
  };

  /** A row need not say its number, nor a cell its place: they follow one another then. */
  private enter(row: XmlElement): void {
    if (row === this.openRow) return;
    this.openRow = row;
    const number = numberOf(row.attributes["r"]);
    this.row = number === undefined ? this.row + 1 : number - 1;
    this.column = -1;
  }

  private takeCell(element: XmlElement): void {
    const place = readCell(element.attributes["r"] ?? "");
    this.column = place?.column ?? this.column + 1;
    const row = place?.row ?? this.row;
    const { formula, array } = this.formulaOf(childOf(element, "f"), row, this.column);
    const stored = this.valueOf(element);
    // A blank text that no formula gives is no entry: a cell that holds one would count as filled in.
    const value = stored === "" && formula === undefined ? undefined : stored;
    this.requireWithin(row, this.column, value !== undefined || formula !== undefined);
    if (row >= openLimits.rows || this.column >= openLimits.columns) {
      this.left.add(`looks of blank cells beyond ${lastPlace()}`);
      return;
    }
    const look = numberOf(element.attributes["s"]) ?? 0;
    if (value === undefined && formula === undefined && look === 0) return;
    this.cells.push({ row, column: this.column, look, value, formula, array });
  }

  private requireWithin(row: number, column: number, isFilled: boolean): void {
    if (isFilled && (row >= openLimits.rows || column >= openLimits.columns))
      throw new FileRefused(
        `Sheet ${this.sheet} is filled as far as cell ${lettersOf(column)}${String(row + 1)}, and sheets are opened here up to ${lastPlace()}. Clear what lies beyond in Excel, save, and open the file again.`,
      );
    this.sources.count += 1;
    if (this.sources.count > openLimits.cells)
      throw new FileRefused(
        `The workbook has more than ${openLimits.cells.toLocaleString("en-US")} cells, which is more than can be opened here. Keep the sheets that you need in a copy of it, and open that.`,
      );
  }

  private valueOf(cell: XmlElement): StateValue | undefined {
    const stored = childOf(cell, "v");
    const text = stored?.text;
    switch (cell.attributes["t"]) {
      case "s":
        return text === undefined ? undefined : this.sharedString(text);
      case "inlineStr": {
        const inline = childOf(cell, "is");
        if (hasRuns(inline)) this.left.add("several looks within one cell's text");
        return richText(inline);
      }
      case "str":
        return text === undefined ? undefined : unescaped(text);
      case "b":
        return text === undefined ? undefined : isOn(text.trim());
      case "e":
        return text === undefined ? undefined : { error: text.trim() };
      case "d":
        return text === undefined ? undefined : (serialOf(text) ?? text);
      default:
        return numberOf(text);
    }
  }

  private sharedString(index: string): string {
    const text = this.sources.strings[Number(index)];
    if (text === undefined)
      throw new FileRefused(
        `Sheet ${this.sheet} refers to a text that the workbook does not hold, so it was not opened. Let Excel repair the file and save it again.`,
      );
    return text;
  }

  private formulaOf(
    element: XmlElement | undefined,
    row: number,
    column: number,
  ): { readonly formula: string | undefined; readonly array: AreaPlan | undefined } {
    if (element === undefined) return { formula: undefined, array: undefined };
    const { t: kind, si, ref } = element.attributes;
    const own = element.text.trim() === "" ? undefined : this.show(element.text);
    if (kind === "dataTable") this.left.add("data tables (their results stay as values)");
    if (kind === "shared" && si !== undefined)
      return { formula: this.sharedFormula(si, own, row, column), array: undefined };
    return {
      formula: own,
      array: kind === "array" && own !== undefined && ref !== undefined ? readArea(ref) : undefined,
    };
  }

  private sharedFormula(id: string, own: string | undefined, row: number, column: number): string | undefined {
    if (own !== undefined) {
      this.shared.set(id, { text: own, row, column });
      return own;
    }
    const first = this.shared.get(id);
    if (first === undefined) {
      this.left.add("formulas that are shared with a cell that is missing (their results stay as values)");
      return undefined;
    }
    return movedFormula(first.text, row - first.row, column - first.column);
  }

  private show(stored: string): string {
    const known = this.shown.get(stored) ?? shownFormula(unescaped(stored));
    this.shown.set(stored, known);
    return known;
  }
}
