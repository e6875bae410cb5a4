import type { PlacedFile } from "../../../src/command-line/command.ts";
import { RowFiles } from "../../../src/command-line/rollup/parquet.ts";
import type { TypedRows } from "../../../src/command-line/rollup/tables.ts";

/** These rows as Parquet files, packed in so many portions. */
export function parquetFiles(...portions: readonly TypedRows[]): readonly PlacedFile[] {
  const files = new RowFiles();
  for (const rows of portions) files.add(rows);
  return files.files();
}
