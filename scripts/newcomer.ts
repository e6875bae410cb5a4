/**
 * What a newcomer does with the README alone: takes a fresh copy, installs, starts, and opens the workbench. With `--here`
 * the copy is this folder as it stands, for a machine that has just installed it. Says how long the page took.
 */
import { execFileSync, spawn } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";

import { projectFolder } from "./project.ts";
import { sayFailure } from "./say-failure.ts";

/** What the workbench and Excel ask for first. */
const pages = ["/", "/taskpane.html", "/functions.js", "/functions.json", "/reference.html", "/manifest.xml"];

const longest = 300_000;

/** Resolves to the address that `npm start` says, once everything is there. */
function addressOf(started: ReturnType<typeof spawn>): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = "";
    const late = setTimeout(() => {
      reject(new Error(`npm start said no address within ${String(longest / 1000)} s: ${said}`));
    }, longest);
    const note = (text: unknown): void => {
      said += String(text);
      const address = /workbench is at (\S+)/.exec(said)?.[1];
      if (address === undefined) return;
      clearTimeout(late);
      resolve(address);
    };
    started.stdout?.on("data", note);
    started.stderr?.on("data", note);
    started.once("exit", (code) => {
      reject(new Error(`npm start ended with ${String(code)}: ${said}`));
    });
  });
}

async function openPages(folder: string): Promise<void> {
  const from = performance.now();
  const started = spawn("npm", ["start"], {
    cwd: folder,
    env: { ...process.env, PORT: "0", CI: "1" },
    stdio: "pipe",
    detached: true,
  });
  try {
    const address = await addressOf(started);
    for (const page of pages) {
      const response = await fetch(`${address}${page}`);
      if (!response.ok || (await response.text()) === "")
        throw new Error(`${page} answered with ${String(response.status)}, or with nothing.`);
    }
    console.log(`npm start: the workbench was up after ${((performance.now() - from) / 1000).toFixed(1)} s`);
  } finally {
    // npm hands no signal on to what it started, so the whole group is ended.
    if (started.pid !== undefined && started.exitCode === null) process.kill(-started.pid);
  }
}

await sayFailure(async () => {
  if (process.argv.includes("--here")) {
    await openPages(projectFolder);
    return;
  }
  const folder = await mkdtemp(path.join(tmpdir(), "bathsheet-newcomer-"));
  try {
    execFileSync("git", ["clone", "--quiet", "--depth", "1", `file://${projectFolder}`, folder]);
    const from = performance.now();
    execFileSync("npm", ["ci"], { cwd: folder, stdio: ["ignore", "ignore", "inherit"] });
    console.log(`npm ci: ${((performance.now() - from) / 1000).toFixed(1)} s`);
    await openPages(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
});
