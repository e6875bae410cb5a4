import type { Look, SheetState, StateValue } from "../../../state/workbook-state.ts";
import { areaText, type Cell } from "../address.ts";
import { FormulaNotUnderstood, type FormulaSurroundings, FormulaTemplate } from "../formulas/translate.ts";
import type { BorderDescription, OSpreadsheet, Style } from "../library.ts";
import { isTextFormat, textCellContent } from "../workbook/text-format.ts";

/** Looks of all sheets by the numbers that the grid's data gives them. */
export class GridLooks {
  readonly styles: Record<number, Style> = {};
  readonly formats: Record<number, string> = {};
  readonly borders: Record<number, Partial<Record<string, BorderDescription>>> = {};
  private readonly numbers = new Map<string, number>();

  private number<Item>(kind: string, pool: Record<number, Item>, item: Item): number {
    const key = kind + JSON.stringify(item);
    const number = this.numbers.get(key) ?? this.numbers.size + 1;
    this.numbers.set(key, number);
    pool[number] = item;
    return number;
  }

  style(look: NonNullable<Look["text"]>): number {
    return this.number("style", this.styles, { ...look });
  }

  format(format: string): number {
    return this.number("format", this.formats, format);
  }

  border(border: NonNullable<Look["border"]>): number {
    return this.number("border", this.borders, { ...border });
  }
}

/** Whether the grid would take a text for something else if it were typed. */
function looksTyped(text: string, { helpers, DEFAULT_LOCALE }: OSpreadsheet): boolean {
  return (
    /^[=']/.test(text) ||
    /^(?:true|false)$/i.test(text) ||
    helpers.isEvaluationError(text) ||
    helpers.isNumber(text, DEFAULT_LOCALE) ||
    helpers.isDateTime(text, DEFAULT_LOCALE)
  );
}

/** The content of a literal cell; a text that a text cell could not hold gives up the cell's format. */
function literal(
  value: StateValue,
  format: string,
  library: OSpreadsheet,
): { readonly content: string; readonly format?: "" } {
  if (typeof value === "object") return { content: value.error };
  if (typeof value === "boolean") return { content: value ? "TRUE" : "FALSE" };
  if (typeof value === "number") return { content: String(value) };
  if (isTextFormat(format)) return textCellContent(value.startsWith("'") ? `'${value}` : value);
  return { content: value === "" || looksTyped(value, library) ? `'${value}` : value };
}

/** The parts of the grid's data of a sheet that its cells fill. */
export interface GridCells {
  readonly cells: Record<string, string>;
  readonly styles: Record<string, number>;
  readonly formats: Record<string, number>;
  readonly borders: Record<string, number>;
}

interface Means {
  readonly library: OSpreadsheet;
  readonly looks: GridLooks;
  readonly around: FormulaSurroundings;
  readonly inGrid: (format: string) => string;
}

interface NumberedLook {
  readonly style: number | undefined;
  readonly format: string;
  readonly formatNumber: number | undefined;
  readonly border: number | undefined;
}

/** A sheet's cells as the grid's data hold them. */
export class SheetCells {
  readonly cells: GridCells = { cells: {}, styles: {}, formats: {}, borders: {} };
  private readonly state: SheetState;
  private readonly means: Means;
  private readonly looks: readonly NumberedLook[];

  constructor(state: SheetState, means: Means) {
    this.state = state;
    this.means = means;
    this.looks = state.looks.map(({ text, format, border }): NumberedLook => {
      const own = format === undefined ? "" : means.inGrid(format);
      return {
        style: text === undefined ? undefined : means.looks.style(text),
        format: own,
        formatNumber: own === "" ? undefined : means.looks.format(own),
        border: border === undefined ? undefined : means.looks.border(border),
      };
    });
    this.fill();
  }

  private dress(at: string, number: number, keepFormat = true): void {
    const look = this.looks[number];
    if (look === undefined) throw new RangeError(`There is no look ${String(number)} on sheet ${this.state.name}.`);
    const { cells } = this;
    if (look.style !== undefined) cells.styles[at] = look.style;
    if (look.formatNumber !== undefined && keepFormat) cells.formats[at] = look.formatNumber;
    if (look.border !== undefined) cells.borders[at] = look.border;
  }

  private fill(): void {
    const { state, means } = this;
    const kept = new Map(state.kept.map(([row, column, value]) => [place(row, column), value] as const));
    for (const [row, column, look] of state.dressed) this.dress(place(row, column), look);
    for (const [row, column, look, value] of state.typed) this.hold(place(row, column), look, value);
    const templates = state.formulas.map((text) => new FormulaTemplate(text));
    for (const [row, column, look, formula] of state.worked) {
      const at = place(row, column);
      const value = kept.get(at);
      if (value !== undefined) {
        this.hold(at, look, value);
        continue;
      }
      const template = templates[formula];
      if (template === undefined)
        throw new RangeError(`There is no formula ${String(formula)} on sheet ${state.name}.`);
      this.cells.cells[at] = inGrid(template, { sheet: state.id, row, column }, means.around);
      this.dress(at, look);
    }
  }

  private hold(at: string, look: number, value: StateValue): void {
    const { content, format } = literal(value, this.looks[look]?.format ?? "", this.means.library);
    this.cells.cells[at] = content;
    this.dress(at, look, format !== "");
  }
}

function place(row: number, column: number): string {
  return areaText({ row, column, rows: 1, columns: 1 });
}

/** What Excel would refuse stands as it is, and the grid shows its own error. */
function inGrid(template: FormulaTemplate, cell: Cell, around: FormulaSurroundings): string {
  try {
    return template.inGrid(cell, around);
  } catch (error) {
    if (error instanceof FormulaNotUnderstood) return template.text;
    throw error;
  }
}
