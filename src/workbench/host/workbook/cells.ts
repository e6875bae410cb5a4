import type { Cell } from "../address.ts";
import { invalidArgument } from "../excel-error.ts";
import type { ErrorCell, EvaluatedCell } from "../library.ts";
import type { Answers } from "./answers.ts";
import type { FormulaKeeper } from "./formula-keeper.ts";
import { type Grid, positionOf } from "./grid/grid.ts";
import { isTextFormat, textCellContent } from "./text-format.ts";

export type CellValue = string | number | boolean;

/** What `values` and `formulas` accept for one cell; null leaves the cell alone. */
export type WrittenValue = CellValue | null | undefined;

/** Error words of the grid that Excel spells otherwise. */
const excelSpelling: Readonly<Record<string, string>> = {
  "#ERROR": "#VALUE!",
  "#REF": "#REF!",
  "#BAD_EXPR": "#NAME?",
  "#CYCLE": "#VALUE!",
};

/** The library's own word for the kind is a constant enumeration, which a separate script cannot share. */
function isErrorCell(cell: EvaluatedCell): cell is ErrorCell {
  const kind: string = cell.type;
  return kind === "error";
}

/** Excel reads text that starts with a sign and is no number as a formula. */
const startsWithSign = /^[+-]./;

/** Reads and writes single cells with Excel's meaning of a value. */
export class Cells {
  private readonly grid: Grid;
  private readonly formulas: FormulaKeeper;

  private readonly answers: Answers;

  constructor(grid: Grid, formulas: FormulaKeeper, answers: Answers) {
    this.grid = grid;
    this.formulas = formulas;
    this.answers = answers;
  }

  write(cell: Cell, value: WrittenValue): void {
    if (value === null || value === undefined) return;
    if (typeof value === "number" && !Number.isFinite(value)) throw invalidArgument(`A cell cannot hold ${value}.`);
    const content = typeof value === "boolean" ? (value ? "TRUE" : "FALSE") : String(value);
    if (content.startsWith("=") && content.length > 1) this.formulas.write(cell, content);
    else if (startsWithSign.test(content) && Number.isNaN(Number(content))) this.formulas.write(cell, `=${content}`);
    else this.writeLiteral(cell, content === "=" ? "'=" : content);
  }

  private writeLiteral(cell: Cell, content: string): void {
    const inTextCell = isTextFormat(this.grid.model.getters.getCell(positionOf(cell))?.format);
    this.grid.do("UPDATE_CELL", { ...positionOf(cell), ...(inTextCell ? textCellContent(content) : { content }) });
  }

  /** The value as Excel hands it over: blank is "", an error its word, and a stopgap as long as a function has not answered. */
  value(cell: Cell): CellValue {
    return this.answers.stopgap(positionOf(cell)) ?? this.worked(cell);
  }

  /** Excel's word for an error of the grid. */
  excelError(word: string): string {
    return excelSpelling[word] ?? word;
  }

  /** The same once all functions have answered. */
  worked(cell: Cell): CellValue {
    const evaluated = this.grid.model.getters.getEvaluatedCell(positionOf(cell));
    if (isErrorCell(evaluated)) return this.excelError(evaluated.value);
    return evaluated.value ?? "";
  }

  /** What the formula bar shows: the formula as it was given, else the value. */
  formula(cell: Cell): CellValue {
    return this.formulas.read(cell) ?? this.value(cell);
  }

  /** The text that the grid draws. */
  displayed(cell: Cell): string {
    return this.grid.model.getters.getEvaluatedCell(positionOf(cell)).formattedValue;
  }

  /** What hovering over an error says, or undefined. */
  tooltip(cell: Cell): string | undefined {
    const evaluated = this.grid.model.getters.getEvaluatedCell(positionOf(cell));
    return isErrorCell(evaluated) ? evaluated.message?.toString() : undefined;
  }

  /** Text typed into a literal cell without its quote mark, as a table header is read; formulas by their value. */
  literal(cell: Cell): string {
    const stored = this.grid.model.getters.getCell(positionOf(cell));
    if (stored === undefined) return "";
    if (stored.isFormula) return String(this.value(cell));
    return stored.content.startsWith("'") && !isTextFormat(stored.format) ? stored.content.slice(1) : stored.content;
  }

  isBlank(cell: Cell): boolean {
    const stored = this.grid.model.getters.getCell(positionOf(cell));
    return stored === undefined || (!stored.isFormula && stored.content === "");
  }
}
