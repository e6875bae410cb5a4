import { readFileSync } from "node:fs";
import path from "node:path";

import { expect, it } from "vitest";

import { logTypes } from "../../scripts/log/write-log-types.ts";
import { projectFolder } from "../../scripts/project.ts";

it("holds the log's ids and words as types; after a change: npm run log-types", () => {
  expect(readFileSync(path.join(projectFolder, "src", "joblog", "formula", "log-types.ts"), "utf8")).toBe(logTypes());
});
