import { readFileSync } from "node:fs";

import { expect, it } from "vitest";

import { logTypes, logTypesFile } from "../../scripts/log/log-types.ts";

it("holds the log's ids and words as types; after a change: npm run describe-log", () => {
  expect(readFileSync(logTypesFile, "utf8")).toBe(logTypes());
});
