import { availableParallelism } from "node:os";

import { defineConfig, type TestProjectInlineConfiguration } from "vitest/config";

import { slowFirst } from "./tests/slow-first.ts";
import type { Build } from "./tests/unit/excel/judge/object-model.ts";

/** Set by `npm run soak`: src/excel is judged by the stand-in alone as well, and by each of Microsoft's builds. */
const everyJudge = process.env["JUDGES"] === "every";

/** These choose their judges themselves. */
const builds = ["tests/unit/excel/judge/**"];

/** src/excel on Microsoft's object model for one of its hosts. */
function objectModel(name: string, judge: Build, exclude: string[]): TestProjectInlineConfiguration {
  return { extends: true, test: { name, include: ["tests/unit/excel/**/*.test.ts"], exclude, provide: { judge } } };
}

export default defineConfig({
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: "stand-in",
          // src/excel runs on the other judge, which is stricter and calls the stand-in for all that it answers; that the
          // stand-in's own objects have each member that it uses, stands in tests/contract/stand-in-members.test.ts.
          include: [
            "tests/{reference,property,contract,demo}/**/*.test.ts",
            "tests/unit/!(excel)/**/*.test.ts",
            everyJudge ? "tests/unit/excel/*.test.ts" : "tests/unit/excel/{excel-limits,office-problems}.test.ts",
          ],
        },
      },
      objectModel("object model", "web", everyJudge ? [] : ["tests/unit/excel/judge/builds.test.ts"]),
      ...(everyJudge ? (["win32", "mac"] as const).map((build) => objectModel(build, build, builds)) : []),
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
