/**
 * The vocabulary in which the job log is described. A log is data: sheets, tables, columns, named
 * cells and charts. `layOut` turns the description into a `WorkbookPlan`; both writers copy that.
 */
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { Expression, Value } from "../formula/expression.ts";
import type { ColumnId, FieldId, Log } from "../formula/log-names.ts";
import type { TableId } from "../formula/log-types.ts";

/** What a column or field holds; decides cell format, validation and how a form reads it. */
export type ContentType =
  "text" | "number" | "whole number" | "date" | "date and time" | "money" | "share" | "choice" | "yes or no";

/** A unit word per system, so that a header says what its numbers mean. `null`: no unit. */
export type UnitOf = Readonly<Record<UnitSystem, string>>;

/** Where the allowed values of a choice come from. */
export type ChoiceSource =
  | { readonly kind: "fixed"; readonly choices: readonly string[] }
  | { readonly kind: "column"; readonly table: TableId; readonly column: string };

/** Limits that data validation holds a typed number to, in the header's unit. */
interface NumberLimits {
  readonly low: number;
  readonly high: number;
}

/** Where the header's unit differs between systems, so do the limits. */
export type LimitsOf = Readonly<Record<UnitSystem, NumberLimits>>;

interface ColumnBase {
  /** Stable for ever; code and stored logs know a column by it. */
  readonly id: string;
  /** Plain words without the unit; the lay-out appends the unit of the log's system. */
  readonly label: string;
  readonly type: ContentType;
  readonly unit?: UnitOf;
  /** Excel number format; without it the content type's usual one. */
  readonly format?: string;
  /** Column width in characters. */
  readonly width: number;
  /** One sentence for a person who meets the column for the first time. */
  readonly help: string;
  /** Stands right of the printed columns, for the screen alone. */
  readonly unprinted?: true;
}

export interface InputColumn extends ColumnBase {
  readonly role: "input";
  readonly required: boolean;
  readonly choices?: ChoiceSource;
  readonly limits?: LimitsOf;
  /** Other rows look this text up, so it must be a key text. */
  readonly key?: true;
  /** Says what the workbook's cells hold, not what happened: no form asks for it and no other log takes it over. */
  readonly ofCells?: true;
}

export interface ComputedColumn extends ColumnBase {
  readonly role: "computed";
  /** What the cell shows, given this row's cells by column id and all that a formula can name. */
  readonly formula: (row: Readonly<Record<string, Expression>>, log: Log) => Value;
  /** The words that it can hold, where they are few. */
  readonly words?: readonly string[];
  /** Helper columns stand at the right edge in quiet type: they feed charts and conditional formats. */
  readonly helper?: boolean;
}

export type ColumnDefinition = InputColumn | ComputedColumn;

/** Words that ask for attention get a colour as well; the words alone already say it. */
export interface RowSignal {
  /** Column whose cell is looked at and coloured. */
  readonly column: string;
  readonly when:
    | { readonly is: string }
    | { readonly startsWith: string }
    | { readonly isNot: number }
    | "not available"
    /** The same stands in another cell of the column. */
    | "double";
  readonly look: SignalLook;
}

/** `unseen` is for a label whose value is blank. */
export type SignalLook = "act" | "watch" | "good" | "quiet" | "unseen";

/** What one row is to the person who enters it or puts it right. */
interface RowEntry {
  readonly word: string;
  /** Before the running number in the key of its first row; a table without it is not numbered. */
  readonly letter?: string;
  /** Columns that tell a row from its neighbors, beside its key and its time. */
  readonly about: readonly string[];
}

export interface TableDefinition {
  readonly id: TableId;
  /** Excel table name; stable once released. */
  readonly name: string;
  readonly caption: string;
  readonly columns: readonly ColumnDefinition[];
  /** Empty rows a new log starts with (at least 1: an Excel table cannot have none). */
  readonly emptyRows: number;
  /** Rows that a new log starts with, where the content has none. */
  readonly start?: (system: UnitSystem) => readonly Cells[];
  /** Its lines are all worked out: nobody types into it and it never grows. */
  readonly fixedRows?: true;
  /** In print it begins a page. */
  readonly newPage?: true;
  readonly signals?: readonly RowSignal[];
  /** Its rows are typed as entries and can be put right one by one. */
  readonly entry?: RowEntry;
}

/** A field is looked at as a whole; `column` of a signal has no meaning here. */
type FieldSignal = Omit<RowSignal, "column">;

/** One labelled cell with a defined name. */
export interface FieldDefinition {
  readonly id: string;
  /** Excel defined name; stable once released. */
  readonly name: string;
  readonly label: string;
  readonly type: ContentType;
  readonly unit?: UnitOf;
  readonly format?: string;
  readonly help: string;
  readonly choices?: ChoiceSource;
  readonly limits?: LimitsOf;
  /** What a new log starts with, where the content says nothing. */
  readonly initial?: Readonly<Record<UnitSystem, string | number>>;
  /** A computed field carries a formula instead of a value. */
  readonly formula?: (log: Log) => Value;
  readonly signals?: readonly FieldSignal[];
  /** Set when the log is built and not to be changed by hand. */
  readonly fixed?: boolean;
  /** In a document, on the line of the field before it. */
  readonly beside?: true;
  /** In a document, framed for a pen: it is printed blank as well, where all else that is blank is left out. */
  readonly signed?: true;
}

/** Points or lines on two number axes; bars, one under another, with a word each. */
export type ChartKind = "scatter" | "bars";

/** A column of the chart's table against its `x`, or a line from one cell to the next in a row of another table. */
export type ChartSeriesDefinition = (
  | { readonly column: string }
  | {
      readonly lineOf: TableId;
      readonly line: number;
      readonly x: readonly [from: string, to: string];
      readonly y: readonly [from: string, to: string];
    }
) & { readonly label: string; readonly color: string; readonly mark: "points" | "line" | "dashes" };

export interface ChartDefinition {
  /** Stable once released. */
  readonly id: string;
  readonly kind: ChartKind;
  readonly title: string;
  /** Where the series come from; may stand on another sheet. */
  readonly table: TableId;
  readonly x: string;
  readonly xTitle: string;
  readonly xFormat: string;
  /** Without it the heading of the first series' column, with its unit. */
  readonly yTitle?: string;
  readonly yFormat: string;
  /** Where the value axis begins; without it the program that shows the chart chooses, which for bars may lie far above 0. */
  readonly yFrom?: number;
  readonly series: readonly ChartSeriesDefinition[];
}

export interface SheetDefinition {
  readonly id: string;
  readonly name: string;
  readonly title: string;
  /** One sentence under the title: what the sheet is for. */
  readonly purpose: string;
  /** Caution shown once, where the step is. */
  readonly caution?: string;
  readonly fields: readonly FieldDefinition[];
  readonly tables: readonly TableDefinition[];
  /** One under another above the tables, where no growing table reaches them and no page ends within them. */
  readonly charts?: readonly ChartDefinition[];
  /**
   * Side by side, every table can grow downward without end; stacked tables keep spare rows. On a sheet of
   * charts these stand two abreast, each under the field of the same place in the list, the table to their right.
   */
  readonly arrangement: "stacked" | "side by side" | "charts";
  readonly tabColor: string;
  /** Printed pages next to each other; a wide sheet on one page would be too small to read. */
  readonly pagesWide: number;
  readonly orientation: "portrait" | "landscape";
  /** A page for someone outside the shop: tables close together, help only beside the page. */
  readonly document?: true;
}

/**
 * What a released version of the log holds. A log of that version that lacks one of these is damaged;
 * whatever else today's log has is new since then.
 */
export interface ReleasedShape {
  /** Excel names of the named cells. */
  readonly names: readonly string[];
  /** Ids of charts. */
  readonly charts: readonly string[];
  /** Column ids by table id. */
  readonly columns: Readonly<Partial<Record<TableId, readonly string[]>>>;
}

/** Shapes by version. An entry never changes. */
export type ReleasedShapes = Readonly<Partial<Record<number, ReleasedShape>>>;

export interface LogDefinition {
  /** Stored in the workbook; a later version of Bathsheet upgrades by it. */
  readonly version: number;
  /** The shapes of the versions before this one. */
  readonly released: ReleasedShapes;
  readonly sheets: readonly SheetDefinition[];
}

/** What a cell of a row may hold; a date is an Excel serial number, an absent value a blank cell. */
export type RowValue = string | number | boolean;

/** Cells by column id, of whichever table: for what goes by the log's description. */
export type Cells = Readonly<Record<string, RowValue | undefined>>;

/** One table row by column id; computed columns never appear. */
export type LogRow<Table extends TableId> = { readonly [Id in ColumnId<Table>]?: RowValue | undefined };

/** A row for one of the log's tables. */
export type NewRow = {
  readonly [Table in TableId]: { readonly table: Table; readonly row: LogRow<Table> };
}[TableId];

/** What a log is filled with when it is laid out. */
export interface LogContent {
  readonly fields: { readonly [Id in FieldId]?: RowValue | undefined };
  readonly rows: { readonly [Table in TableId]?: readonly LogRow<Table>[] };
}
