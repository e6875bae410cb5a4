import { fontName } from "../../joblog/layout/styles.ts";
import type { AreaPlan } from "../../joblog/model/plan.ts";
import { type NameState, type SheetState, stateVersion, type WorkbookState } from "../../state/workbook-state.ts";
import { FileRefused } from "../unpack.ts";
import { shownFormula } from "./formulas/shown-formula.ts";
import { areaText, readArea, sheetPrefix, splitSheet } from "./read-address.ts";
import { Losses, type ReadWorkbook } from "./reading.ts";
import { renameSheets } from "./rename-sheets.ts";
import { namesWithoutApostrophe } from "./sheet-names.ts";
import { readSheetDress, readSheetPart, type SheetPart } from "./sheet-parts.ts";
import { cellsState } from "./sheet-state.ts";
import type { KnownWords } from "./workable.ts";
import { type WorkbookParts, workbookParts } from "./workbook-parts.ts";

interface NamedArea {
  readonly sheet: string;
  readonly area: AreaPlan;
}

/** The area that a name's text means; undefined for a number, a formula, several areas or a sheet that is gone. */
function areaOfName(text: string, sheets: readonly SheetPart[]): NamedArea | undefined {
  const { sheet: name, local } = splitSheet(text);
  const sheet = sheets.find((one) => one.name.toLowerCase() === name?.toLowerCase());
  const area = /^\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?$/.test(local) ? readArea(local) : undefined;
  return sheet === undefined || area === undefined ? undefined : { sheet: sheet.name, area };
}

/** Names that the format or Excel keeps for itself. */
function isTechnical(name: string): boolean {
  return /^_xl/i.test(name) || name === "";
}

function readNames(book: WorkbookParts, sheets: readonly SheetPart[], losses: Losses): readonly NameState[] {
  return book.names.flatMap(({ name, text, sheet, hidden, comment }): readonly NameState[] => {
    if (isTechnical(name)) return [];
    const only = sheet === undefined ? undefined : sheets.find(({ position }) => position === sheet);
    if (hidden || (sheet !== undefined && only === undefined)) {
      losses.add(`the hidden name ${name}`);
      return [];
    }
    const found = areaOfName(text, sheets);
    const refersTo =
      found === undefined ? shownFormula(text).slice(1) : sheetPrefix(found.sheet) + areaText(found.area, true);
    if (only !== undefined)
      losses.add(`the name ${name}, which counts on one sheet alone: formulas cannot use it here`, only.name);
    else if (found === undefined)
      losses.add(`the name ${name}, which stands for ${refersTo} and not for cells: formulas cannot use it here`);
    return [
      {
        name,
        refersTo,
        ...(comment === undefined || comment === "" ? {} : { comment }),
        ...(only === undefined ? {} : { sheet: only.id }),
      },
    ];
  });
}

/** Parts of the workbook that are left out, in words. */
const leftParts: readonly (readonly [RegExp, string])[] = [
  [/^xl\/externallinks\/externallink/, "links to other workbooks: the values that came from them stay"],
  [/^xl\/connections\.xml$/, "connections to data elsewhere"],
  [/^xl\/model\//, "a data model"],
];

function noteLeft(book: WorkbookParts, losses: Losses): void {
  for (const [pattern, what] of leftParts) if (book.parts.names().some((name) => pattern.test(name))) losses.add(what);
  if (book.isProtected) losses.add("the protection of the workbook's structure");
  if (book.richStrings) losses.add("several looks within one cell's text: the text wears one");
  for (const { name, kind } of book.sheets)
    if (kind !== "worksheet")
      losses.add(kind === "chartsheet" ? "this sheet, which is a chart alone" : "this sheet, which has no cells", name);
}

/** All text is drawn in the one font that the log's sheets have. */
function noteFonts({ looks }: WorkbookParts, sheets: readonly SheetPart[], losses: Losses): void {
  const worn = new Set(
    sheets.flatMap(({ cells }) => cells.filter(({ value }) => value !== undefined).map(({ look }) => look)),
  );
  const fonts = new Set([...worn].map((look) => looks.fonts[look] ?? ""));
  const others = [...fonts].filter((font) => font !== "" && font !== fontName);
  if (others.length > 0) losses.add(`the font ${others.join(", ")}: all text is drawn in ${fontName}`);
}

function knownWords(
  sheets: readonly SheetPart[],
  names: readonly NameState[],
  functions: readonly string[],
): KnownWords {
  return {
    functions: new Set(functions.map((name) => name.toLowerCase())),
    names: new Set(
      names
        .filter(({ refersTo, sheet }) => sheet === undefined && areaOfName(refersTo, sheets) !== undefined)
        .map(({ name }) => name.toLowerCase()),
    ),
    tables: new Map(
      sheets
        .flatMap(({ tables }) => tables)
        .map(({ state, headers }) => [
          state.name.toLowerCase(),
          new Set(headers.map((header) => header.toLowerCase())),
        ]),
    ),
    sheets: new Set(sheets.map(({ name }) => name.toLowerCase())),
  };
}

/**
 * An .xlsx file as the workbench's state, with the list of what is left out. `functions` are the names of those that the
 * grid works out. Throws FileRefused where the file cannot be opened, with what is wrong with it and what helps.
 */
export function readWorkbook(file: Uint8Array, functions: readonly string[]): ReadWorkbook {
  const book = workbookParts(file);
  const losses = new Losses();
  noteLeft(book, losses);
  const sources = { strings: book.strings, count: 0 };
  const sheets = book.sheets
    .filter(({ kind }) => kind === "worksheet")
    .map((listed) => readSheetPart(book, listed, sources, losses));
  const [first] = sheets;
  if (first === undefined)
    throw new FileRefused("The workbook holds no sheet with cells. Add one in Excel, save, and open the file again.");
  noteFonts(book, sheets, losses);
  const names = readNames(book, sheets, losses);
  const known = knownWords(sheets, names, functions);
  const areaNamed = (name: string): NamedArea | undefined => {
    const found = names.find((one) => one.sheet === undefined && one.name.toLowerCase() === name.toLowerCase());
    return found === undefined ? undefined : areaOfName(found.refersTo, sheets);
  };
  const values: Record<string, ReadWorkbook["values"][string]> = {};
  const states = sheets.map((sheet): SheetState => {
    const cells = cellsState(book, sheet, known, losses);
    values[sheet.id] = cells.values;
    return { ...readSheetDress(book, sheet, areaNamed, losses), ...cells.parts };
  });
  const active = sheets.find(({ position, visible }) => position === book.active && visible);
  const renamed = namesWithoutApostrophe(sheets.map(({ name }) => name));
  const state: WorkbookState = {
    book: {
      version: stateVersion,
      order: sheets.map(({ id }) => id),
      activeSheet: (active ?? sheets.find(({ visible }) => visible) ?? first).id,
      names,
    },
    sheets: states,
  };
  return {
    state: renameSheets(state, renamed),
    values,
    losses: losses.list(),
    isByExcel: /<Application>Microsoft (?:Macintosh )?Excel</.test(
      book.parts.has("docProps/app.xml") ? book.parts.text("docProps/app.xml") : "",
    ),
    changes: [
      ...(book.datesFrom1904
        ? [
            "The workbook counts its days from 1904; its dates were turned into days counted from 1900, as they are counted here. A formula that holds a date as a plain number was not changed.",
          ]
        : []),
      ...[...renamed].map(
        ([from, to]) =>
          `Sheet ${from} is called ${to} here, as a sheet's name cannot hold a straight apostrophe; formulas follow.`,
      ),
    ],
  };
}
