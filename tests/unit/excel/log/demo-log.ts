import { serialOf } from "../../../../src/advice/wording/moments.ts";
import type { Cells, LogContent } from "../../../../src/joblog/model/definition.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import { firstTwoDays } from "../../../demo/days/demo-week.ts";
import { baselinesWritten } from "../../joblog/evaluate/baselines-written.ts";
import { workedOut } from "../../joblog/evaluate/worked-out.ts";
import { logOf } from "./prepared-log.ts";

/** An Excel serial number of the demo week: `moment("2027-03-01T09:45")`. */
export function moment(text: string): number {
  const serial = serialOf(text);
  if (serial === undefined) throw new RangeError(text);
  return serial;
}

type Extra = LogContent["rows"];

/** Rows of every table alike. */
type AnyRows = Readonly<Partial<Record<string, readonly Cells[]>>>;

/** The demo days as far as they had gone at a moment, and rows of a test's own, with the baselines that they give written down. */
function contentUntil(until: number, extra: Extra): Promise<LogContent> {
  const days: AnyRows = firstTwoDays.rows;
  const more: AnyRows = extra;
  const rows = [...new Set([...Object.keys(days), ...Object.keys(more)])].map((table) => {
    const past = (days[table] ?? []).filter(({ when }) => when === undefined || Number(when) <= until);
    return [table, [...past, ...(more[table] ?? [])]] as const;
  });
  return baselinesWritten({ fields: firstTwoDays.fields, rows: Object.fromEntries(rows) });
}

/** That log with its formulas worked out. */
export async function demoLog(until: string, extra: Extra = {}): Promise<LogSnapshot> {
  return workedOut(await contentUntil(moment(until), extra));
}

/** The same in a fresh workbook of the stand-in, for tests that write into it. */
export async function openDemoLog(until: string, extra: Extra = {}): Promise<LogSnapshot> {
  return logOf(await contentUntil(moment(until), extra));
}
