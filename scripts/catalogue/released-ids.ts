import { readFileSync } from "node:fs";
import path from "node:path";

import { projectFolder } from "../project.ts";

/** A worksheet function's id stands in other people's cells from its first release on, and this file keeps it. */
export const releasedIdsFile = path.join(projectFolder, "tests", "contract", "released-ids");

/** The ids of all functions that were ever released. */
export function releasedIds(): readonly string[] {
  return readFileSync(releasedIdsFile, "utf8").split("\n").filter(Boolean);
}

/** Whether the newest entry of the changelog is of a release. */
export function isRelease(changelog: string): boolean {
  const newest = /^## (.+)$/m.exec(changelog)?.[1];
  if (newest === undefined) throw new RangeError("CHANGELOG.md has no entry.");
  return !newest.includes("unreleased");
}

/** What is wrong with the list of released ids, a sentence each. */
export function releaseFaults(
  released: readonly string[],
  ids: readonly string[],
  release: boolean,
): readonly string[] {
  return [
    ...released
      .filter((id) => !ids.includes(id))
      .map((id) => `BATH.${id} was released and is gone: cells out there still call it.`),
    ...(release ? ids : [])
      .filter((id) => !released.includes(id))
      .map(
        (id) => `BATH.${id} is released by the changelog and not in tests/contract/released-ids: npm run catalogue.`,
      ),
  ];
}
