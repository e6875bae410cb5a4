import type { UnitSystem } from "../../../../src/core/units/unit-system.ts";
import { buildLog, editLog, readLog } from "../../../../src/excel/log-workbook.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import { layOut } from "../../../../src/joblog/layout/lay-out.ts";
import { type TypedCells, typedCells } from "../../../../src/joblog/layout/typed-cells.ts";
import type { LogContent } from "../../../../src/joblog/model/definition.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import type { WorkbookState } from "../../../../src/state/workbook-state.ts";
import type { Host } from "../../../../src/workbench/host/create-host.ts";
import { firstTwoDays } from "../../../demo/days/demo-week.ts";
import { openWorkbook } from "./open-workbook.ts";
import { changesBetween } from "./typed-cells.ts";

/**
 * A log that tests open as a shop opens yesterday's file: laid out once in a worker, saved, restored for
 * every test. To build 18 sheets takes ten times as long as to restore them.
 */
interface Start {
  readonly content: LogContent;
  readonly system: UnitSystem;
  readonly typed: TypedCells;
}

const emptyLog: LogContent = { fields: {}, rows: {} };

const starts = new Map<string, Start>();
const saved = new Map<Start, Promise<WorkbookState>>();

function typedFor(content: LogContent, system: UnitSystem): TypedCells {
  return typedCells(layOut(jobLog, { system }, content));
}

function startFrom(content: LogContent, system: UnitSystem): Start {
  const key = JSON.stringify([system, content]);
  const start = starts.get(key) ?? { content, system, typed: typedFor(content, system) };
  starts.set(key, start);
  return start;
}

async function build(content: LogContent, system: UnitSystem): Promise<Host> {
  const host = openWorkbook();
  await buildLog(layOut(jobLog, { system }, content));
  return host;
}

/** The one of these, or the empty log, that leaves the fewest cells to type. */
function nearest(candidates: readonly Start[], system: UnitSystem, wanted: TypedCells): Start {
  const toType = (start: Start): number => changesBetween(start.typed, wanted)?.cells ?? Infinity;
  return candidates.reduce(
    (best, one) => (one.system === system && toType(one) < toType(best) ? one : best),
    startFrom(emptyLog, system),
  );
}

async function save(start: Start): Promise<WorkbookState> {
  const { content, system, typed } = start;
  const host =
    start === startFrom(emptyLog, system)
      ? await build(content, system)
      : await openFrom(nearest([...saved.keys()], system, typed), content, typed);
  return host.save();
}

function savedOnce(start: Start): Promise<WorkbookState> {
  const found = saved.get(start) ?? save(start);
  saved.set(start, found);
  return found;
}

/** Restores a saved log and types the rest into it, with the same writing that the pane uses; builds anew what cannot be typed so. */
async function openFrom(start: Start, content: LogContent, wanted: TypedCells): Promise<Host> {
  const changes = changesBetween(start.typed, wanted);
  if (changes === undefined) return build(content, start.system);
  const workbook = await savedOnce(start);
  const host = openWorkbook();
  host.restore(workbook);
  if (changes.cells > 0) await editLog(changes);
  return host;
}

/**
 * Opens a workbook with a log of this content in the stand-in. It starts from the log that leaves the
 * fewest cells to type: an empty one, the demo days, or one of `others`, saved when they are first wanted.
 */
export async function openLog(
  content: LogContent,
  system: UnitSystem = "US",
  others: readonly LogContent[] = [],
): Promise<Host> {
  const wanted = typedFor(content, system);
  const candidates = [firstTwoDays, ...others].map((one) => startFrom(one, system));
  return openFrom(nearest(candidates, system, wanted), content, wanted);
}

/** The same, and what its formulas made of it. */
export async function logOf(...given: Parameters<typeof openLog>): Promise<LogSnapshot> {
  await openLog(...given);
  const log = await readLog();
  if (log === undefined) throw new Error("The workbook holds no log.");
  return log;
}
