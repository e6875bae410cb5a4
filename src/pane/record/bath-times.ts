import { rowsOfBath } from "../../advice/bath-facts.ts";
import type { LogContext } from "../../advice/log-context.ts";

const tables = ["benchTests", "readings", "additions", "loads", "care"] as const;

/** When things happened in a bath while it was open, earliest first. */
export function entryTimes({ log }: LogContext, bath: string): readonly number[] {
  const times = tables.flatMap((table) => rowsOfBath(log, table, bath).map(({ cells }) => cells.when));
  return times.filter((time) => typeof time === "number").sort((a, b) => a - b);
}
