import { type ColumnSource, parquetWriteBuffer, type SchemaElement } from "hyparquet-writer";

import type { PlacedFile } from "../command.ts";
import {
  type ColumnType,
  partitions,
  type RowTableId,
  rowTableIds,
  rowTables,
  type RowValue,
  type TypedRows,
} from "./tables.ts";

type AnyRow = Readonly<Record<string, RowValue | undefined>>;

const stored: Readonly<Record<ColumnType, Omit<SchemaElement, "name">>> = {
  text: { type: "BYTE_ARRAY", converted_type: "UTF8" },
  "whole number": { type: "INT32" },
  cents: { type: "INT64" },
  number: { type: "DOUBLE" },
  "yes or no": { type: "BOOLEAN" },
  "wall time": { type: "INT64", logical_type: { type: "TIMESTAMP", isAdjustedToUTC: false, unit: "MILLIS" } },
  UTC: { type: "INT64", logical_type: { type: "TIMESTAMP", isAdjustedToUTC: true, unit: "MILLIS" } },
};

function columnOf(name: string, type: ColumnType, rows: readonly AnyRow[]): ColumnSource {
  const data = rows.map((row) => {
    const value = row[name];
    if (value === undefined) return null;
    return type === "cents" && typeof value === "number" ? BigInt(value) : value;
  });
  return { name, data };
}

function fileOf(table: RowTableId, rows: readonly AnyRow[]): Uint8Array {
  const described: Readonly<Record<string, { readonly type: ColumnType }>> = rowTables[table].columns;
  const columns = Object.entries(described).filter(([name]) => !partitions.some((one) => one === name));
  const schema: SchemaElement[] = [
    { name: "root", num_children: columns.length },
    ...columns.map(([name, { type }]): SchemaElement => ({ name, ...stored[type], repetition_type: "OPTIONAL" })),
  ];
  const columnData = columns.map(([name, { type }]) => columnOf(name, type, rows));
  return new Uint8Array(parquetWriteBuffer({ schema, columnData, createdBy: "bathsheet" }));
}

/** As Hive spells what a folder's name cannot hold, and what some disk cannot. */
const escaped = (value: string): string =>
  value.replaceAll(
    /[\u0000-\u001f\u007f"#%'*/:<>=?\\{}[\]^|]|[. ]$/g,
    (mark) => `%${mark.charCodeAt(0).toString(16).toUpperCase().padStart(2, "0")}`,
  );

const folderOf = (row: AnyRow): string => partitions.map((name) => `${name}=${escaped(String(row[name]))}`).join("/");

function inFolders(rows: readonly AnyRow[]): ReadonlyMap<string, readonly AnyRow[]> {
  const folders = new Map<string, AnyRow[]>();
  for (const row of rows) {
    const folder = folderOf(row);
    const others = folders.get(folder);
    if (others === undefined) folders.set(folder, [row]);
    else others.push(row);
  }
  return folders;
}

/**
 * Rows as Parquet files, in a folder for each table, shop and month; the same rows, added in the same portions, give the same
 * bytes. What is added is packed at once, so that the rows of thousands of logs need not be in memory together.
 */
export class RowFiles {
  private readonly packed: PlacedFile[] = [];
  private readonly filled = new Set<RowTableId>();
  private portions = 0;

  add(rows: TypedRows): void {
    this.portions += 1;
    const name = this.portions === 1 ? "rows.parquet" : `rows-${String(this.portions)}.parquet`;
    for (const table of rowTableIds) {
      const folders = inFolders(rows[table]);
      for (const [folder, inIt] of folders)
        this.packed.push({ path: `${table}/${folder}/${name}`, content: fileOf(table, inIt) });
      if (folders.size > 0) this.filled.add(table);
    }
  }

  /** All files, in the order of their paths. */
  files(): readonly PlacedFile[] {
    // A table of no rows still has its columns, or no query could name it.
    const none = folderOf({ shop: "none", month: "undated" });
    const empty = rowTableIds
      .filter((table) => !this.filled.has(table))
      .map((table) => ({ path: `${table}/${none}/rows.parquet`, content: fileOf(table, []) }));
    return [...this.packed, ...empty].sort((a, b) => (a.path < b.path ? -1 : 1));
  }
}
