/** What the kept sheets of a log lack, and what an earlier version could not have. */
import type { TableId } from "../../joblog/formula/log-types.ts";
import type { ReleasedShape } from "../../joblog/model/definition.ts";
import type { NamePlan, TableColumnPlan, TablePlan, WorkbookPlan } from "../../joblog/model/plan.ts";
import { DamagedLog, NewerLog } from "../log-problems.ts";
import { LogProblem } from "../office-problems.ts";
import { refuseRenamedTables } from "./foreign-tables.ts";
import type { SheetPlacement } from "./plan-placement.ts";
import type { Survey, SurveyedTable } from "./survey-workbook.ts";

/** A table that lacks columns, as it stands now. */
export interface NarrowTable {
  readonly plan: TablePlan;
  readonly found: SurveyedTable;
  readonly missing: readonly TableColumnPlan[];
}

export interface LogGaps {
  readonly narrow: readonly NarrowTable[];
  /** Named cells that came with a later version than the log's. */
  readonly newNames: readonly NamePlan[];
  /** Whether the log is of an earlier version. */
  readonly older: boolean;
  /** What that version held. */
  readonly former: ReleasedShape | undefined;
}

/** A column that was there once and a heading that nobody knows: the one may be the other, renamed. */
function refuseIfRenamed({ plan, found, missing }: NarrowTable, released: readonly string[]): void {
  const lost = missing.find(({ id }) => released.includes(id));
  const known = new Set(plan.columns.map(({ header }) => header));
  const unknown = found.headers.find((header) => !known.has(header));
  if (lost === undefined || unknown === undefined) return;
  throw new DamagedLog({
    what: `The column "${lost.header}" of table ${plan.name} (sheet ${found.sheet}) is missing or renamed; "${unknown}" is none of the log's. Nothing was changed.`,
    remedy: `Give the column its heading "${lost.header}" again, or undo the change (Ctrl+Z). If it was deleted, type that heading over a blank column of the table.`,
  });
}

/** Tables that the log must have had, as it has named cells; a later version's are not lost. */
function refuseRenamed(
  plan: WorkbookPlan,
  placements: readonly SheetPlacement[],
  survey: Survey,
  released: ReleasedShape | undefined,
): void {
  if (survey.cells.size === 0) return;
  const planned = new Set(plan.sheets.flatMap((sheet) => sheet.tables).map(({ name }) => name));
  const lost = placements
    // On a sheet that is kept, the table's own place tells whether its rows stand there.
    .flatMap(({ plan: sheet, kept, missingTables }) =>
      missingTables.map((table) => ({
        plan: table,
        sheet: sheet.name,
        taken: !kept && survey.sheets.includes(sheet.name),
      })),
    )
    .filter((one) => released === undefined || released.columns[one.plan.id as TableId] !== undefined);
  refuseRenamedTables(
    lost,
    survey.tables.filter(({ name }) => !planned.has(name)),
  );
}

function refuseIfHeld(survey: Survey, sheets: ReadonlySet<string>, tables: readonly SurveyedTable[]): void {
  const locked = [...sheets].find((sheet) => survey.protectedSheets.has(sheet));
  if (locked !== undefined) {
    throw new LogProblem({
      what: `The sheet ${locked} is protected, so nothing was changed.`,
      remedy: "Unprotect it (Review, Unprotect Sheet), then try again.",
    });
  }
  const filtered = tables.find((table) => table.filtered);
  if (filtered !== undefined) {
    throw new LogProblem({
      what: `The table ${filtered.name} on sheet ${filtered.sheet} is filtered, so some of its rows are hidden. Nothing was changed.`,
      remedy: "Show all rows (Data, Clear), then try again.",
    });
  }
}

/**
 * Throws a LogProblem where the log may not be touched: it is of a later version, a column seems
 * renamed, or a sheet that must change is protected or filtered. `rewrites` says whether formulas of
 * the tables that are there will be written anew.
 */
export function findGaps(
  plan: WorkbookPlan,
  placements: readonly SheetPlacement[],
  survey: Survey,
  rewrites: boolean,
): LogGaps {
  const { version = plan.version } = survey;
  if (version > plan.version) throw new NewerLog(version, plan.version);
  const former = version < plan.version ? plan.released[version] : undefined;
  const kept = placements.filter((placement) => placement.kept);
  const found = new Map(survey.tables.map((table) => [table.name, table]));
  const narrow = kept
    .flatMap(({ plan: sheet }) => sheet.tables)
    .flatMap((table): NarrowTable[] => {
      const present = found.get(table.name);
      if (present === undefined) return [];
      const missing = table.columns.filter(({ header }) => !present.headers.includes(header));
      return missing.length === 0 ? [] : [{ plan: table, found: present, missing }];
    });
  for (const table of narrow) {
    refuseIfRenamed(table, former?.columns[table.plan.id as TableId] ?? table.plan.columns.map(({ id }) => id));
  }
  refuseRenamed(plan, placements, survey, former);
  const newNames =
    former === undefined
      ? []
      : kept.flatMap(({ missingNames }) => missingNames).filter(({ name }) => !former.names.includes(name));
  const older = version < plan.version;
  const touched =
    older || rewrites
      ? kept
      : kept.filter(
          ({ plan: sheet, missingTables, missingNames }) =>
            missingTables.length + missingNames.length > 0 || narrow.some((one) => sheet.tables.includes(one.plan)),
        );
  const sheets = new Set(touched.map(({ actual }) => actual));
  refuseIfHeld(
    survey,
    sheets,
    survey.tables.filter(
      ({ name, sheet }) => sheets.has(sheet) && (older || rewrites || narrow.some((one) => one.plan.name === name)),
    ),
  );
  return { narrow, newNames, older, former };
}
