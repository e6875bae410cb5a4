/** Where each planned sheet goes in a workbook that may hold parts of a log, or a shop's own sheets. */
import type { NamePlan, SheetPlan, TablePlan, WorkbookPlan } from "../../joblog/model/plan.ts";

/** What a workbook holds before the log is built. */
export interface WorkbookSurvey {
  readonly sheets: readonly string[];
  /** Sheet name by table name, for tables whose name the plan uses. */
  readonly tableSheets: ReadonlyMap<string, string>;
  /** Sheet name by defined name, for names the plan uses; absent where the name's cell was deleted. */
  readonly nameSheets: ReadonlyMap<string, string>;
}

export interface SheetPlacement {
  readonly plan: SheetPlan;
  /** The sheet's name in this workbook. */
  readonly actual: string;
  /** An existing log sheet is kept as it is. */
  readonly kept: boolean;
  readonly missingTables: readonly TablePlan[];
  readonly missingNames: readonly NamePlan[];
}

const longestSheetName = 31;

function freeName(wanted: string, taken: ReadonlySet<string>): string {
  if (!taken.has(wanted.toLowerCase())) return wanted;
  for (let count = 1; ; count += 1) {
    const mark = count === 1 ? " (log)" : ` (log ${String(count)})`;
    const name = wanted.slice(0, longestSheetName - mark.length) + mark;
    if (!taken.has(name.toLowerCase())) return name;
  }
}

/** A sheet is the log's when it carries one of the log's tables or named cells; a like name alone proves nothing. */
function existingSheet(sheet: SheetPlan, names: readonly NamePlan[], survey: WorkbookSurvey): string | undefined {
  for (const table of sheet.tables) {
    const at = survey.tableSheets.get(table.name);
    if (at !== undefined) return at;
  }
  for (const name of names) {
    const at = survey.nameSheets.get(name.name);
    if (at !== undefined) return at;
  }
  return undefined;
}

/** Decides for every planned sheet whether it is kept, added, or added under another name. */
export function placeSheets(plan: WorkbookPlan, survey: WorkbookSurvey): readonly SheetPlacement[] {
  const taken = new Set(survey.sheets.map((name) => name.toLowerCase()));
  return plan.sheets.map((sheet) => {
    const names = plan.names.filter((name) => name.sheet === sheet.name);
    const existing = existingSheet(sheet, names, survey);
    const actual = existing ?? freeName(sheet.name, taken);
    taken.add(actual.toLowerCase());
    return {
      plan: sheet,
      actual,
      kept: existing !== undefined,
      missingTables: sheet.tables.filter((table) => !survey.tableSheets.has(table.name)),
      missingNames: names.filter((name) => !survey.nameSheets.has(name.name)),
    };
  });
}
