import { requireDatabase } from "../../../src/command-line/rollup/database.ts";

/** Where DuckDB is not installed the tests that need it are skipped, and their titles say why. */
export const hasDuckDb = await requireDatabase().then(
  () => true,
  () => false,
);
