import type { ColumnId } from "../../joblog/formula/log-names.ts";
import type { TableId } from "../../joblog/formula/log-types.ts";
import { jobLog } from "../../joblog/job-log.ts";
import type { InputColumn } from "../../joblog/model/definition.ts";
import { findTable } from "../../joblog/model/references.ts";

export type AdoptTable = Extract<
  TableId,
  | "readings"
  | "additions"
  | "loads"
  | "items"
  | "benchTests"
  | "claims"
  | "baths"
  | "costLines"
  | "stockMoves"
  | "meterChecks"
>;

/** The column by which rows of these are known, as the sheet has it; the others bear running numbers of the log. */
export const ownKeys: Readonly<Partial<Record<AdoptTable, { readonly id: string; readonly word: string }>>> = {
  items: { id: "id", word: "tag" },
  claims: { id: "claim", word: "claim" },
  baths: { id: "bath", word: "bath" },
};

/** What the rows of a shop's sheet can be. */
export type AdoptKind = {
  readonly [Table in AdoptTable]: {
    readonly table: Table;
    readonly name: string;
    readonly about: string;
    /** Columns without which a row says nothing, beyond those that the log itself wants. */
    readonly alsoNeeded: readonly ColumnId<Table>[];
  };
}[AdoptTable];

export const adoptKinds: readonly AdoptKind[] = [
  { table: "readings", name: "Readings", about: "pH and temperature of samples", alsoNeeded: ["ph"] },
  { table: "additions", name: "Additions", about: "Concentrate and water that went in", alsoNeeded: [] },
  { table: "loads", name: "Loads", about: "Baskets that went through a bath", alsoNeeded: [] },
  { table: "items", name: "Items", about: "Pieces of a claim", alsoNeeded: [] },
  { table: "benchTests", name: "Bench tests", about: "Trials on surfaces", alsoNeeded: [] },
  { table: "claims", name: "Claims", about: "Losses, with insurer and adjuster", alsoNeeded: [] },
  { table: "baths", name: "Baths", about: "Fills of a tank", alsoNeeded: [] },
  { table: "costLines", name: "Cost lines", about: "Labor, energy, disposal", alsoNeeded: ["account"] },
  { table: "stockMoves", name: "Stock", about: "Counts, receipts and issues of concentrate", alsoNeeded: [] },
  {
    table: "meterChecks",
    name: "Meter checks",
    about: "What the pH meter showed in two buffers",
    alsoNeeded: ["asFound1", "asFound2"],
  },
];

export function kindOf(table: AdoptTable): AdoptKind {
  const kind = adoptKinds.find((one) => one.table === table);
  if (kind === undefined) throw new RangeError(`Rows of ${table} cannot be adopted.`);
  return kind;
}

/** Written by the log where a baseline is set from its readings. */
const ofTheLog: readonly string[] = ["baselineSetAt", "baselineSetBy", "baselineFrom", "baselineAsRead"];

/** A line of the stock without a time stands for the end of its day, so that none is asked for. */
export const standsForDayEnd = (table: AdoptTable): boolean => table === "stockMoves";

/** Columns that a sheet may fill; running numbers are the log's own, but for tags on pieces. */
export function columnsOf({ table, alsoNeeded }: AdoptKind): readonly (InputColumn & { readonly needed: boolean })[] {
  return findTable(jobLog, table).columns.flatMap((column) => {
    if (column.role !== "input" || (column.id === "id" && table !== "items")) return [];
    if (ofTheLog.includes(column.id) || column.ofCells === true) return [];
    const needed = column.id !== "id" && (column.required || alsoNeeded.some((id) => id === column.id));
    return [{ ...column, needed }];
  });
}
