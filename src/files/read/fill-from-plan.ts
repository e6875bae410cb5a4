import { jobLog } from "../../joblog/job-log.ts";
import { columnLetters } from "../../joblog/layout/addresses.ts";
import { layOut } from "../../joblog/layout/lay-out.ts";
import type { SheetPlan, TablePlan, WorkbookPlan } from "../../joblog/model/plan.ts";
import type {
  FigureState,
  FormulaCell,
  SheetState,
  TableState,
  TypedCell,
  WorkbookState,
} from "../../state/workbook-state.ts";
import { withCommonFormulas } from "./formulas/common-formulas.ts";
import { withCode } from "./formulas/formula-pieces.ts";
import { type OwnLog, ownLogOf } from "./own-log.ts";
import type { ReadWorkbook } from "./reading.ts";

/** A job log read from a file, with what another program had dropped from it filled in. */
export interface OpenedLog extends ReadWorkbook {
  readonly ownLog: OwnLog | undefined;
}

/** Digits that every program keeps of a number; a few more are written by some. */
const sureDigits = 15;

/** A formula without what programs spell each in their own way, to tell whether two say the same. */
function essence(formula: string): string {
  return withCode(formula, (code) =>
    code
      .replace(/\b(TRUE|FALSE)\(\)/gi, "$1")
      .replaceAll(/\s+/g, "")
      .toUpperCase()
      .replaceAll(/\d+\.\d{12,}/g, (digits) => String(Number(Number(digits).toPrecision(sureDigits)))),
  );
}

/** A number format likewise: a single letter may stand in quotes or after a backslash, and what is empty at the end be left out. */
function formatEssence(format: string): string {
  return format.replaceAll(/\\(.)/g, '"$1"').replaceAll('""', "").replace(/;+$/, "");
}

/** What no sheet of the log has any more was dropped by a program, not taken away by a person. */
interface Dropped {
  readonly frozen: boolean;
  readonly gridlines: boolean;
  readonly tableStyles: boolean;
  readonly printAreas: boolean;
}

function sameName(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}

class Filling {
  private readonly plan: WorkbookPlan;
  private readonly dropped: Dropped;
  /** The log's own spelling by what a formula says. */
  private readonly spellings: ReadonlyMap<string, string>;
  private readonly formats: ReadonlyMap<string, string>;
  private readonly done = new Map<string, number>();

  constructor(plan: WorkbookPlan, sheets: readonly SheetState[]) {
    this.plan = plan;
    const ours = sheets.filter(({ name }) => this.planOf(name) !== undefined);
    const tables = ours.flatMap((sheet) => sheet.tables);
    this.dropped = {
      frozen: ours.every(({ frozen }) => frozen.rows === 0),
      gridlines: ours.every(({ gridlines }) => gridlines),
      tableStyles: tables.every(({ style }) => style === ""),
      printAreas: ours.every(({ print }) => print.printArea === undefined),
    };
    const formulas = plan.sheets.flatMap(({ tables: planned, cells }) => [
      ...planned.flatMap(({ columns }) => columns.flatMap(({ formula }) => formula ?? [])),
      ...cells.flatMap((cell) => (cell.kind === "formula" ? cell.formula : [])),
    ]);
    this.spellings = new Map(formulas.map((formula) => [essence(formula), formula]));
    const formats = plan.sheets.flatMap(({ cells }) => cells.flatMap(({ numberFormat }) => numberFormat ?? []));
    this.formats = new Map(formats.map((format) => [formatEssence(format), format]));
  }

  private planOf(sheet: string): SheetPlan | undefined {
    return this.plan.sheets.find(({ name }) => sameName(name, sheet));
  }

  private count(what: string, count = 1): void {
    this.done.set(what, (this.done.get(what) ?? 0) + count);
  }

  /** In one sentence; undefined where nothing was missing. */
  sentence(): string | undefined {
    if (this.done.size === 0) return undefined;
    const what = [...this.done].map(([name, count]) => (count > 1 ? `${name} (${String(count)})` : name)).join(", ");
    return `Another program had saved this log without some of what belongs to it; filled in as Bathsheet makes it: ${what}.`;
  }

  sheet(sheet: SheetState): SheetState {
    const plan = this.planOf(sheet.name);
    const formulas = sheet.formulas.map((formula) => this.spelled(formula));
    const typedAgain = this.typedAgain(sheet, formulas);
    if (plan === undefined) return { ...sheet, formulas };
    const looks = sheet.looks.map(({ format, ...look }) =>
      format === undefined ? look : { ...look, format: this.formats.get(formatEssence(format)) ?? format },
    );
    const frozen = this.dropped.frozen && plan.frozenRows > 0 ? { rows: plan.frozenRows, columns: 0 } : sheet.frozen;
    if (frozen !== sheet.frozen) this.count("frozen rows");
    if (this.dropped.gridlines) this.count("hidden gridlines");
    return {
      ...sheet,
      ...typedAgain,
      formulas,
      looks,
      frozen,
      gridlines: sheet.gridlines && !this.dropped.gridlines,
      tables: sheet.tables.map((table) => this.table(table, plan.tables, sheet)),
      figures: this.figures(sheet.figures, plan),
      print: this.print(sheet, plan),
    };
  }

  private spelled(formula: string): string {
    return this.spellings.get(essence(formula)) ?? formula;
  }

  /** A yes or no that was typed comes back from some programs as a formula that says it. */
  private typedAgain(sheet: SheetState, formulas: readonly string[]): Pick<SheetState, "typed" | "worked"> {
    const truth = new Map([
      ["=TRUE()", true],
      ["=FALSE()", false],
    ]);
    const typed: TypedCell[] = [];
    const worked: FormulaCell[] = [];
    for (const cell of sheet.worked) {
      const value = truth.get(formulas[cell[3]] ?? "");
      if (value === undefined) worked.push(cell);
      else typed.push([cell[0], cell[1], cell[2], value]);
    }
    if (typed.length > 0) this.count("typed yes or no", typed.length);
    return { typed: typed.length === 0 ? sheet.typed : [...sheet.typed, ...typed], worked };
  }

  private table(table: TableState, plans: readonly TablePlan[], sheet: SheetState): TableState {
    const plan = plans.find(({ name }) => sameName(name, table.name));
    if (plan === undefined) return table;
    const headers = headersOf(table, sheet);
    const known = new Set(table.calculated.map(({ header }) => header.toLowerCase()));
    const missing = plan.columns.flatMap(({ header, formula }) => {
      const stands = headers.find((one) => sameName(one, header));
      return formula === undefined || stands === undefined || known.has(header.toLowerCase())
        ? []
        : [{ header: stands, formula }];
    });
    if (missing.length > 0) this.count("calculated columns", missing.length);
    if (this.dropped.tableStyles) this.count("styles of tables");
    return {
      ...table,
      // As the writers of the log give it.
      style: this.dropped.tableStyles ? "TableStyleLight1" : table.style,
      calculated: [
        ...table.calculated.map((column) => ({ ...column, formula: this.spelled(column.formula) })),
        ...missing,
      ],
    };
  }

  /** The add-in finds its charts by name, and some programs number them; the title tells which is which. */
  private figures(figures: readonly FigureState[], plan: SheetPlan): readonly FigureState[] {
    const taken = new Set(figures.map(({ chart }) => chart?.name));
    return figures.map((figure) => {
      const { chart } = figure;
      if (chart === undefined || plan.charts.some(({ id }) => id === chart.name)) return figure;
      const planned = plan.charts.find(({ id, title }) => title === chart.title && !taken.has(id));
      if (planned === undefined) return figure;
      taken.add(planned.id);
      return { ...figure, chart: { ...chart, name: planned.id } };
    });
  }

  private print({ print }: SheetState, plan: SheetPlan): SheetState["print"] {
    if (!this.dropped.printAreas) return print;
    this.count("print areas");
    return { ...print, printArea: `A:${columnLetters(plan.lastPrintedColumn)}` };
  }
}

function headersOf({ area: text }: TableState, sheet: SheetState): readonly string[] {
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)/.exec(text) ?? [];
  const row = Number(digits) - 1;
  if (letters === "") return [];
  return sheet.typed.flatMap(([atRow, , , value]) => (atRow === row && typeof value === "string" ? value : []));
}

function withColumnsFound(read: ReadWorkbook): ReadWorkbook {
  if (read.isByExcel) return read;
  const { state, found } = withCommonFormulas(read.state);
  if (found === 0) return read;
  const sentence = `The program that saved it left out which columns of tables are calculated; ${String(found)} were found by what their rows have in common.`;
  return { ...read, state, changes: [...read.changes, sentence] };
}

/** The log's own formulas are known to be worked out alike, and they are many. */
function ofOtherSheets({ state, values }: ReadWorkbook, plan: WorkbookPlan): ReadWorkbook["values"] {
  const others = state.sheets.filter(({ name }) => !plan.sheets.some((sheet) => sameName(sheet.name, name)));
  return Object.fromEntries(others.map(({ id }) => [id, values[id] ?? []]));
}

/** What was read, with what programs other than Excel drop filled in: where it is a job log of this version, from its description. */
export function filledFromPlan(read: ReadWorkbook): OpenedLog {
  const ownLog = ownLogOf(read.state);
  if (ownLog?.version !== jobLog.version) return { ...withColumnsFound(read), ownLog };
  const plan = layOut(jobLog, { system: ownLog.system }, { fields: {}, rows: {} });
  const filling = new Filling(plan, read.state.sheets);
  const state: WorkbookState = { ...read.state, sheets: read.state.sheets.map((sheet) => filling.sheet(sheet)) };
  const sentence = filling.sentence();
  const changes = sentence === undefined ? read.changes : [...read.changes, sentence];
  return { ...read, state, ownLog, changes, values: ofOtherSheets(read, plan) };
}
