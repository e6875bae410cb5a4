import { jobLog } from "../../joblog/job-log.ts";
import type { WorkbookPlan } from "../../joblog/model/plan.ts";
import { findField } from "../../joblog/model/references.ts";
import { announce, checkNotCancelled, type LongWork } from "../long-work.ts";
import { LogProblem, structureProtected } from "../office-problems.ts";
import { checkGaps } from "./check-gaps.ts";
import { type FormerBaselines, readFormerBaselines, writeBaselines } from "./former-baselines.ts";
import { type FormerColumn, readFormerColumns, type Replaced, replacedIn } from "./former-columns.ts";
import { planFields } from "./insert-fields.ts";
import { locate, type Locations } from "./locations.ts";
import { findGaps, type LogGaps } from "./log-gaps.ts";
import { placeSheets, type SheetPlacement } from "./plan-placement.ts";
import { RangeFiller } from "./range-filler.ts";
import { clearMarks, readSettledRows, type SettledRows } from "./settled-rows.ts";
import { type Survey, surveyWorkbook } from "./survey-workbook.ts";
import { takeBackBuild } from "./take-back-build.ts";
import { checkRoomBeside, planInsertions } from "./widen-tables.ts";
import { type DrawnChart, fillCharts, missingCharts, placeCharts } from "./write-chart.ts";
import {
  bringsFormulasBack,
  formulasFor,
  type Rewriting,
  settledFormulas,
  type SheetFormulas,
  trialColumn,
  writeFormulas,
} from "./write-computed.ts";
import { writeFormats } from "./write-formats.ts";
import { type Structure, writeStructure } from "./write-structure.ts";

/** What building, upgrading or repairing the log did to the workbook. */
export interface BuildReport {
  readonly added: readonly string[];
  readonly kept: readonly string[];
  /** Log sheets that took another name because the shop has a sheet of that name. */
  readonly renamed: readonly { readonly planned: string; readonly actual: string }[];
  /** Columns that tables with data got. */
  readonly addedColumns: readonly { readonly table: string; readonly header: string }[];
  /** Computed columns and cells, there before, whose formula was written anew. */
  readonly rewritten: number;
  /** What was typed over formulas that are written anew. */
  readonly replaced: readonly Replaced[];
  /** Baths that were settled and whose rows have their formulas again. */
  readonly unsettled: readonly string[];
  /** The log's version before, if there was a log. */
  readonly fromVersion: number | undefined;
}

/** Trips that sheets are written in: few, as each takes time, yet enough to tell how far the work is and to stop it. */
const mostSheetTrips = 6;

interface Work {
  readonly context: Excel.RequestContext;
  readonly plan: WorkbookPlan;
  readonly survey: Survey;
  readonly placements: readonly SheetPlacement[];
  readonly gaps: LogGaps;
  readonly structure: Structure;
  readonly formulas: ReadonlyMap<SheetPlacement, SheetFormulas>;
  readonly former: readonly FormerColumn[];
  readonly baselines: FormerBaselines | undefined;
  /** Baths that are settled no more. */
  readonly unsettled: SettledRows | undefined;
  readonly long: LongWork;
}

const takenBack = "Cancelled: what had been added was taken away again, and the workbook is as it was.";

function sheetsToWrite({ placements, formulas, structure, gaps }: Work): readonly SheetPlacement[] {
  return placements.filter((placement) => {
    const { columns = [], cells = [] } = formulas.get(placement) ?? {};
    const { kept, plan, actual, missingTables } = placement;
    const dressed =
      missingTables.length > 0 ||
      structure.fields.some(({ sheet }) => sheet === actual) ||
      gaps.narrow.some((one) => plan.tables.includes(one.plan));
    return !kept || dressed || columns.length + cells.length > 0;
  });
}

async function writeSheets(work: Work, locations: Locations): Promise<void> {
  const { context, formulas, structure, gaps, long } = work;
  const sheets = sheetsToWrite(work);
  const size = Math.ceil(sheets.length / mostSheetTrips);
  const filler = new RangeFiller(context);
  const trial = trialColumn(
    context,
    sheets.flatMap((sheet) => formulas.get(sheet) ?? []),
    locations,
  );
  if (trial !== undefined) await filler.tryOneValue(trial);
  for (let done = 0; done < sheets.length; done += size) {
    const batch = sheets.slice(done, done + size);
    const names = batch.map(({ actual }) => actual).join(", ");
    await announce(long, {
      step: done + 1,
      of: sheets.length + 1,
      words: `${batch.length === 1 ? "Sheet" : "Sheets"} ${names} (${String(done + batch.length)} of ${String(sheets.length)})`,
    });
    checkNotCancelled(long, takenBack);
    context.workbook.application.suspendApiCalculationUntilNextSync();
    context.workbook.application.suspendScreenUpdatingUntilNextSync();
    for (const placement of batch) {
      writeFormulas(context, formulas.get(placement) ?? { columns: [], cells: [] }, locations, filler);
      writeFormats(context, placement, structure, gaps.narrow, locations, filler);
    }
    // oxlint-disable-next-line office-addins/no-context-sync-in-loop -- a few trips in all, so that the work can be stopped between them
    await context.sync();
    await filler.mend();
  }
}

/**
 * The version goes in with the charts' lines, last of all: a log that says it is new is whole. Events go on in the same
 * trip, so that nothing can fail after it.
 */
async function finish(
  { context, plan, placements }: Work,
  charts: readonly DrawnChart[],
  locations: Locations,
): Promise<void> {
  fillCharts(charts);
  const { sheet, area } = locations.cell(findField(jobLog, "logVersion").name);
  context.workbook.worksheets.getItem(sheet).getRangeByIndexes(area.row, area.column, 1, 1).values = [[plan.version]];
  const first = placements[0];
  if (first !== undefined) context.workbook.worksheets.getItem(first.actual).activate();
  context.runtime.enableEvents = true;
  await context.sync();
}

async function write(work: Work): Promise<void> {
  const { context, plan, placements, structure, survey, gaps, formulas, former, baselines, unsettled, long } = work;
  const charts = missingCharts(placements, gaps.former);
  context.runtime.enableEvents = false;
  try {
    context.workbook.application.suspendApiCalculationUntilNextSync();
    context.workbook.application.suspendScreenUpdatingUntilNextSync();
    writeStructure(context, structure);
    await context.sync();
    const locations = await locate(context, plan, placements);
    if (baselines !== undefined) writeBaselines(context, plan, baselines);
    if (unsettled !== undefined) clearMarks(context, unsettled);
    await writeSheets(work, locations);
    const count = sheetsToWrite(work).length;
    await announce(long, { step: count + 1, of: count + 1, words: "Charts" });
    checkNotCancelled(long, takenBack);
    const drawn = placeCharts(context, charts, locations);
    if (drawn.length > 0) await context.sync();
    await finish(work, drawn, locations);
  } catch (error) {
    await takeBackBuild(
      context,
      placements,
      survey,
      {
        structure,
        former: [...former, ...(baselines?.former ?? []), ...(unsettled?.marks ?? [])],
        cells: [...formulas.values()].flatMap(({ cells }) => cells),
        charts: charts
          .filter(({ placement }) => placement.kept)
          .map(({ placement, plan: chart }) => ({ sheet: placement.actual, name: chart.id })),
      },
      error,
    );
    throw error;
  }
}

function rewrittenBefore(formulas: ReadonlyMap<SheetPlacement, SheetFormulas>, survey: Survey): number {
  const all = [...formulas].filter(([{ kept }]) => kept).map(([, one]) => one);
  const columns = all
    .flatMap((one) => one.columns)
    .filter(({ table, column }) =>
      survey.tables.some(({ name, headers }) => name === table.name && headers.includes(column.header)),
    );
  const cells = all.flatMap((one) => one.cells).filter(({ name }) => survey.cells.has(name.name));
  return columns.length + cells.length;
}

interface FormulasToWrite {
  readonly formulas: ReadonlyMap<SheetPlacement, SheetFormulas>;
  readonly unsettled: SettledRows | undefined;
}

function formulasToWrite(
  placements: readonly SheetPlacement[],
  plan: WorkbookPlan,
  survey: Survey,
  rewriting: Rewriting,
  settled: SettledRows | undefined,
): FormulasToWrite {
  const formulas = new Map(
    placements.map((placement) => [placement, formulasFor(placement, plan, survey, rewriting, settled)]),
  );
  if (!bringsFormulasBack(formulas.values(), survey, settled)) return { formulas, unsettled: undefined };
  const withSettled = [...formulas].map(([placement, { columns, cells }]): [SheetPlacement, SheetFormulas] => [
    placement,
    { columns: [...columns, ...settledFormulas(placement, { columns, cells }).columns], cells },
  ]);
  return { formulas: new Map(withSettled), unsettled: settled };
}

/**
 * Brings the workbook to the plan: adds the sheets, tables, columns and named cells that are missing
 * and writes formulas as `rewriting` says; a log of an earlier version gets all formulas that changed.
 * Typed data stays; a shop's own sheet of the same name is left alone and the log's sheet takes another
 * name. Throws a LogProblem, or Office's error, with the workbook as it was.
 */
export async function writePlan(
  context: Excel.RequestContext,
  plan: WorkbookPlan,
  rewriting: Rewriting,
  long: LongWork,
): Promise<BuildReport> {
  const survey = await surveyWorkbook(context, plan);
  checkNotCancelled(long, "Cancelled before anything was changed.");
  const placements = placeSheets(plan, survey);
  if (survey.structureLocked && placements.some(({ kept }) => !kept)) throw new LogProblem(structureProtected);
  const gaps = findGaps(plan, placements, survey, rewriting !== "none");
  const asked = gaps.older && rewriting === "none" ? "changed" : rewriting;
  const columns = planInsertions(gaps.narrow, survey.tables);
  const structure: Structure = {
    placements,
    columns,
    fields: planFields(placements, plan.names, gaps.newNames, survey),
  };
  await checkGaps(
    context,
    placements.filter(({ kept }) => kept),
    gaps.newNames,
  );
  await checkRoomBeside(context, columns);
  const settled = await readSettledRows(context, plan, survey);
  const { formulas, unsettled } = formulasToWrite(placements, plan, survey, asked, settled);
  const former = await readFormerColumns(context, [...formulas.values()], survey);
  const baselines = await readFormerBaselines(context, plan, survey, gaps);
  await write({ context, plan, survey, placements, gaps, structure, formulas, former, baselines, unsettled, long });
  const fresh = placements.filter(({ kept }) => !kept);
  return {
    added: fresh.map(({ actual }) => actual),
    kept: placements.filter(({ kept }) => kept).map(({ actual }) => actual),
    renamed: fresh
      .filter(({ plan: sheet, actual }) => sheet.name !== actual)
      .map(({ plan: sheet, actual }) => ({ planned: sheet.name, actual })),
    addedColumns: gaps.narrow.flatMap(({ plan: table, missing }) =>
      missing.map(({ header }) => ({ table: table.name, header })),
    ),
    rewritten: rewrittenBefore(formulas, survey),
    replaced: replacedIn(former, settled?.isSettled ?? (() => false)),
    unsettled: unsettled?.baths ?? [],
    fromVersion: placements.some(({ kept }) => kept) ? (survey.version ?? plan.version) : undefined,
  };
}
