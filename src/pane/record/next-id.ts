import type { TableId } from "../../joblog/formula/log-types.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";

type NumberedTable = Extract<
  TableId,
  | "benchTests"
  | "readings"
  | "additions"
  | "loads"
  | "items"
  | "meterChecks"
  | "care"
  | "stockMoves"
  | "releases"
  | "costLines"
>;

const firstLetters: Readonly<Record<NumberedTable, string>> = {
  benchTests: "T",
  readings: "R",
  additions: "A",
  loads: "L",
  items: "I",
  meterChecks: "M",
  care: "K",
  stockMoves: "S",
  releases: "D",
  costLines: "C",
};

/** A longer number is a bar code or a slip, and nothing to count on from. */
const numbered = /^(|.*\D)(\d{1,9})$/;

/** The next `count` running numbers of a table, in the style of its highest one: after R009 comes R010. */
export function nextIds(log: LogSnapshot, table: NumberedTable, count: number): readonly string[] {
  let prefix = firstLetters[table];
  let digits = 3;
  let highest = 0;
  for (const row of log.rows[table]) {
    const parts = numbered.exec(String(row.cells.id ?? ""));
    const value = Number(parts?.[2] ?? 0);
    if (parts === null || value < highest) continue;
    highest = value;
    prefix = parts[1] ?? prefix;
    digits = (parts[2] ?? "").length;
  }
  return Array.from({ length: count }, (_, index) => prefix + String(highest + 1 + index).padStart(digits, "0"));
}

/** A bath id that no fill has yet: tank and day, and a letter where the tank was filled twice that day. */
export function proposedBathId(log: LogSnapshot, tank: string, opened: string): string {
  const [, month = "", day = ""] = /^\d{4}-(\d{2})-(\d{2})/.exec(opened) ?? [];
  const base = `B-${tank}-${month}${day}`;
  const taken = new Set(log.rows.baths.map((row) => String(row.cells.bath ?? "")));
  if (!taken.has(base)) return base;
  for (let code = "b".charCodeAt(0); code <= "z".charCodeAt(0); code += 1) {
    const id = base + String.fromCharCode(code);
    if (!taken.has(id)) return id;
  }
  return base;
}
