/**
 * A workbook as plain data: what the browser keeps, what a file is written from and what one is read into. Every sheet
 * stands for itself, with its formula texts and looks once and cells that name them by number, so that one sheet can be
 * kept without the others. Rows and columns count from 0; addresses and formulas are written as Excel writes them.
 */
export const stateVersion = 2;

/** What a cell holds; an error by its word, such as `#N/A`. Text is text, also where it looks like a number. */
export type StateValue = string | number | boolean | { readonly error: string };

export interface LineState {
  readonly style: "thin" | "medium" | "thick" | "dashed" | "dotted";
  /** `#RRGGBB`. */
  readonly color: string;
}

/** Absent is the usual: Arial 10, black on white, left to the kind of value. Colors are `#RRGGBB`. */
export interface TextLook {
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly underline?: boolean;
  readonly strikethrough?: boolean;
  readonly fontSize?: number;
  readonly textColor?: string;
  readonly fillColor?: string;
  readonly align?: "left" | "center" | "right";
  readonly verticalAlign?: "top" | "middle" | "bottom";
  readonly wrapping?: "wrap" | "overflow" | "clip";
  readonly rotation?: number;
  readonly hideGridLines?: boolean;
}

export interface Look {
  readonly text?: TextLook;
  readonly border?: {
    readonly top?: LineState;
    readonly bottom?: LineState;
    readonly left?: LineState;
    readonly right?: LineState;
  };
  /** Excel's number format; absent is General. */
  readonly format?: string;
}

/** A cell that holds what was typed. `look` counts in the sheet's looks. */
export type TypedCell = readonly [row: number, column: number, look: number, value: StateValue];

/** A cell with a formula, which counts in the sheet's formulas. */
export type FormulaCell = readonly [row: number, column: number, look: number, formula: number];

/** An empty cell with a look. */
export type DressedCell = readonly [row: number, column: number, look: number];

/** The value that a file gives beside a formula that the grid cannot work out; it counts for as long as the formula stands. */
export type KeptValue = readonly [row: number, column: number, value: StateValue];

export interface CalculatedColumnState {
  readonly header: string;
  /** What a new row gets, beginning with =. */
  readonly formula: string;
  /** Where the formula has relative references: the sheet's row in which it stands so. */
  readonly row?: number;
}

export interface TableState {
  readonly name: string;
  /** Headers included, such as `A10:BF12`. */
  readonly area: string;
  /** Excel's style name; "" for none. */
  readonly style: string;
  /** The grid's own style where it draws another. */
  readonly drawnAs?: string;
  readonly headerRow: boolean;
  readonly totalsRow: boolean;
  readonly filterButtons: boolean;
  readonly bandedRows: boolean;
  readonly bandedColumns: boolean;
  readonly firstColumn: boolean;
  readonly lastColumn: boolean;
  readonly calculated: readonly CalculatedColumnState[];
}

export interface ValidationWordsState {
  /** The rule as Office.js was given it. */
  readonly rule?: unknown;
  readonly ignoreBlanks?: boolean;
  readonly errorAlert?: {
    readonly showAlert: boolean;
    readonly style: string;
    readonly title: string;
    readonly message: string;
  };
  readonly prompt?: { readonly showPrompt: boolean; readonly title: string; readonly message: string };
}

/** A rule for entries. Kind and values are in the grid's words: `isBetween` with `["0", "14"]`, `isValueInList`. */
export interface ValidationState {
  readonly ranges: readonly string[];
  readonly criterion: {
    readonly type: string;
    readonly values: readonly string[];
    readonly dateValue?: string;
    readonly displayStyle?: string;
  };
  /** Whether the grid refuses an entry that breaks the rule; it cannot for a formula of one's own. */
  readonly blocks: boolean;
  readonly words?: ValidationWordsState;
}

/** In the grid's words. The add-in's rules and a file's are `CellIsRule` with the operator `customFormula`. */
type ConditionalRule =
  | {
      readonly type: "CellIsRule";
      readonly operator: string;
      readonly values: readonly string[];
      readonly style: TextLook;
      readonly dateValue?: string;
    }
  | { readonly type: "ColorScaleRule" | "DataBarRule" | "IconSetRule"; readonly [more: string]: unknown };

export interface ConditionalFormatState {
  readonly ranges: readonly string[];
  readonly rule: ConditionalRule;
  readonly stopIfTrue?: boolean;
}

export interface SeriesState {
  /** Such as `Readings!E11:E40`; on the chart's own sheet without the sheet's name. */
  readonly values: string;
  readonly label?: string;
  readonly color?: string;
  /** What Excel shows and the grid does not draw. */
  readonly dashed?: boolean;
  readonly markers?: boolean;
  /** Its own x where it differs from the first series', which the grid draws for all. */
  readonly x?: string;
}

export interface AxisState {
  readonly title?: string;
  readonly min?: number;
  readonly max?: number;
  readonly format?: string;
}

/** The kinds that the add-in draws. Line charts stand for Excel's scatter charts with lines. */
export interface ChartState {
  readonly kind: "line" | "scatter" | "bar";
  readonly name: string;
  readonly title: string;
  /** x or categories. */
  readonly labels?: string;
  readonly series: readonly SeriesState[];
  readonly horizontal?: boolean;
  readonly legend: "top" | "bottom" | "left" | "right" | "none";
  readonly x?: AxisState;
  readonly y?: AxisState;
  /** The y axis' beginning was chosen by the host, which may choose anew. */
  readonly automaticMinimum?: boolean;
}

export interface FigureState {
  /** Of its top left corner. */
  readonly row: number;
  readonly column: number;
  /** Pixels from that cell's corner. */
  readonly offset: { readonly x: number; readonly y: number };
  readonly width: number;
  readonly height: number;
  /** A chart as far as Excel could draw it. */
  readonly chart?: ChartState;
  /** In the grid's own words: what is no such chart, or more than one. It then stands for all of it. */
  readonly other?: { readonly tag: string; readonly name?: string; readonly data: unknown };
}

export interface LineSize {
  /** Pixels; absent is the usual. */
  readonly size?: number;
  readonly hidden?: boolean;
}

/** Print set-up by the names that Office.js gives to its members; lengths in points. */
export interface PrintState {
  readonly orientation?: "Portrait" | "Landscape";
  readonly zoom?: {
    readonly scale?: number;
    readonly horizontalFitToPages?: number;
    readonly verticalFitToPages?: number;
  };
  readonly paperSize?: string;
  readonly centerHorizontally?: boolean;
  /** Such as `$10:$10`, `$A:$A`. */
  readonly printTitleRows?: string;
  readonly printTitleColumns?: string;
  readonly printArea?: string;
  /** Rows, counted from 0, before which a page begins. */
  readonly pageBreaks?: readonly number[];
  readonly leftMargin?: number;
  readonly rightMargin?: number;
  readonly topMargin?: number;
  readonly bottomMargin?: number;
  readonly headerMargin?: number;
  readonly footerMargin?: number;
  readonly leftHeader?: string;
  readonly centerHeader?: string;
  readonly rightHeader?: string;
  readonly leftFooter?: string;
  readonly centerFooter?: string;
  readonly rightFooter?: string;
}

export interface SheetState {
  /** Lasting and unlike any other's, also after a renaming. */
  readonly id: string;
  readonly name: string;
  /** How many there are in the grid; a few more than are used. */
  readonly rows: number;
  readonly columns: number;
  /** Excel's text, each once, beginning with =. */
  readonly formulas: readonly string[];
  /** Each once. */
  readonly looks: readonly Look[];
  readonly typed: readonly TypedCell[];
  readonly worked: readonly FormulaCell[];
  readonly dressed: readonly DressedCell[];
  readonly kept: readonly KeptValue[];
  readonly tables: readonly TableState[];
  readonly validations: readonly ValidationState[];
  readonly conditionalFormats: readonly ConditionalFormatState[];
  readonly figures: readonly FigureState[];
  readonly merges: readonly string[];
  /** By number, where they are not as usual. */
  readonly columnSizes: Readonly<Record<number, LineSize>>;
  readonly rowSizes: Readonly<Record<number, LineSize>>;
  readonly columnGroups?: readonly ColumnGroup[];
  readonly frozen: { readonly rows: number; readonly columns: number };
  readonly gridlines: boolean;
  readonly visible: boolean;
  readonly locked: boolean;
  readonly tabColor?: string;
  readonly print: PrintState;
  /** What else the grid holds of a sheet, in its own words: groups of rows and columns. */
  readonly others?: Readonly<Record<string, unknown>>;
}

/** Columns from the first to the last, which a person folds away and opens together. */
export interface ColumnGroup {
  readonly first: number;
  readonly last: number;
  readonly folded: boolean;
}

export interface NameState {
  readonly name: string;
  /** `Baths!$B$4` or what else it stands for, without =. Only an area can be used in the grid; others are kept as text. */
  readonly refersTo: string;
  readonly comment?: string;
  /** The id of the one sheet in which it counts. */
  readonly sheet?: string;
}

/** All but the sheets. */
export interface BookState {
  readonly version: typeof stateVersion;
  /** Ids in order. */
  readonly order: readonly string[];
  readonly activeSheet: string;
  readonly names: readonly NameState[];
  /** What else the grid holds of a workbook, in its own words: pivot tables, table styles. */
  readonly others?: Readonly<Record<string, unknown>>;
}

export interface WorkbookState {
  readonly book: BookState;
  /** In the book's order. */
  readonly sheets: readonly SheetState[];
}
