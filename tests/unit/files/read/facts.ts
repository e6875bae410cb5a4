/** All that a job log's plan says and all that a state says, as one list of facts each, to be held against one another. */
import type { ValueOf } from "../../../../src/files/cell-value.ts";
import { rowHeights } from "../../../../src/files/row-heights.ts";
import { areaAddress, cellAddress, columnLetters } from "../../../../src/joblog/layout/addresses.ts";
import { pageMargins } from "../../../../src/joblog/layout/page-margins.ts";
import { signalLooks, styleLooks } from "../../../../src/joblog/layout/styles.ts";
import type { AreaPlan, CellPlan, SheetPlan, ValidationPlan, WorkbookPlan } from "../../../../src/joblog/model/plan.ts";
import type { SheetState, WorkbookState } from "../../../../src/state/workbook-state.ts";

/** What is so, by kind and place. */
export type Facts = ReadonlyMap<string, string>;

type Add = (kind: string, place: string, fact: unknown) => void;

function gathered(gather: (add: Add) => void): Facts {
  const facts = new Map<string, string>();
  gather((kind, place, fact) => {
    const key = `${kind} ${place}`;
    if (facts.has(key)) throw new RangeError(`Two facts for ${key}`);
    facts.set(key, JSON.stringify(fact));
  });
  return facts;
}

/** A single cell is no area of one cell in a state. */
function areaIn(area: AreaPlan): string {
  return area.rows === 1 && area.columns === 1 ? cellAddress(area.row, area.column) : areaAddress(area);
}

function held(area: AreaPlan): string {
  return areaIn(area).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
}

function prefix(sheet: string): string {
  return /[^A-Za-z]/.test(sheet) ? `'${sheet}'!` : `${sheet}!`;
}

function alignOf(cell: CellPlan): "left" | "right" | null {
  if (cell.align !== undefined) return cell.align;
  const words =
    cell.style.startsWith("header") ||
    cell.style === "fieldHelp" ||
    cell.numberFormat === "@" ||
    cell.numberFormat === "General";
  return words ? "left" : null;
}

function cellFacts(sheet: SheetPlan, add: Add): void {
  for (const cell of sheet.cells) {
    const place = `${sheet.name}!${cellAddress(cell.row, cell.column)}`;
    const look = styleLooks[cell.style];
    if (cell.kind === "value" && cell.value !== "") add("typed", place, cell.value);
    if (cell.kind === "formula") add("formula", place, cell.formula);
    add("look", place, [
      look.bold ?? false,
      look.italic ?? false,
      look.size ?? 10,
      look.color ?? "#000000",
      look.fill ?? null,
      look.wrap ?? false,
      alignOf(cell),
    ]);
    if (look.border !== undefined) add("border", place, look.border);
    if (cell.numberFormat !== undefined && cell.numberFormat !== "General") add("format", place, cell.numberFormat);
  }
}

function criterionOf({ rule }: ValidationPlan): readonly [string, readonly string[]] {
  switch (rule.kind) {
    case "list":
      return ["isValueInList", rule.choices];
    case "list of area":
      return ["isValueInRange", [prefix(rule.sheet) + held(rule.area)]];
    case "number between":
      return ["isBetween", [String(rule.low), String(rule.high)]];
    case "date from":
      return ["dateIsOnOrAfter", [`=${String(rule.serial)}`]];
    case "formula":
      return ["customFormula", [rule.formula]];
  }
}

function ruleFacts(sheet: SheetPlan, add: Add): void {
  for (const validation of sheet.validations) {
    const place = `${sheet.name}!${areaIn(validation.area)}`;
    const criterion = criterionOf(validation);
    add("validation", place, [...criterion, criterion[0] !== "customFormula"]);
    add("validation words", place, [true, "Stop", validation.errorTitle, validation.errorMessage, true]);
  }
  const counts = new Map<string, number>();
  for (const { area, formula, look } of sheet.conditionalFormats) {
    const place = `${sheet.name}!${areaIn(area)}`;
    const count = (counts.get(place) ?? 0) + 1;
    counts.set(place, count);
    const { fill, color, bold } = signalLooks[look];
    add("conditional format", `${place} ${String(count)}`, [formula, fill ?? null, color ?? null, bold ?? false]);
  }
}

function dressFacts(sheet: SheetPlan, valueOf: ValueOf, add: Add): void {
  const { name } = sheet;
  add("tab color", name, sheet.tabColor);
  add("gridlines", name, false);
  add("frozen", name, [sheet.frozenRows, 0]);
  for (const { first, last } of sheet.folded ?? []) add("folded", `${name} ${String(first)}`, [last, true]);
  for (const [column, characters] of sheet.columnWidths.entries())
    add("width", `${name} ${String(column)}`, characters * 7 + 5);
  for (const [row, points] of rowHeights(sheet, valueOf))
    add("height", `${name} ${String(row)}`, Math.round((points * 4) / 3));
  add("print", name, {
    orientation: sheet.orientation === "landscape" ? "Landscape" : "Portrait",
    zoom: { horizontalFitToPages: sheet.pagesWide, ...(sheet.onePage === true ? { verticalFitToPages: 1 } : {}) },
    rows:
      sheet.titleRows === undefined
        ? null
        : `$${String(sheet.titleRows.first + 1)}:$${String(sheet.titleRows.last + 1)}`,
    columns: sheet.pagesWide > 1 ? "$A:$A" : null,
    area: `A:${columnLetters(sheet.lastPrintedColumn)}`,
    breaks: sheet.pageBreaks ?? [],
    margins: Object.values(pageMargins).map((inches) => inches * 72),
    footer: ["&A", sheet.footer, "Page &P of &N"],
  });
  for (const table of sheet.tables) {
    add("table", table.name, [name, areaAddress(table.area), "TableStyleLight1", false, false]);
    for (const { header, formula } of table.columns)
      if (formula !== undefined) add("calculated column", `${table.name} ${header}`, formula);
  }
}

/** Facts of the plan as the writers of the log put it on paper. `named` gives a chart's name where the file has another. */
export function planFacts(plan: WorkbookPlan, valueOf: ValueOf): Facts {
  return gathered((add) => {
    add(
      "sheets",
      "",
      plan.sheets.map(({ name }) => name),
    );
    for (const { name, sheet, row, column } of plan.names)
      add("name", name, prefix(sheet) + held({ row, column, rows: 1, columns: 1 }));
    for (const sheet of plan.sheets) {
      cellFacts(sheet, add);
      ruleFacts(sheet, add);
      dressFacts(sheet, valueOf, add);
      for (const { id, kind, title, area, xTitle, yTitle, xFormat, yFormat, yFrom, series } of sheet.charts) {
        add("chart", `${sheet.name} ${id}`, [kind === "bars" ? "bar" : "line", title, area.row, area.column]);
        add("axis titles", `${sheet.name} ${id}`, [xTitle, yTitle]);
        add("axis formats", `${sheet.name} ${id}`, [xFormat === "General" ? null : xFormat, yFormat]);
        add("axis begins", `${sheet.name} ${id}`, [yFrom ?? null]);
        for (const one of series)
          add("series", `${sheet.name} ${id} ${one.label}`, [
            (one.dataSheet === sheet.name ? "" : prefix(one.dataSheet)) + areaIn(one.x),
            (one.dataSheet === sheet.name ? "" : prefix(one.dataSheet)) + areaIn(one.y),
            one.color,
            kind === "bars" ? null : one.mark,
          ]);
      }
    }
  });
}

function stateCells(sheet: SheetState, add: Add): void {
  const at = (row: number, column: number): string => `${sheet.name}!${cellAddress(row, column)}`;
  for (const [row, column, , value] of sheet.typed) add("typed", at(row, column), value);
  for (const [row, column, , formula] of sheet.worked) add("formula", at(row, column), sheet.formulas[formula]);
  for (const [row, column, number] of [...sheet.typed, ...sheet.worked, ...sheet.dressed]) {
    const { text = {}, border, format } = sheet.looks[number] ?? {};
    add("look", at(row, column), [
      text.bold ?? false,
      text.italic ?? false,
      text.fontSize ?? 10,
      text.textColor ?? "#000000",
      text.fillColor ?? null,
      text.wrapping === "wrap",
      text.align ?? null,
    ]);
    const edges = [border?.top, border?.bottom, border?.left, border?.right];
    const [first] = edges;
    if (border !== undefined)
      add(
        "border",
        at(row, column),
        edges.every((edge) => edge?.style === "thin" && edge.color === first?.color) ? first?.color : edges,
      );
    if (format !== undefined) add("format", at(row, column), format);
  }
}

function stateRules(sheet: SheetState, add: Add): void {
  for (const { ranges, criterion, blocks, words } of sheet.validations) {
    const place = `${sheet.name}!${ranges.join(" ")}`;
    add("validation", place, [criterion.type, criterion.values, blocks]);
    const { showAlert, style, title, message } = words?.errorAlert ?? {};
    add("validation words", place, [showAlert, style, title, message, words?.ignoreBlanks]);
  }
  const counts = new Map<string, number>();
  for (const { ranges, rule } of sheet.conditionalFormats) {
    const place = `${sheet.name}!${ranges.join(" ")}`;
    const count = (counts.get(place) ?? 0) + 1;
    counts.set(place, count);
    if (rule.type !== "CellIsRule") throw new RangeError(rule.type);
    const { fillColor, textColor, bold } = rule.style;
    add("conditional format", `${place} ${String(count)}`, [
      rule.operator === "customFormula" ? rule.values[0] : rule.operator,
      fillColor ?? null,
      textColor ?? null,
      bold ?? false,
    ]);
  }
}

function stateDress(sheet: SheetState, add: Add): void {
  const { name, print } = sheet;
  add("tab color", name, sheet.tabColor);
  add("gridlines", name, sheet.gridlines);
  add("frozen", name, [sheet.frozen.rows, sheet.frozen.columns]);
  for (const { first, last, folded } of sheet.columnGroups ?? [])
    add("folded", `${name} ${String(first)}`, [last, folded]);
  for (const [column, { size }] of Object.entries(sheet.columnSizes)) add("width", `${name} ${column}`, size);
  for (const [row, { size }] of Object.entries(sheet.rowSizes)) add("height", `${name} ${row}`, size);
  add("print", name, {
    orientation: print.orientation,
    zoom: print.zoom,
    rows: print.printTitleRows ?? null,
    columns: print.printTitleColumns ?? null,
    area: print.printArea,
    breaks: print.pageBreaks ?? [],
    margins: Object.keys(pageMargins).map((side) => (print as Record<string, unknown>)[`${side}Margin`]),
    footer: [print.leftFooter, print.centerFooter, print.rightFooter],
  });
  for (const table of sheet.tables) {
    add("table", table.name, [name, table.area, table.style, table.bandedRows, table.filterButtons]);
    for (const { header, formula } of table.calculated) add("calculated column", `${table.name} ${header}`, formula);
  }
}

/** The same facts of a state. */
export function stateFacts({ book, sheets }: WorkbookState): Facts {
  return gathered((add) => {
    add(
      "sheets",
      "",
      sheets.map(({ name }) => name),
    );
    for (const { name, refersTo } of book.names) add("name", name, refersTo);
    for (const sheet of sheets) {
      stateCells(sheet, add);
      stateRules(sheet, add);
      stateDress(sheet, add);
      for (const { row, column, chart } of sheet.figures) {
        if (chart === undefined) continue;
        const { kind, name, title, x, y } = chart;
        add("chart", `${sheet.name} ${name}`, [kind, title, row, column]);
        add("axis titles", `${sheet.name} ${name}`, [x?.title, y?.title]);
        add("axis formats", `${sheet.name} ${name}`, [x?.format ?? null, y?.format ?? null]);
        add("axis begins", `${sheet.name} ${name}`, [chart.automaticMinimum === true ? null : (y?.min ?? null)]);
        for (const one of chart.series)
          add("series", `${sheet.name} ${name} ${one.label ?? ""}`, [
            one.x ?? chart.labels,
            one.values,
            one.color,
            kind === "bar" ? null : one.markers === true ? "points" : one.dashed === true ? "dashes" : "line",
          ]);
      }
    }
  });
}

/** How many facts there are of each kind. */
export function countedByKind(facts: Facts): Readonly<Record<string, number>> {
  const counts: Record<string, number> = {};
  for (const key of facts.keys()) {
    const kind = /^[a-z ]+?(?= (?:[A-Z'&]|$)|$)/.exec(key)?.[0] ?? key;
    counts[kind] = (counts[kind] ?? 0) + 1;
  }
  return counts;
}

/** What one list says and the other does not, in words. */
export function differences(expected: Facts, found: Facts): readonly string[] {
  const keys = [...new Set([...expected.keys(), ...found.keys()])];
  return keys.flatMap((key) => {
    const [wanted, had] = [expected.get(key), found.get(key)];
    return wanted === had ? [] : [`${key}: ${wanted ?? "nothing"} became ${had ?? "nothing"}`];
  });
}
