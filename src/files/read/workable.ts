import { piecesOf } from "./formulas/formula-pieces.ts";
import { readCell } from "./read-address.ts";

/** What formulas may name in the workbook and the grid. All in small letters. */
export interface KnownWords {
  /** Functions that the grid works out. */
  readonly functions: ReadonlySet<string>;
  /** Names that stand for areas. */
  readonly names: ReadonlySet<string>;
  /** Headings by table. */
  readonly tables: ReadonlyMap<string, ReadonlySet<string>>;
  readonly sheets: ReadonlySet<string>;
}

const word = /([\p{L}_\\][\p{L}\p{N}_.\\?]*)\s*(\(|!|:?$)?/gu;

/** What stands between the outer brackets names known columns of a known table, and no row of totals. */
function knowsBrackets(text: string, headers: ReadonlySet<string> | undefined): boolean {
  const inner = text.slice(1, -1).trim();
  if (headers === undefined || /#totals/i.test(inner)) return false;
  const parts = inner.includes("[")
    ? [...inner.matchAll(/\[((?:'.|[^'[\]])*)\]/gs)].map(([, part]) => part ?? "")
    : [inner];
  return parts.every((part) => {
    const name = part.replace(/^@/, "").trim();
    return name === "" || name.startsWith("#") || headers.has(name.replace(/'(.)/gs, "$1").toLowerCase());
  });
}

function quotedSheet(text: string): string {
  return text.slice(1, -1).replaceAll("''", "'").toLowerCase();
}

/**
 * The first thing in a formula that the grid cannot work out, in words; undefined where it can all be. `around` holds the
 * headings of the table in whose rows the formula stands.
 */
export function unworkable(
  formula: string,
  known: KnownWords,
  around: ReadonlySet<string> | undefined,
): string | undefined {
  const pieces = piecesOf(formula);
  for (const [index, { kind, text }] of pieces.entries()) {
    const before = pieces[index - 1];
    if (kind === "quoted name" && !known.sheets.has(quotedSheet(text))) return `the sheet ${text}`;
    if (kind === "brackets") {
      const table = before?.kind === "code" ? /[\p{L}_\\][\p{L}\p{N}_.\\]*$/u.exec(before.text)?.[0] : undefined;
      if (/^\[\d+\]$/.test(text)) return "another workbook";
      if (!knowsBrackets(text, table === undefined ? around : known.tables.get(table.toLowerCase())))
        return `a part of table ${table ?? text}`;
    }
    if (kind !== "code") continue;
    const fault = unknownWord(text, pieces[index + 1]?.kind === "brackets", known);
    if (fault !== undefined) return fault;
  }
  return undefined;
}

/** Errors that stand in a formula, such as #N/A. */
const errorWord = /#(?:N\/A|DIV\/0!|[A-Z_]+[!?])/gi;

function unknownWord(text: string, bracketsFollow: boolean, known: KnownWords): string | undefined {
  const code = text.replaceAll(errorWord, (error) => " ".repeat(error.length));
  for (const match of code.matchAll(word)) {
    const [whole, name = "", after = ""] = match;
    const from = match.index;
    const before = code[from - 1] ?? "";
    // Letters of a cell's address or of a number such as 1E5.
    if (/[\p{N}$.]/u.test(before) || (before === "!" && readCell(name) !== undefined)) continue;
    const lower = name.toLowerCase();
    const ends = from + whole.length === code.length;
    if (after === "(") {
      if (!known.functions.has(lower)) return `the function ${name.toUpperCase()}`;
    } else if (after === "!") {
      if (!known.sheets.has(lower)) return `the sheet ${name}`;
    } else if (ends && bracketsFollow) continue;
    else if (
      readCell(name) === undefined &&
      !isPlain(lower, code, from) &&
      !known.names.has(lower) &&
      !known.tables.has(lower)
    )
      return `the name ${name}`;
  }
  return undefined;
}

/** Truth values, errors, and the letters of whole columns such as A:C. */
function isPlain(name: string, code: string, at: number): boolean {
  if (name === "true" || name === "false") return true;
  if (!/^[a-z]{1,3}$/.test(name)) return false;
  return code[at + name.length] === ":" || code[at - 1] === ":";
}
