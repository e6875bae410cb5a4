import type { PlacedFile, Surroundings } from "../command.ts";
import { type Database, openDatabase } from "./database.ts";

/** Queries that others name, in their order. */
const views = ["amounts", "jobs"] as const;

/** Works with a folder of row files in the database, and closes it whatever happens. */
export async function withRowsIn<Answer>(
  folder: string,
  around: Pick<Surroundings, "queryText">,
  work: (database: Database) => Promise<Answer>,
): Promise<Answer> {
  const named: { name: string; query: string }[] = [];
  for (const name of views) named.push({ name, query: await around.queryText(name) });
  const database = await openDatabase(folder, named);
  try {
    return await work(database);
  } finally {
    database.close();
  }
}

/** The same with rows that stand in no folder yet; they go into one for the time. */
export async function withRows<Answer>(
  files: readonly PlacedFile[],
  around: Pick<Surroundings, "queryText" | "temporaryFolder">,
  work: (database: Database) => Promise<Answer>,
): Promise<Answer> {
  const { folder, remove } = await around.temporaryFolder(files);
  try {
    return await withRowsIn(folder, around, work);
  } finally {
    await remove();
  }
}
