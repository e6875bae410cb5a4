import { type Area, areaText, type Cell, columnLetters, sheetPrefix } from "../address.ts";
import { parseStructured, type StructuredReference, structuredText } from "./structured-reference.ts";
import { type FormulaToken, tokensOf } from "./tokens.ts";

/** What a translation needs to know of a table. */
export interface TableShape {
  readonly name: string;
  /** Header row included. */
  readonly area: Area;
  readonly headers: readonly string[];
}

export interface FormulaSurroundings {
  readonly tableNamed: (name: string) => TableShape | undefined;
  readonly tableAt: (cell: Cell) => TableShape | undefined;
  readonly sheetName: (sheet: string) => string;
}

/** A formula that Excel would not take in: unknown table or column, malformed brackets. */
export class FormulaNotUnderstood extends Error {}

/** Excel shows #VALUE! where "this row" lies outside the table; so does this expression. */
const noSuchRow = 'VALUE("this row is outside the table")';

type Line = Pick<Area, "row" | "rows">;

function linesOf(reference: StructuredReference, { area }: TableShape, row: number): Line | "outside" {
  const body = { row: area.row + 1, rows: area.rows - 1 };
  const wants = (portion: StructuredReference["portions"][number]): boolean => reference.portions.includes(portion);
  if (wants("#Totals")) throw new FormulaNotUnderstood("The table has no totals row.");
  if (wants("#This Row")) return row >= body.row && row < body.row + body.rows ? { row, rows: 1 } : "outside";
  if (wants("#All") || (wants("#Headers") && wants("#Data"))) return area;
  return wants("#Headers") ? { row: area.row, rows: 1 } : body;
}

const columnsByHeader = new WeakMap<readonly string[], ReadonlyMap<string, number>>();

/** Kept for as long as a table has these very headers: a log's formulas ask for some ten thousand columns an entry. */
function columnsOf({ headers }: TableShape): ReadonlyMap<string, number> {
  const known = columnsByHeader.get(headers);
  if (known !== undefined) return known;
  const columns = new Map<string, number>();
  for (const [index, header] of headers.entries()) {
    const name = header.toLowerCase();
    if (!columns.has(name)) columns.set(name, index);
  }
  columnsByHeader.set(headers, columns);
  return columns;
}

function columnIndex(table: TableShape, header: string): number {
  const index = columnsOf(table).get(header.toLowerCase());
  if (index === undefined) throw new FormulaNotUnderstood(`Table ${table.name} has no column "${header}".`);
  return index;
}

function resolve(
  reference: StructuredReference,
  table: TableShape,
  cell: Cell,
  sheetName: (sheet: string) => string,
): string {
  const first = reference.from === undefined ? 0 : columnIndex(table, reference.from);
  const last = reference.to === undefined ? table.headers.length - 1 : columnIndex(table, reference.to);
  const thisRow = reference.portions.includes("#This Row");
  const lines = thisRow && cell.sheet !== table.area.sheet ? "outside" : linesOf(reference, table, cell.row);
  if (lines === "outside") return noSuchRow;
  const column = table.area.column + Math.min(first, last);
  const columns = Math.abs(last - first) + 1;
  const prefix = cell.sheet === table.area.sheet ? "" : sheetPrefix(sheetName(table.area.sheet));
  return prefix + (thisRow ? rowText(lines.row, column, columns) : areaText({ ...lines, column, columns }, true));
}

/** A part of one row by its fixed columns, as `$B7` or `$B7:$D7`. */
function rowText(row: number, column: number, columns: number): string {
  const first = `$${columnLetters(column)}${row + 1}`;
  return columns === 1 ? first : `${first}:$${columnLetters(column + columns - 1)}${row + 1}`;
}

/** The grid reads no doubled quotes and takes a backslash for an escape, so both are put together from pieces. */
function textInGrid(value: string, text: string): string {
  if (!/["\\]/.test(value)) return text;
  const pieces = value.split(/(["\\])/).filter((piece) => piece !== "");
  return `(${pieces.map((piece) => (piece === '"' ? "CHAR(34)" : piece === "\\" ? "CHAR(92)" : `"${piece}"`)).join("&")})`;
}

type StructuredToken = Extract<FormulaToken, { kind: "structured" }>;

function tableOf(token: StructuredToken, cell: Cell, around: FormulaSurroundings): TableShape {
  const table = token.table === undefined ? around.tableAt(cell) : around.tableNamed(token.table);
  if (table === undefined) throw new FormulaNotUnderstood(`There is no table for ${token.text}.`);
  return table;
}

const readReferences = new WeakMap<StructuredToken, StructuredReference>();

/** Read once for each token: a template is written into every row of a table. */
function referenceOf(token: StructuredToken): StructuredReference {
  const known = readReferences.get(token);
  if (known !== undefined) return known;
  const reference = parseStructured(token.inner);
  if (reference === undefined) throw new FormulaNotUnderstood(`${token.text} is not a table reference.`);
  readReferences.set(token, reference);
  return reference;
}

/** An Excel formula, once cut, to be written for any cell and any state of its tables. */
export class FormulaTemplate {
  readonly text: string;
  private readonly tokens: readonly FormulaToken[];
  /** References by the names of their tables in small letters; undefined stands for the table around the cell. */
  private readonly references: readonly { readonly table: string | undefined; readonly thisRow: boolean }[];

  constructor(text: string) {
    this.text = text;
    this.tokens = tokensOf(text);
    this.references = this.tokens.flatMap((token) => {
      if (token.kind === "structured")
        return [{ table: token.table?.toLowerCase(), thisRow: /#this row/i.test(token.inner) }];
      return token.kind === "name" ? [{ table: token.text.toLowerCase(), thisRow: false }] : [];
    });
  }

  /** Whether the formula may say something else after tables (names in small letters) moved, or only grew at their end. */
  dependsOn({ moved, grown }: { readonly moved: ReadonlySet<string>; readonly grown: ReadonlySet<string> }): boolean {
    return this.references.some(
      ({ table, thisRow }) => table === undefined || moved.has(table) || (!thisRow && grown.has(table)),
    );
  }

  /** Whether it names a table that there is not. */
  namesMissingTable({ tableNamed }: FormulaSurroundings): boolean {
    return this.tokens.some(
      (token) => token.kind === "structured" && token.table !== undefined && tableNamed(token.table) === undefined,
    );
  }

  /** The formula in the grid's spelling for one cell. Throws FormulaNotUnderstood. */
  inGrid(cell: Cell, around: FormulaSurroundings): string {
    return this.tokens
      .map((token) => {
        if (token.kind === "text") return textInGrid(token.value, token.text);
        if (token.kind === "structured")
          return resolve(referenceOf(token), tableOf(token, cell, around), cell, around.sheetName);
        const table = token.kind === "name" ? around.tableNamed(token.text) : undefined;
        return table === undefined ? token.text : resolve({ portions: [] }, table, cell, around.sheetName);
      })
      .join("");
  }

  /** The same formula after a table or one of its columns got another name. */
  renamed(
    cell: Cell,
    around: FormulaSurroundings,
    change: { table: string; newTable?: string; headers: ReadonlyMap<string, string> },
  ): string {
    const concerns = (name: string): boolean => name.toLowerCase() === change.table.toLowerCase();
    const header = (old: string): string => change.headers.get(old.toLowerCase()) ?? old;
    return this.tokens
      .map((token) => {
        if (token.kind === "name" && concerns(token.text)) return change.newTable ?? token.text;
        if (token.kind !== "structured") return token.text;
        if (!concerns(token.table ?? around.tableAt(cell)?.name ?? "")) return token.text;
        const reference = referenceOf(token);
        const { from, to } = reference;
        if (from === undefined || to === undefined) return structuredText(change.newTable ?? change.table, reference);
        return structuredText(change.newTable ?? change.table, {
          portions: reference.portions,
          from: header(from),
          to: header(to),
        });
      })
      .join("");
  }
}
