import { defineConfig } from "vitest/config";

import { landing } from "./tests/landing-tag.ts";
import { slowFirst } from "./tests/slow-first.ts";

export default defineConfig({
  test: {
    tags: [landing],
    include: ["tests/e2e/**/*.test.ts"],
    testTimeout: 120_000,
    hookTimeout: 60_000,
    // A page answers later where two browsers share the machine.
    expect: { poll: { timeout: 30_000 } },
    isolate: false,
    // Each file has a server and a browser of its own. A browser is several processes already.
    maxWorkers: 2,
    sequence: {
      sequencer: slowFirst(
        "pane-accessibility",
        "forms-accessibility",
        "reference-page",
        "first-two-days",
        "first-run",
        "daily-loop",
      ),
    },
  },
});
