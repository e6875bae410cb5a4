import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import path from "node:path";

import { landing } from "../tests/landing-tag.ts";
import { projectFolder } from "./project.ts";
import { ensureBrowser } from "./tests/find-browser.ts";
import { minutesSince, type Program, runSideBySide } from "./tests/side-by-side.ts";
import { type Counts, countTests, sayLeftOut, type TestReport } from "./tests/test-counts.ts";

/**
 * The checks beside the build, the build's size, then the tests; those that are tagged for it with `--landing` alone,
 * for which everything must hold. A check counts as one; a test counts as one. Ends with "N passed, N failed" alone on a line.
 */
const build: Program = { title: "build", command: ["tsx", "scripts/build.ts"] };

/** TypeScript's native compiler; the other one, of the same name, is for the packages that call its interface. */
const checker = "node_modules/typescript-native/bin/tsc";

/** The longest first. */
const checks: readonly Program[] = [
  { title: "lint", command: ["oxlint", "--deny-warnings", "--report-unused-disable-directives"] },
  { title: "types", command: ["node", checker, "-p", "tsconfig.json"] },
  {
    title: "types of the pure folders, without DOM, Node or Office",
    command: ["node", checker, "-p", "tsconfig.pure.json"],
  },
  {
    title: "import rules",
    command: ["depcruise", "src", "functions", "scripts", "tests", "--config", ".dependency-cruiser.cjs"],
  },
  { title: "format", command: ["prettier", "--check", "--log-level=warn", "."] },
  { title: "no newer Office.js than the manifest asks for", command: ["tsx", "scripts/check-api-floor.ts"] },
  { title: "nothing unused", command: ["knip"] },
];

const sizes: Program = { title: "size budget", command: ["tsx", "scripts/check-sizes.ts"] };

const isLanding = process.argv.includes("--landing");
const results = path.join(projectFolder, "test-results");
const counts: Counts[] = [];
const minutes: Record<string, number> = {};
const start = performance.now();

async function runPrograms(...programs: readonly Program[]): Promise<boolean> {
  const ended = await runSideBySide(programs);
  const passed = ended.filter((one) => one.passed).length;
  counts.push({ passed, failed: ended.length - passed, leftOut: [], forLanding: 0 });
  for (const one of ended) if (one.title === build.title) minutes["build"] = one.minutes;
  return ended.every((one) => one.passed || one.title !== build.title);
}

function runTests(part: string, title: string, config: string): void {
  console.log(`\n== ${title}`);
  const from = performance.now();
  const file = path.join(results, `${config}.json`);
  const { status } = spawnSync(
    "npx",
    [
      "--no-install",
      "vitest",
      "run",
      "--config",
      config,
      "--reporter=default",
      "--reporter=json",
      `--outputFile=${file}`,
      ...(isLanding ? [] : [`--tags-filter=!${landing.name}`]),
    ],
    {
      cwd: projectFolder,
      stdio: ["ignore", "inherit", "inherit"],
      shell: process.platform === "win32",
    },
  );
  minutes[part] = minutesSince(from);
  try {
    counts.push(
      countTests(JSON.parse(readFileSync(file, "utf8")) as TestReport, { endedWell: status === 0, isLanding }),
    );
  } catch {
    console.log(`FAILED: ${title} left no report`);
    counts.push({ passed: 0, failed: 1, leftOut: [], forLanding: 0 });
  }
}

rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });

try {
  process.env["BROWSER_PATH"] = ensureBrowser();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
}

const built = await runPrograms(build, ...checks);
if (built) await runPrograms(sizes);
minutes["checks"] = minutesSince(start);
if (!process.argv.includes("--checks-only")) {
  runTests("unit", "unit, reference, property and contract tests", "vitest.config.ts");
  if (built) runTests("browser", "browser tests", "vitest.browser.config.ts");
}
minutes["all"] = minutesSince(start);

const sum = (of: "passed" | "failed" | "forLanding"): number => counts.reduce((all, count) => all + count[of], 0);
const leftOut = sayLeftOut(counts.flatMap((count) => count.leftOut));
const spent = ["checks", "build", "unit", "browser", "all"].flatMap((part) =>
  minutes[part] === undefined ? [] : [`${part} ${minutes[part].toFixed(1)}`],
);
console.log(
  [
    "",
    ...(leftOut === undefined ? [] : [leftOut]),
    ...(sum("forLanding") === 0
      ? []
      : [`kept for a landing: ${String(sum("forLanding"))} (npm test -- --landing runs them, too)`]),
    `minutes: ${spent.join(", ")}`,
    `${String(sum("passed"))} passed, ${String(sum("failed"))} failed`,
  ].join("\n"),
);
process.exitCode = sum("failed") === 0 ? 0 : 1;
