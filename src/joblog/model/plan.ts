/**
 * A workbook laid out to the cell: what `layOut` makes of the log's description and what the two
 * writers (Office.js, .xlsx) copy without thinking. Rows and columns count from 0. Formulas are in
 * Excel's US spelling with a leading "=", `BATH.` functions by their display name.
 */
import type { ChartKind, ReleasedShapes, SignalLook } from "./definition.ts";

export type StyleId =
  | "title"
  | "purpose"
  | "caution"
  | "caption"
  | "fieldLabel"
  | "fieldInput"
  | "fieldComputed"
  | "fieldStated"
  | "fieldHelp"
  | "headerInput"
  | "headerComputed"
  | "headerHelper"
  | "input"
  | "computed"
  | "paperLine"
  | "helper";

/** The look of a style or signal; colours are #RRGGBB. */
export interface Look {
  readonly fill?: string;
  readonly color?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly size?: number;
  readonly wrap?: boolean;
  readonly border?: string;
}

export type CellPlan = {
  readonly row: number;
  readonly column: number;
  readonly style: StyleId;
  readonly numberFormat?: string;
  /** Without it numbers stand right and words left, as Excel has it. */
  readonly align?: "left" | "right";
} & (
  | { readonly kind: "blank" }
  | { readonly kind: "value"; readonly value: string | number | boolean }
  | { readonly kind: "formula"; readonly formula: string }
);

export interface AreaPlan {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export interface TableColumnPlan {
  readonly id: string;
  readonly header: string;
  readonly style: StyleId;
  readonly numberFormat?: string;
  /** The calculated column's formula, the same text in every row. */
  readonly formula?: string;
}

/** The area includes the header row. */
export interface TablePlan {
  readonly id: string;
  readonly name: string;
  readonly area: AreaPlan;
  readonly columns: readonly TableColumnPlan[];
}

export type ValidationRule =
  | { readonly kind: "list"; readonly choices: readonly string[] }
  | { readonly kind: "list of area"; readonly sheet: string; readonly area: AreaPlan }
  | { readonly kind: "number between"; readonly low: number; readonly high: number }
  | { readonly kind: "date from"; readonly serial: number }
  /** True where the entry is allowed; relative to the area's first cell. */
  | { readonly kind: "formula"; readonly formula: string };

export interface ValidationPlan {
  readonly area: AreaPlan;
  readonly rule: ValidationRule;
  readonly errorTitle: string;
  readonly errorMessage: string;
}

/** `formula` is relative to the area's first cell and names no BATH function. */
export interface ConditionalFormatPlan {
  readonly area: AreaPlan;
  readonly formula: string;
  readonly look: SignalLook;
}

export interface ChartSeriesPlan {
  readonly label: string;
  readonly dataSheet: string;
  readonly x: AreaPlan;
  readonly y: AreaPlan;
  readonly color: string;
  readonly mark: "points" | "line" | "dashes";
}

/** Series areas lie on their `dataSheet`; `area` is where the chart stands on its own sheet. */
export interface ChartPlan {
  readonly id: string;
  readonly kind: ChartKind;
  readonly title: string;
  readonly area: AreaPlan;
  readonly xTitle: string;
  readonly xFormat: string;
  readonly yTitle: string;
  readonly yFormat: string;
  /** Where the value axis begins, if it is set. */
  readonly yFrom?: number;
  readonly series: readonly ChartSeriesPlan[];
}

/** Columns from the first to the last. */
export interface ColumnRun {
  readonly first: number;
  readonly last: number;
}

export interface SheetPlan {
  readonly id: string;
  readonly name: string;
  readonly tabColor: string;
  /** Characters, one per column. */
  readonly columnWidths: readonly number[];
  /** Points, for rows whose text wraps; every other row keeps the usual height. */
  readonly rowHeights: readonly { readonly row: number; readonly points: number }[];
  readonly cells: readonly CellPlan[];
  readonly tables: readonly TablePlan[];
  readonly validations: readonly ValidationPlan[];
  readonly conditionalFormats: readonly ConditionalFormatPlan[];
  readonly charts: readonly ChartPlan[];
  readonly frozenRows: number;
  readonly orientation: "portrait" | "landscape";
  readonly footer: string;
  /** Rows that repeat on every printed page, or none. */
  readonly titleRows?: { readonly first: number; readonly last: number };
  /** Rows before which a page begins. */
  readonly pageBreaks?: readonly number[];
  /** Columns from the first to this one are printed; helper columns to the right are not. */
  readonly lastPrintedColumn: number;
  /** Runs of helper columns, folded away until somebody opens them. */
  readonly folded?: readonly ColumnRun[];
  readonly pagesWide: number;
  /** Shrunk to a single page, however long its words are. */
  readonly onePage?: true;
}

export interface NamePlan {
  readonly name: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

export interface WorkbookPlan {
  readonly version: number;
  /** What earlier versions held: an upgrade tells by it what a log has lost from what it never had. */
  readonly released: ReleasedShapes;
  readonly sheets: readonly SheetPlan[];
  readonly names: readonly NamePlan[];
}
