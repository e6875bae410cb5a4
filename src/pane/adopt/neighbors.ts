/** The rows of the log and of the sheet that a row is compared with. */
import type { LogContext } from "../../advice/log-context.ts";
import type { Cells } from "../../joblog/model/definition.ts";
import type { AnyRow, LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { folded } from "../../joblog/model/same-text.ts";
import type { AdoptTable } from "./adopt-kinds.ts";
import { withRows } from "./row-doubts.ts";

const bathOf = (cells: Cells): string => folded(String(cells["bath"] ?? ""));
const timeOf = (cells: Cells): number => (typeof cells["when"] === "number" ? cells["when"] : Number.NEGATIVE_INFINITY);

function byBath(rows: readonly Cells[]): ReadonlyMap<string, readonly Cells[]> {
  const groups = new Map<string, Cells[]>();
  for (const cells of rows) groups.set(bathOf(cells), [...(groups.get(bathOf(cells)) ?? []), cells]);
  return groups;
}

/** Of each reading, the one before it in its bath, of the log or of the sheet. */
function readingsBefore(log: LogSnapshot, rows: readonly Cells[]): ReadonlyMap<Cells, Cells> {
  const before = new Map<Cells, Cells>();
  const all = byBath([...log.rows.readings.map(({ cells }): Cells => cells), ...rows]);
  for (const group of all.values()) {
    const counted = group
      .filter((cells) => cells["purpose"] !== "rinse" && typeof cells["ph"] === "number")
      .sort((a, b) => timeOf(a) - timeOf(b));
    counted.forEach((cells, index) => {
      const earlier = counted[index - 1];
      if (earlier !== undefined) before.set(cells, earlier);
    });
  }
  return before;
}

/** For each row that could be read, the log with the sheet's rows that its form would look at. */
export function neighborsOf(
  table: AdoptTable,
  numbered: readonly { readonly number: number; readonly cells: Cells }[],
  context: LogContext,
): (cells: Cells) => LogContext {
  const { log } = context;
  const rows = numbered.map(({ cells }) => cells);
  if (table === "costLines") {
    const first = new Map<string, Cells>();
    const earlier = new Map<Cells, Cells>();
    for (const { number, cells } of numbered) {
      const { document } = cells;
      if (document === undefined) continue;
      const key = folded(String(document));
      const before = first.get(key);
      if (before === undefined) first.set(key, { ...cells, id: `${String(number)} of this sheet` });
      else earlier.set(cells, before);
    }
    return (cells) => {
      const before = earlier.get(cells);
      return before === undefined ? context : { ...context, log: withRows(log, "costLines", [before]) };
    };
  }
  if (table === "readings") {
    const before = readingsBefore(log, rows);
    return (cells) => {
      const earlier = before.get(cells);
      return { ...context, log: withRows(log, "readings", earlier === undefined ? [] : [earlier], false) };
    };
  }
  if (table === "loads") {
    const logged: readonly AnyRow[] = log.rows.loads;
    const ofSheet = byBath(rows);
    const logs = new Map(
      [...byBath([...logged.map(({ cells }) => cells), ...rows]).entries()].map(([bath, group]) => [
        bath,
        ofSheet.has(bath) ? withRows(log, "loads", group, false) : log,
      ]),
    );
    return (cells) => ({ ...context, log: logs.get(bathOf(cells)) ?? log });
  }
  return () => context;
}
