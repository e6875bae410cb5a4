import type { Cell } from "../address.ts";
import { invalidArgument } from "../excel-error.ts";
import { FormulaNotUnderstood, type FormulaSurroundings, FormulaTemplate } from "../formulas/translate.ts";
import type { OSpreadsheet } from "../library.ts";
import { type Grid, positionOf } from "./grid/grid.ts";

type StoredCell = NonNullable<ReturnType<Grid["model"]["getters"]["getCell"]>>;

interface KeptFormula {
  readonly template: FormulaTemplate;
  /** What it was translated to when it was last written or looked at. */
  content: string | undefined;
  /** What the grid holds for it, in the grid's own writing. */
  inGrid: string;
}

/**
 * Remembers formulas whose Excel text differs from what the grid holds. A kept text counts only while
 * the grid's formula is what the text translates to, so typing, pasting and undo need no bookkeeping.
 */
export class FormulaKeeper {
  private readonly library: OSpreadsheet;
  private readonly grid: Grid;
  private readonly around: FormulaSurroundings;
  /** By the grid's cell id, which stays with a cell when rows are inserted above it. */
  private readonly kept = new Map<number, KeptFormula>();
  private readonly templates = new Map<string, FormulaTemplate>();
  /** Texts that were found out, by cell id, each for the very formula that the cell held then. */
  private readonly found = new Map<number, { readonly formula: object; readonly text: string }>();
  /** Whether formulas name a table that is gone. */
  private readonly orphans = new Map<FormulaTemplate, boolean>();
  /** Formulas that the grid cannot work out, by cell id; their cells hold a value in their place. */
  private readonly held = new Map<number, { readonly text: string; readonly content: string }>();
  /** Found without fault in one cell: in another they name other cells and are otherwise the same. */
  private readonly sound = new WeakSet<FormulaTemplate>();

  constructor(library: OSpreadsheet, grid: Grid, around: FormulaSurroundings) {
    this.library = library;
    this.grid = grid;
    this.around = around;
  }

  private template(text: string): FormulaTemplate {
    const known = this.templates.get(text);
    if (known !== undefined) return known;
    const template = new FormulaTemplate(text);
    this.templates.set(text, template);
    return template;
  }

  /** The formula in the grid's own writing, or undefined where the cell holds none. */
  gridText(cell: Cell): string | undefined {
    const stored = this.grid.model.getters.getCell(positionOf(cell));
    return stored?.isFormula === true ? stored.compiledFormula.toFormulaString(this.grid.model.getters) : undefined;
  }

  /** Excel formula text in the grid's spelling. Throws FormulaNotUnderstood. */
  translate(cell: Cell, text: string): string {
    return this.template(text).inGrid(cell, this.around);
  }

  /** Puts an Excel formula into a cell. Refuses, as Excel does, what is no formula or names an unknown table or column. */
  write(cell: Cell, text: string): void {
    const template = this.template(text);
    let content: string;
    try {
      content = template.inGrid(cell, this.around);
    } catch (error) {
      if (error instanceof FormulaNotUnderstood) throw invalidArgument(`${error.message} In ${text}`);
      throw error;
    }
    this.refuseFaulty(cell, template, content);
    this.grid.do("UPDATE_CELL", { ...positionOf(cell), content });
    this.keep(cell, template, content);
  }

  private refuseFaulty(cell: Cell, template: FormulaTemplate, content: string): void {
    if (this.sound.has(template)) return;
    const compiled = this.library.CompiledFormula.Compile(content, cell.sheet, this.grid.model.getters);
    // An unknown function is a formula all the same: the cell shows #NAME?, in Excel as here.
    const fault = compiled.isBadExpression
      ? (compiled.execute as () => { value: string; message: string })()
      : undefined;
    if (fault !== undefined && fault.value !== "#NAME?")
      throw invalidArgument(`There is a problem with the formula ${template.text}: ${fault.message}`);
    this.sound.add(template);
  }

  private keep(cell: Cell, template: FormulaTemplate, content?: string): void {
    const stored = this.grid.model.getters.getCell(positionOf(cell));
    const inGrid = this.gridText(cell);
    if (stored === undefined || inGrid === undefined) return;
    if (inGrid === template.text) this.kept.delete(stored.id);
    else this.kept.set(stored.id, { template, inGrid, content });
    if (stored.isFormula) this.found.set(stored.id, { formula: stored.compiledFormula, text: template.text });
  }

  /** The formula as it was given, or undefined where the cell holds none. */
  read(cell: Cell): string | undefined {
    const stored = this.grid.model.getters.getCell(positionOf(cell));
    return stored === undefined ? undefined : this.textOf(cell, stored);
  }

  /** The same for a cell that is at hand. */
  textOf(cell: Cell, stored: StoredCell): string | undefined {
    if (!stored.isFormula) return this.heldText(stored);
    const formula = stored.compiledFormula;
    const known = this.found.get(stored.id);
    if (known?.formula === formula) return known.text;
    const kept = this.valid(cell);
    const text = kept !== undefined && !this.isOrphan(kept.template) ? kept.template.text : this.gridText(cell);
    if (text !== undefined) this.found.set(stored.id, { formula, text });
    return text;
  }

  /** A table that was taken away leaves formulas that still work in the grid, by the addresses of its cells. */
  private isOrphan(template: FormulaTemplate): boolean {
    const known = this.orphans.get(template) ?? template.namesMissingTable(this.around);
    this.orphans.set(template, known);
    return known;
  }

  private heldText({ id, content }: Extract<StoredCell, { isFormula: false }>): string | undefined {
    const held = this.held.get(id);
    return held?.content === content ? held.text : undefined;
  }

  /** Notes the formula of a cell that holds a value in its place, until something else is entered there. */
  hold(cell: Cell, text: string): void {
    const stored = this.grid.model.getters.getCell(positionOf(cell));
    if (stored?.isFormula === false) this.held.set(stored.id, { text, content: stored.content });
  }

  /** Call where formulas may read otherwise without having been written: a sheet or a name got another one. */
  forgetTexts(): void {
    this.found.clear();
    this.orphans.clear();
  }

  private valid(cell: Cell): KeptFormula | undefined {
    const stored = this.grid.model.getters.getCell(positionOf(cell));
    const inGrid = this.gridText(cell);
    if (stored === undefined || inGrid === undefined) return undefined;
    const kept = this.kept.get(stored.id);
    if (kept === undefined || kept.inGrid === inGrid) return kept;
    if (this.canonical(cell, kept.template) !== inGrid) return undefined;
    kept.inGrid = inGrid;
    kept.content = undefined;
    return kept;
  }

  /** The text in the grid's spelling; undefined where a table or column that it names is gone. */
  private translation(cell: Cell, template: FormulaTemplate): string | undefined {
    try {
      return template.inGrid(cell, this.around);
    } catch (error) {
      if (error instanceof FormulaNotUnderstood) return undefined;
      throw error;
    }
  }

  private canonical(cell: Cell, template: FormulaTemplate): string | undefined {
    const content = this.translation(cell, template);
    return content === undefined ? undefined : this.canonicalText(cell, content);
  }

  /** A formula in the grid's spelling as the grid itself would write it. */
  private canonicalText(cell: Cell, content: string): string {
    const { getters } = this.grid.model;
    return this.library.CompiledFormula.Compile(content, cell.sheet, getters).toFormulaString(getters);
  }

  /** Every cell whose kept text still counts. */
  entries(): readonly { readonly cell: Cell; readonly text: string }[] {
    const found: { cell: Cell; text: string }[] = [];
    for (const id of [...this.kept.keys()]) {
      const cell = this.locate(id);
      const kept = cell === undefined ? undefined : this.valid(cell);
      if (cell === undefined || kept === undefined) this.kept.delete(id);
      else found.push({ cell, text: kept.template.text });
    }
    return found;
  }

  private locate(id: number): Cell | undefined {
    try {
      const { sheetId, row, col } = this.grid.model.getters.getCellPosition(id);
      return { sheet: sheetId, row, column: col };
    } catch {
      // The grid throws for a cell that was deleted; then there is nothing to keep.
      return undefined;
    }
  }

  /** Brings every formula up to date that depends on tables that changed. */
  refresh(tables: Parameters<FormulaTemplate["dependsOn"]>[0]): void {
    for (const [id, { template }] of [...this.kept]) {
      if (!template.dependsOn(tables)) continue;
      const cell = this.locate(id);
      const kept = cell === undefined ? undefined : this.valid(cell);
      if (cell === undefined || kept === undefined) this.kept.delete(id);
      else this.bringUpToDate(cell, kept);
    }
  }

  private bringUpToDate(cell: Cell, kept: KeptFormula): void {
    const content = this.translation(cell, kept.template);
    if (content === undefined || content === kept.content) return;
    // A formula that the grid itself moved may say already what it should; one that was written says something else.
    if (kept.content === undefined && this.canonicalText(cell, content) === kept.inGrid) {
      kept.content = content;
      return;
    }
    this.grid.do("UPDATE_CELL", { ...positionOf(cell), content });
    this.keep(cell, kept.template, content);
  }

  /** Takes up a text for a formula that the grid already holds, as restoring does. */
  adopt(cell: Cell, text: string): void {
    this.keep(cell, this.template(text));
  }

  /** Text of the formula after a renaming, written anew where it differs. */
  rename(
    entries: readonly { readonly cell: Cell; readonly text: string }[],
    change: Parameters<FormulaTemplate["renamed"]>[2],
  ): void {
    for (const { cell, text } of entries) {
      const renamed = this.template(text).renamed(cell, this.around, change);
      if (renamed !== text) this.adopt(cell, renamed);
    }
  }
}
