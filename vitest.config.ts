import { availableParallelism } from "node:os";

import { defineConfig, type TestProjectInlineConfiguration } from "vitest/config";

import { landing } from "./tests/landing-tag.ts";
import { slowFirst } from "./tests/slow-first.ts";
import type { Judge } from "./tests/unit/excel/judge/judged-excel.ts";

/** `npm run soak` asks each judge about src/excel; otherwise a file's folder says which judge it has. */
const everyJudge = process.env["JUDGES"] === "every";

/** These choose their judges themselves. */
const choosers = ["tests/unit/excel/judge/**"];

function askedOf(judge: Judge): TestProjectInlineConfiguration {
  const exclude = judge === "web" ? [] : choosers;
  return {
    extends: true,
    test: { name: judge, include: ["tests/unit/excel/**/*.test.ts"], exclude, provide: { judge } },
  };
}

export default defineConfig({
  test: {
    tags: [landing],
    // Whole logs come and go: the usual space for what is young makes the collector take a seventh of the time.
    execArgv: ["--max-semi-space-size=128"],
    // One project otherwise: a worker that goes on to another loads and warms everything again.
    ...(everyJudge
      ? { projects: (["stand-in", "web", "win32", "mac"] as const).map(askedOf) }
      : {
          include: ["tests/{reference,property,contract,demo,unit}/**/*.test.ts"],
          exclude: ["tests/unit/excel/judge/builds.test.ts"],
        }),
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
        "settled-bath",
        "pane-traffic",
        "undocumented",
        "stand-in-members",
        "prepared-log",
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
