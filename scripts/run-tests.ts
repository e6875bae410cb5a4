import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import path from "node:path";
import { ensureBrowser } from "./find-browser.ts";
import { projectFolder } from "./project.ts";

/**
 * Everything that must hold before a change lands: checks first, the build and its size, then the tests.
 * A check counts as one; a test counts as one. Ends with "N passed, N failed" alone on a line.
 */
interface Count {
  passed: number;
  failed: number;
}

interface TestReport {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numFailedTestSuites: number;
  readonly numPendingTests: number;
  readonly numTodoTests: number;
}

const results = path.join(projectFolder, "test-results");

function run(command: string, ...argumentList: string[]): boolean {
  const { status } = spawnSync("npx", ["--no-install", command, ...argumentList], {
    cwd: projectFolder,
    stdio: ["ignore", "inherit", "inherit"],
    shell: process.platform === "win32",
  });
  return status === 0;
}

function check(title: string, command: string, ...argumentList: string[]): Count {
  console.log(`\n== ${title}`);
  const passed = run(command, ...argumentList);
  console.log(`${passed ? "ok" : "FAILED"}: ${title}`);
  return passed ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

/** A file that could not even be collected counts as a failure, and so does a test that was left out. */
function tests(title: string, config: string): Count {
  console.log(`\n== ${title}`);
  const file = path.join(results, `${config}.json`);
  const passed = run("vitest", "run", "--config", config, "--reporter=default", "--reporter=json", `--outputFile=${file}`);
  let report: TestReport;
  try {
    report = JSON.parse(readFileSync(file, "utf8")) as TestReport;
  } catch {
    console.log(`FAILED: ${title} left no report`);
    return { passed: 0, failed: 1 };
  }
  const failed = report.numFailedTests + report.numPendingTests + report.numTodoTests;
  return { passed: report.numPassedTests, failed: passed ? failed : Math.max(failed, report.numFailedTestSuites, 1) };
}

rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });

try {
  process.env["BROWSER_PATH"] = ensureBrowser();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
}

const counts: Count[] = [
  check("types", "tsc", "-p", "tsconfig.json"),
  check("types of the pure folders, without DOM, Node or Office", "tsc", "-p", "tsconfig.pure.json"),
  check("lint", "eslint", ".", "--max-warnings=0"),
  check("import rules", "depcruise", "src", "functions", "scripts", "tests", "--config", ".dependency-cruiser.cjs"),
  check("nothing unused", "knip"),
];
const built = check("build", "tsx", "scripts/build.ts");
counts.push(built);
if (built.failed === 0) counts.push(check("size budget", "tsx", "scripts/check-sizes.ts"));
if (!process.argv.includes("--checks-only")) {
  counts.push(tests("unit, reference, property and contract tests", "vitest.config.ts"));
  if (built.failed === 0) counts.push(tests("browser tests", "vitest.browser.config.ts"));
}

const passed = counts.reduce((sum, count) => sum + count.passed, 0);
const failed = counts.reduce((sum, count) => sum + count.failed, 0);
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
