import { spawnSync } from "node:child_process";
import { randomInt } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";

import { projectFolder } from "./project.ts";
import { sayFailure } from "./say-failure.ts";

/**
 * What takes too long for `npm test`. Runs the properties alone, ten times as often and with a seed of its own each
 * round, up to the first round that fails, with the command that repeats it; then the tests of the sheets once more,
 * their formulas worked out by the grid in place of the log's own evaluation; then the tests of src/excel on every judge.
 */
const times = 10;

const sheetTests = ["joblog/sheets", "unit/advice", "unit/pane", "demo/week"];

const excelTests = ["tests/unit/excel"];

function countOf(name: string, given: string, least: number): number {
  const count = Number(given);
  if (!/^-?\d+$/.test(given) || count < least)
    throw new Error(`--${name} is ${given}; a whole number of at least ${least} is wanted`);
  return count;
}

function filesWithProperties(): readonly string[] {
  return readdirSync(path.join(projectFolder, "tests"), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".test.ts"))
    .map((file) => path.join("tests", file))
    .filter((file) =>
      /from "(?:fast-check|.*random-runs\.ts)"/.test(readFileSync(path.join(projectFolder, file), "utf8")),
    );
}

function passes(files: readonly string[], env: Readonly<Record<string, string>>): boolean {
  const { status } = spawnSync("npx", ["--no-install", "vitest", "run", "--test-timeout=0", ...files], {
    cwd: projectFolder,
    env: { ...process.env, ...env },
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  return status === 0;
}

await sayFailure(() => {
  const { values, positionals } = parseArgs({
    options: { rounds: { type: "string", default: "1" }, seed: { type: "string" } },
    allowPositionals: true,
  });
  const rounds = values.seed === undefined ? countOf("rounds", values.rounds, 1) : 1;
  const files = positionals.length > 0 ? positionals : filesWithProperties();
  for (let round = 1; round <= rounds; round += 1) {
    const seed = values.seed === undefined ? randomInt(2 ** 31) : countOf("seed", values.seed, -(2 ** 31));
    console.log(`\n== round ${round} of ${rounds}: seed ${seed}, ${files.length} files, ${times} times the usual runs`);
    if (!passes(files, { RANDOM_SEED: String(seed), RANDOM_TIMES: String(times) }))
      return Promise.reject(new Error(`Seed ${seed} fails. To repeat it: npm run soak -- --seed=${seed}`));
  }
  if (positionals.length === 0) {
    console.log("\n== the sheets, worked out by the grid");
    if (!passes(sheetTests, { SHEETS: "grid" }))
      return Promise.reject(new Error("The grid shows something else. To repeat it: SHEETS=grid npx vitest run"));
    console.log("\n== src/excel, judged by the stand-in alone and by Microsoft's object model for each host");
    if (!passes(excelTests, { JUDGES: "every" }))
      return Promise.reject(new Error("A judge refuses. To repeat it: JUDGES=every npx vitest run tests/unit/excel"));
  }
  console.log(`\nNo property failed in ${rounds} ${rounds === 1 ? "round" : "rounds"}.`);
  return Promise.resolve();
});
