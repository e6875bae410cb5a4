import { availableParallelism } from "node:os";

import { defineConfig } from "vitest/config";

import { slowFirst } from "./tests/slow-first.ts";

export default defineConfig({
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: "stand-in",
          include: ["tests/{unit,reference,property,contract,demo}/**/*.test.ts"],
          // These build many logs; they run on the other judge, which calls the stand-in for all that it answers.
          exclude: ["tests/unit/excel/{judge/**,upgrade-log.test.ts,record-traffic.test.ts,charts-added.test.ts}"],
        },
      },
      {
        extends: true,
        test: { name: "object model", include: ["tests/unit/excel/**/*.test.ts"], provide: { judge: "web" } },
      },
    ],
    // Many tests open a whole log in the grid, which takes seconds, and more on a busy machine.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    reporters: ["default"],
    // Files of a worker share the modules they load: to load and warm them took half of the time.
    isolate: false,
    setupFiles: ["tests/setup/random-seeds.ts", "tests/leave-no-trace.ts"],
    // Without a number it would be one fewer than the processors, so a single one where there are two.
    maxWorkers: Math.max(2, availableParallelism()),
    sequence: {
      sequencer: slowFirst(
        "demo-week",
        "forms-and-sheets",
        "log-workbook",
        "log-behavior",
        "upgrade-log",
        "pane-traffic",
        "undocumented",
        "builds",
        "hostile-entries",
        "adopt-sheet",
        "evaluated-log",
        "items-sheet",
        "record-traffic",
        "any-cells",
        "next-step",
        "loads-and-shares",
      ),
    },
  },
});
