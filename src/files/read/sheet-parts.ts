import type { AreaPlan } from "../../joblog/model/plan.ts";
import type { Look, SheetState, StateValue } from "../../state/workbook-state.ts";
import { CellReader, type CellSources, type FileCell } from "./cells.ts";
import { readFigures } from "./charts.ts";
import { readConditionalFormats } from "./looks/conditional-formats.ts";
import { showsDay } from "./looks/number-formats.ts";
import { readPrintSetUp } from "./print-set-up.ts";
import { areaText, readArea } from "./read-address.ts";
import type { Losses } from "./reading.ts";
import { columnGroups, columnSizes, frozenLines, rowSizes } from "./sheet-lines.ts";
import { type CellsByPlace, type FileTable, placeKey, readTable } from "./tables.ts";
import { readValidations, type RuleSurroundings } from "./validations.ts";
import type { WorkbookParts } from "./workbook-parts.ts";
import { childOf, childrenOf, isOn, numberOf, type XmlElement } from "./xml-tree.ts";

/** A sheet's part read as far as it can be without the other sheets. */
export interface SheetPart {
  readonly id: string;
  readonly name: string;
  readonly position: number;
  readonly root: XmlElement;
  readonly visible: boolean;
  readonly cells: readonly FileCell[];
  readonly byPlace: CellsByPlace;
  readonly tables: readonly FileTable[];
  readonly rows: CellReader["rows"];
  /** Of the grid's sheet: a few more than are used. */
  readonly size: { readonly rows: number; readonly columns: number };
  readonly drawing: string | undefined;
}

/** Elements of a sheet that are left out, in words. */
const leftElements: readonly (readonly [path: readonly string[], what: string])[] = [
  [["autoFilter"], "the sheet's filter: the rows that it hid stay hidden"],
  [["scenarios"], "scenarios"],
  [["oleObjects"], "embedded objects"],
  [["controls"], "form controls"],
  [["hyperlinks"], "links (their texts stay)"],
  [["picture"], "a picture behind the cells"],
  [["colBreaks"], "page breaks between columns"],
  [["customSheetViews"], "views of the sheet"],
];

/** Parts that a sheet points to and that are left out. */
const leftParts: Readonly<Record<string, string>> = {
  comments: "comments",
  threadedComment: "comments",
  pivotTable: "pivot tables (their figures stay as values)",
  slicer: "slicers",
  queryTable: "a connection to data elsewhere (its figures stay as values)",
};

function noteLeft(
  root: XmlElement,
  relations: readonly { readonly type: string }[],
  lost: (what: string) => void,
): void {
  for (const [path, what] of leftElements) if (childOf(root, ...path) !== undefined) lost(what);
  for (const { type } of relations) {
    const what = leftParts[type];
    if (what !== undefined) lost(what);
  }
  const extensions = childrenOf(childOf(root, "extLst"), "ext").flatMap(({ children }) => children);
  if (extensions.some(({ name }) => name === "sparklineGroups")) lost("sparklines");
  const nested = childrenOf(childOf(root, "cols"), "col").some(
    ({ attributes }) => (numberOf(attributes["outlineLevel"]) ?? 0) > 1,
  );
  if (nested) lost("groups of columns within groups");
}

/** Room below and beside what is used, as a sheet of the grid that ends with its table would pass for whole rows. */
const spare = { rows: 20, columns: 6 };
const least = { rows: 100, columns: 26 };

function sizeOf(cells: readonly FileCell[], tables: readonly FileTable[]): SheetPart["size"] {
  let [rows, columns] = [0, 0];
  for (const { row, column } of cells) {
    rows = Math.max(rows, row + 1);
    columns = Math.max(columns, column + 1);
  }
  for (const { area } of tables) {
    rows = Math.max(rows, area.row + area.rows);
    columns = Math.max(columns, area.column + area.columns);
  }
  return { rows: Math.max(least.rows, rows + spare.rows), columns: Math.max(least.columns, columns + spare.columns) };
}

/** Reads a sheet's cells and tables. */
export function readSheetPart(
  book: WorkbookParts,
  listed: WorkbookParts["sheets"][number],
  sources: CellSources,
  losses: Losses,
): SheetPart {
  const { name, part, position, visible } = listed;
  const lost = (what: string): void => {
    losses.add(what, name);
  };
  const reader = new CellReader(name, sources);
  const root = book.parts.tree(part, reader.take);
  const relations = book.parts.relations(part);
  noteLeft(root, relations, lost);
  for (const what of reader.left) lost(what);
  const byPlace = new Map(reader.cells.map((cell) => [placeKey(cell.row, cell.column), cell]));
  const tables = relations
    .filter(({ type }) => type === "table")
    .flatMap(({ target }) => readTable(book.parts.tree(target), byPlace, lost) ?? []);
  return {
    id: `s${String(position + 1)}`,
    name,
    position,
    root,
    visible,
    cells: reader.cells,
    byPlace,
    tables,
    rows: reader.rows,
    size: sizeOf(reader.cells, tables),
    drawing: relations.find(({ type }) => type === "drawing")?.target,
  };
}

/** Serial numbers counted from 1904 are so many days short of those from 1900. */
const daysFrom1900To1904 = 1462;

/** The value as it is counted here: days counted from 1904 become days counted from 1900, times stay. */
export function countedFrom1900(value: StateValue, look: Look | undefined, datesFrom1904: boolean): StateValue {
  return datesFrom1904 && typeof value === "number" && showsDay(look?.format) ? value + daysFrom1900To1904 : value;
}

function clipped(areas: readonly string[], { rows, columns }: SheetPart["size"]): readonly string[] {
  return areas.flatMap((text) => {
    const area = readArea(text);
    if (area === undefined || area.row >= rows || area.column >= columns) return [];
    const inside: AreaPlan = {
      ...area,
      rows: Math.min(area.rows, rows - area.row),
      columns: Math.min(area.columns, columns - area.column),
    };
    return [areaText(inside)];
  });
}

const kindWords: Readonly<Record<string, string>> = {
  time: "rules for times of day",
  textLength: "rules for the length of a text",
  list: "lists of choices that a formula makes",
  custom: "rules with a formula",
  colorScale: "color scales",
  dataBar: "data bars",
  iconSet: "icon sets",
};

/** Rules, looks, charts and print set-up of a sheet: all but its cells. */
export function readSheetDress(
  book: WorkbookParts,
  sheet: SheetPart,
  areaNamed: RuleSurroundings["areaNamed"],
  losses: Losses,
): Omit<SheetState, "formulas" | "looks" | "typed" | "worked" | "dressed" | "kept"> {
  const { id, name, root, size, byPlace, tables } = sheet;
  const lost = (what: string): void => {
    losses.add(what, name);
  };
  const groups = columnGroups(root, size.columns);
  const sizes = { columns: columnSizes(root, size.columns, groups), rows: rowSizes(sheet.rows, size.rows) };
  const named = (what: string): string | undefined =>
    book.names.find((one) => one.name === `_xlnm.${what}` && one.sheet === sheet.position)?.text;
  const tabColor = book.looks.color(childOf(root, "sheetPr", "tabColor"));
  const lookAt = (row: number, column: number): Look | undefined =>
    book.looks.cells[byPlace.get(placeKey(row, column))?.look ?? 0];
  const validations = readValidations(
    root,
    {
      sheet: name,
      formatAt: (row, column) => lookAt(row, column)?.format,
      areaNamed,
      daysOn: book.datesFrom1904 ? daysFrom1900To1904 : 0,
    },
    (kind) => {
      lost(kindWords[kind] ?? `rules for entries of the kind ${kind}`);
    },
  );
  const formats = readConditionalFormats(root, book.looks, (kind) => {
    lost(kindWords[kind] ?? `conditional formats of the kind ${kind}`);
  });
  const shorter = [...validations, ...formats].some(({ ranges }) => ranges.join() !== clipped(ranges, size).join());
  if (shorter) lost("rules for cells far below the last row: they reach as far as the sheet does here");
  const fitting = <Rule extends { readonly ranges: readonly string[] }>(rules: readonly Rule[]): readonly Rule[] =>
    rules.map((rule) => ({ ...rule, ranges: clipped(rule.ranges, size) })).filter(({ ranges }) => ranges.length > 0);
  return {
    id,
    name,
    rows: size.rows,
    columns: size.columns,
    tables: tables.map(({ state }) => state),
    validations: fitting(validations),
    conditionalFormats: fitting(formats),
    figures: sheet.drawing === undefined ? [] : readFigures(book.parts, sheet.drawing, name, sizes, lost),
    merges: clipped(
      childrenOf(childOf(root, "mergeCells"), "mergeCell").map(({ attributes }) => attributes["ref"] ?? ""),
      size,
    ).filter((text) => text.includes(":")),
    columnSizes: sizes.columns,
    rowSizes: sizes.rows,
    ...(groups.length === 0 ? {} : { columnGroups: groups }),
    frozen: within(frozenLines(root), size),
    gridlines: gridlinesOf(root),
    visible: sheet.visible,
    locked: isLocked(book, sheet, lost),
    ...(tabColor === undefined ? {} : { tabColor }),
    print: readPrintSetUp(root, { area: named("Print_Area"), titles: named("Print_Titles") }),
  };
}

function within(frozen: ReturnType<typeof frozenLines>, size: SheetPart["size"]): SheetState["frozen"] {
  return { rows: Math.min(frozen.rows, size.rows - 1), columns: Math.min(frozen.columns, size.columns - 1) };
}

function gridlinesOf(root: XmlElement): boolean {
  const shown = childOf(root, "sheetViews", "sheetView")?.attributes["showGridLines"];
  return shown === undefined || isOn(shown);
}

/** The grid locks a sheet or leaves it: one with cells that may be typed into all the same is left, and said. */
function isLocked({ looks }: WorkbookParts, { root, cells }: SheetPart, lost: (what: string) => void): boolean {
  const protection = childOf(root, "sheetProtection");
  if (protection === undefined || !isOn(protection.attributes["sheet"])) return false;
  const hasFree = cells.some(({ look }) => looks.unlocked[look] === true);
  lost(
    hasFree
      ? "the sheet's protection: here every cell can be typed into"
      : "the password of the sheet's protection, if it has one: the sheet stays locked",
  );
  return !hasFree;
}
