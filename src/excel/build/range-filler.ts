import type { AreaPlan } from "../../joblog/model/plan.ts";
import { officeCode } from "../office-problems.ts";

/** A column to try with: cells that get this formula and this number format in any case. */
export interface Trial {
  readonly worksheet: Excel.Worksheet;
  readonly area: AreaPlan;
  readonly formula: string;
  readonly numberFormat: string;
}

interface Filled {
  readonly worksheet: Excel.Worksheet;
  readonly area: AreaPlan;
  readonly first: Excel.Range;
  readonly last: Excel.Range;
}

/** The types of `formulas` and `numberFormat` know arrays only. */
function forEveryCell(value: string): string[][] {
  return value as unknown as string[][];
}

function rangeOf(worksheet: Excel.Worksheet, { row, column, rows, columns }: AreaPlan): Excel.Range {
  return worksheet.getRangeByIndexes(row, column, rows, columns);
}

const isOneCell = ({ rows, columns }: AreaPlan): boolean => rows * columns === 1;

function wholeArray({ rows, columns }: AreaPlan, text: string): string[][] {
  return Array.from({ length: rows }, () => Array.from({ length: columns }, () => text));
}

function text(range: Excel.Range): string {
  return String(range.formulas[0]?.[0]);
}

/**
 * Gives every cell of a range the same formula or number format. One value for the whole range keeps requests small,
 * but Microsoft took it out of its pages in July 2020, so it is used only once this Excel has shown that it takes it, and
 * each column is looked at again. The other way is documented: a formula in the first cell, copied down by
 * `Range.copyFrom`, which repeats its source; number formats cell by cell.
 */
export class RangeFiller {
  private readonly context: Excel.RequestContext;
  private takesOneValue = false;
  private unproven: Filled[] = [];

  constructor(context: Excel.RequestContext) {
    this.context = context;
  }

  /** One trip that finds out whether one value fills a range. Without it the documented way is used throughout. */
  async tryOneValue({ worksheet, area, formula, numberFormat }: Trial): Promise<void> {
    if (isOneCell(area)) return;
    const first = rangeOf(worksheet, { ...area, rows: 1, columns: 1 });
    const last = rangeOf(worksheet, { ...area, row: area.row + area.rows - 1, rows: 1, columns: 1 });
    const range = rangeOf(worksheet, area);
    range.formulas = forEveryCell(formula);
    range.numberFormat = forEveryCell(numberFormat);
    for (const cell of [first, last]) cell.load("formulas,numberFormat");
    try {
      await this.context.sync();
    } catch (error) {
      if (officeCode(error) !== "InvalidArgument") throw error;
      return;
    }
    const [format, lastFormat] = [first, last].map((cell) => String(cell.numberFormat[0]?.[0]));
    this.takesOneValue = text(first).startsWith("=") && text(first) === text(last) && format === lastFormat;
  }

  formulas(worksheet: Excel.Worksheet, area: AreaPlan, formula: string): void {
    const first = rangeOf(worksheet, { ...area, rows: 1, columns: 1 });
    if (isOneCell(area)) first.formulas = [[formula]];
    else if (!this.takesOneValue) {
      first.formulas = [[formula]];
      this.copyDown(worksheet, area);
    } else {
      rangeOf(worksheet, area).formulas = forEveryCell(formula);
      const last = rangeOf(worksheet, { ...area, row: area.row + area.rows - 1, rows: 1, columns: 1 });
      this.unproven.push({ worksheet, area, first: first.load("formulas"), last: last.load("formulas") });
    }
  }

  numberFormat(worksheet: Excel.Worksheet, area: AreaPlan, format: string): void {
    rangeOf(worksheet, area).numberFormat =
      this.takesOneValue && !isOneCell(area) ? forEveryCell(format) : wholeArray(area, format);
  }

  /** To be called after the trip that filled: columns that did not take their formula get it the documented way. */
  async mend(): Promise<void> {
    const unproven = this.unproven;
    this.unproven = [];
    const short = unproven.filter(({ first, last }) => text(first) !== text(last));
    if (short.length === 0) return;
    this.takesOneValue = false;
    for (const { worksheet, area } of short) this.copyDown(worksheet, area);
    await this.context.sync();
  }

  private copyDown(worksheet: Excel.Worksheet, area: AreaPlan): void {
    const below = { ...area, row: area.row + 1, rows: area.rows - 1 };
    rangeOf(worksheet, below).copyFrom(rangeOf(worksheet, { ...area, rows: 1 }), "Formulas");
  }
}
