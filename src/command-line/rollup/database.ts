import * as z from "zod";

import { CommandFailure } from "../failure.ts";
import { rowTableIds } from "./tables.ts";

/** The package, as package.json pins it. */
const packageName = "@duckdb/node-api";

/** What a query gives for one cell; whole numbers come as bigint. */
export type DatabaseValue = string | number | bigint | boolean | null;

export type DatabaseRow = Readonly<Record<string, DatabaseValue>>;

/** A database over the folder of row files; `read` takes the text of one query. */
export interface Database {
  readonly read: (query: string) => Promise<readonly DatabaseRow[]>;
  readonly close: () => void;
}

interface Reader {
  readonly getRowObjectsJS: () => unknown;
}

interface Connection {
  readonly runAndReadAll: (query: string) => Promise<Reader>;
  readonly closeSync: () => void;
}

interface Instance {
  readonly connect: () => Promise<Connection>;
  readonly closeSync: () => void;
}

/** The part of the package that is used. Its own types are not there where it is not installed. */
interface DuckDb {
  readonly DuckDBInstance: {
    readonly create: (path: string, options: Readonly<Record<string, string>>) => Promise<Instance>;
  };
}

const rowsSchema = z.array(z.record(z.string(), z.union([z.string(), z.number(), z.bigint(), z.boolean(), z.null()])));

const isDuckDb = (module: unknown): module is DuckDb =>
  typeof module === "object" && module !== null && "DuckDBInstance" in module;

async function loaded(): Promise<DuckDb> {
  try {
    const module: unknown = await import(/* webpackIgnore: true */ packageName);
    if (isDuckDb(module)) return module;
  } catch (error) {
    const code = error instanceof Error && "code" in error ? error.code : undefined;
    if (code !== "ERR_MODULE_NOT_FOUND" && code !== "MODULE_NOT_FOUND") throw error;
  }
  throw new CommandFailure(
    `The figures are worked out by DuckDB, which is not installed; npm install ${packageName} beside bathsheet brings it, and rollup --parquet writes the rows without it.`,
  );
}

/** Whether the figures can be worked out; it is asked before anything long is begun. */
export async function requireDatabase(): Promise<void> {
  await loaded();
}

const quoted = (text: string): string => `'${text.replaceAll("'", "''")}'`;

/** Opens the folder of row files. `views` are queries that others name, in their order. */
export async function openDatabase(
  folder: string,
  views: readonly { readonly name: string; readonly query: string }[],
): Promise<Database> {
  const { DuckDBInstance } = await loaded();
  // One thread adds fractions up in one order, so that the same rows give the same figures to the last digit.
  const instance = await DuckDBInstance.create(":memory:", { threads: "1", memory_limit: "120MB" });
  const connection = await instance.connect();
  const close = (): void => {
    connection.closeSync();
    instance.closeSync();
  };
  try {
    for (const table of rowTableIds) {
      const files = quoted(`${folder}/${table}/*/*/*.parquet`);
      await connection.runAndReadAll(
        `CREATE VIEW ${table} AS SELECT * FROM read_parquet(${files}, hive_partitioning = true, hive_types = {'shop': VARCHAR, 'month': VARCHAR})`,
      );
    }
    for (const { name, query } of views) await connection.runAndReadAll(`CREATE VIEW ${name} AS ${query}`);
  } catch (error) {
    close();
    throw error;
  }
  return {
    read: async (query) => rowsSchema.parse((await connection.runAndReadAll(query)).getRowObjectsJS()),
    close,
  };
}
