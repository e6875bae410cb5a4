import { phOf } from "../../../src/core/chemistry/ph-of.ts";
import { temperatureOf } from "./accuracy-of-ph.ts";
import { readTable } from "./read-table.ts";

export const databaseNames = [
  "phreeqc.dat",
  "wateq4f.dat",
  "minteq.v4.dat",
  "sit.dat",
  "llnl.dat",
  "pitzer.dat",
] as const;

/** One bath by us and by PHREEQC with databases as they are published, none of our constants in them. */
export interface DatabaseRow {
  readonly bath: string;
  readonly celsius: number;
  readonly ours: number;
  /** In the order of the names; undefined where the database lacks an ingredient. */
  readonly others: readonly (number | undefined)[];
}

export function databaseRows(): readonly DatabaseRow[] {
  return readTable("unmodified-databases").map((row) => ({
    bath: row.text("bath"),
    celsius: row.number("celsius"),
    ours: phOf(row.totals(), temperatureOf(row)),
    others: databaseNames.map((name) => (row.has(name) ? row.number(name) : undefined)),
  }));
}
