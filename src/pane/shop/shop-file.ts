/** The shop's defaults as a file: limits, tanks, waters, concentrates, people and words, for the next job's workbook. */
import { fieldTextOf } from "../../advice/wording/moments.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { Cells, RowValue } from "../../joblog/model/definition.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { limitIds } from "./limit-fields.ts";
import { inputsOf, type ShopTable } from "./shop-tables.ts";

/** Claims belong to a job, not to the shop. */
export const fileTables = [
  "tanks",
  "waters",
  "concentrates",
  "people",
  "keepOutWords",
] as const satisfies readonly ShopTable[];

export type FileTable = (typeof fileTables)[number];

export const fileKind = "Bathsheet shop defaults";
export const fileVersion = 1;

type FileCells = Readonly<Record<string, RowValue>>;

/** As it stands in the file: blank cells are absent, days written 2027-03-01. */
export interface ShopFile {
  readonly kind: typeof fileKind;
  readonly version: typeof fileVersion;
  readonly units: UnitSystem;
  readonly limits: FileCells;
  readonly tables: Readonly<Record<FileTable, readonly FileCells[]>>;
}

function cellsOfRow(table: FileTable, cells: Cells): FileCells {
  return Object.fromEntries(
    inputsOf(table).flatMap(({ id, type }) => {
      const value = cells[id];
      if (value === undefined) return [];
      return [[id, type === "date" && typeof value === "number" ? fieldTextOf(value).slice(0, 10) : value]];
    }),
  );
}

export function shopFile(log: LogSnapshot, system: UnitSystem): ShopFile {
  const limits = limitIds.flatMap((id) => (log.fields[id] === undefined ? [] : [[id, log.fields[id]] as const]));
  const rows = (table: FileTable): readonly FileCells[] => log.rows[table].map(({ cells }) => cellsOfRow(table, cells));
  return {
    kind: fileKind,
    version: fileVersion,
    units: system,
    limits: Object.fromEntries(limits),
    tables: {
      tanks: rows("tanks"),
      waters: rows("waters"),
      concentrates: rows("concentrates"),
      people: rows("people"),
      keepOutWords: rows("keepOutWords"),
    },
  };
}
