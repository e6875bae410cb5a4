import type { ChartState, SheetState, ValidationState, WorkbookState } from "../../state/workbook-state.ts";
import { withSheetsRenamed } from "./sheet-names.ts";

type Rename = (text: string) => string;

function ruleRenamed(rule: unknown, rename: Rename): unknown {
  if (typeof rule === "string") return rename(rule);
  if (typeof rule !== "object" || rule === null) return rule;
  return Object.fromEntries(Object.entries(rule).map(([key, value]) => [key, ruleRenamed(value, rename)]));
}

function validationRenamed(validation: ValidationState, rename: Rename): ValidationState {
  const { criterion, words } = validation;
  if (criterion.type === "isValueInList") return validation;
  return {
    ...validation,
    criterion: { ...criterion, values: criterion.values.map(rename) },
    ...(words === undefined ? {} : { words: { ...words, rule: ruleRenamed(words.rule, rename) } }),
  };
}

function chartRenamed(chart: ChartState, rename: Rename): ChartState {
  return {
    ...chart,
    ...(chart.labels === undefined ? {} : { labels: rename(chart.labels) }),
    series: chart.series.map((series) => ({
      ...series,
      values: rename(series.values),
      ...(series.x === undefined ? {} : { x: rename(series.x) }),
    })),
  };
}

function sheetRenamed(sheet: SheetState, rename: Rename): SheetState {
  return {
    ...sheet,
    formulas: sheet.formulas.map(rename),
    tables: sheet.tables.map((table) => ({
      ...table,
      calculated: table.calculated.map((column) => ({ ...column, formula: rename(column.formula) })),
    })),
    validations: sheet.validations.map((validation) => validationRenamed(validation, rename)),
    conditionalFormats: sheet.conditionalFormats.map((format) => {
      const { rule } = format;
      return rule.type === "CellIsRule" ? { ...format, rule: { ...rule, values: rule.values.map(rename) } } : format;
    }),
    figures: sheet.figures.map((figure) =>
      figure.chart === undefined ? figure : { ...figure, chart: chartRenamed(figure.chart, rename) },
    ),
  };
}

/** The workbook with sheets under new names, by the old ones, wherever a formula, rule, chart or name speaks of them. */
export function renameSheets(state: WorkbookState, renamed: ReadonlyMap<string, string>): WorkbookState {
  if (renamed.size === 0) return state;
  const rename: Rename = (text) => withSheetsRenamed(text, renamed);
  return {
    book: {
      ...state.book,
      names: state.book.names.map((name) => ({ ...name, refersTo: rename(name.refersTo) })),
    },
    sheets: state.sheets.map((sheet) => ({
      ...sheetRenamed(sheet, rename),
      name: renamed.get(sheet.name) ?? sheet.name,
    })),
  };
}
