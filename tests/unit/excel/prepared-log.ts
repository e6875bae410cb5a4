import type { UnitSystem } from "../../../src/core/units/unit-system.ts";
import { changeLog } from "../../../src/excel/change-log.ts";
import { buildLog, readLog } from "../../../src/excel/log-workbook.ts";
import type { LogContent } from "../../../src/joblog/definition.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { layOut } from "../../../src/joblog/lay-out.ts";
import type { LogSnapshot } from "../../../src/joblog/log-snapshot.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import type { SavedWorkbook } from "../../../src/workbench/host/save.ts";
import { firstTwoDays } from "../../demo-days/demo-week.ts";
import { openWorkbook } from "./open-workbook.ts";
import { changesBetween, typedCells, type TypedCells } from "./typed-cells.ts";

/**
 * Logs that tests open as a shop opens yesterday's file: laid out once in a worker, saved, restored for
 * every test. To build 18 sheets takes ten times as long as to restore them.
 */
interface PreparedLog {
  readonly saved: SavedWorkbook;
  readonly typed: TypedCells;
}

const emptyLog: LogContent = { fields: {}, rows: {} };

const prepared = new Map<string, Promise<PreparedLog>>();

function typedFor(content: LogContent, system: UnitSystem): TypedCells {
  return typedCells(layOut(jobLog, { system }, content));
}

async function build(content: LogContent, system: UnitSystem): Promise<Host> {
  const host = openWorkbook();
  await buildLog(layOut(jobLog, { system }, content));
  return host;
}

async function prepare(content: LogContent, system: UnitSystem): Promise<PreparedLog> {
  const host = content === emptyLog ? await build(content, system) : await openFrom(emptyLog, content, system);
  return { saved: host.save(), typed: typedFor(content, system) };
}

function preparedLog(content: LogContent, system: UnitSystem): Promise<PreparedLog> {
  const key = JSON.stringify([system, content]);
  const found = prepared.get(key) ?? prepare(content, system);
  prepared.set(key, found);
  return found;
}

/** Restores a prepared log and types the rest into it, with the same writing that the pane uses; builds anew what cannot be typed so. */
async function openFrom(start: LogContent, content: LogContent, system: UnitSystem): Promise<Host> {
  const { saved, typed } = await preparedLog(start, system);
  const changes = changesBetween(typed, typedFor(content, system));
  if (changes === undefined) return build(content, system);
  const host = openWorkbook();
  host.restore(saved);
  if (changes.cells > 0) await changeLog(changes);
  return host;
}

/** How many cells must be typed to come from one content to another; Infinity where that is no way there. */
function distance(from: LogContent, to: TypedCells, system: UnitSystem): number {
  return changesBetween(typedFor(from, system), to)?.cells ?? Infinity;
}

/**
 * Opens a workbook with a log of this content in the stand-in. It starts from the nearest prepared log:
 * an empty one, the demo days, or one of `starts`, which are prepared when they are first wanted.
 */
export async function openLog(content: LogContent, system: UnitSystem = "US", starts: readonly LogContent[] = []): Promise<Host> {
  const wanted = typedFor(content, system);
  const nearest = [emptyLog, firstTwoDays, ...starts]
    .map((start) => ({ start, cells: distance(start, wanted, system) }))
    .reduce((best, one) => (one.cells < best.cells ? one : best));
  return openFrom(nearest.start, content, system);
}

/** The same, and what its formulas made of it. */
export async function logOf(...given: Parameters<typeof openLog>): Promise<LogSnapshot> {
  await openLog(...given);
  const log = await readLog();
  if (log === undefined) throw new Error("The workbook holds no log.");
  return log;
}
