import { jobLog } from "../../joblog/job-log.ts";
import type { Cells, RowValue } from "../../joblog/model/definition.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { findTable } from "../../joblog/model/references.ts";
import { fieldTextOf } from "../wording/moments.ts";
import { csvText, harmless } from "./csv-text.ts";

function textOf(value: RowValue | undefined, type: string): string {
  if (value === undefined) return "";
  if (typeof value !== "number") return harmless(String(value));
  if (type === "date") return fieldTextOf(value).slice(0, 10);
  if (type === "date and time") return fieldTextOf(value);
  return type === "money" ? value.toFixed(2) : String(value);
}

/**
 * The journal as comma-separated values: a header of column ids, which stay for ever, dates as 2027-03-06, money with
 * two decimals and a point, lines ended by CR LF.
 */
export function journalCsv(log: LogSnapshot): string {
  const { columns } = findTable(jobLog, "journal");
  const header = columns.map(({ id }) => id);
  const lines = log.rows.journal.map(({ cells }) => {
    const held: Cells = cells;
    return columns.map(({ id, type }) => textOf(held[id], type));
  });
  return csvText([header, ...lines]);
}
