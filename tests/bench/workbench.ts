import { readFile } from "node:fs/promises";
import path from "node:path";

import { type Browser, chromium } from "playwright-core";

import { buildHeadlessLog } from "../../scripts/build/headless-log.ts";
import { distFolder } from "../../scripts/project.ts";
import { serve } from "../../scripts/serve.ts";
import { ensureBrowser, headlessFlags } from "../../scripts/tests/find-browser.ts";
import { largeLog } from "./large-log.ts";
import { median } from "./median.ts";

/** The part of the page that a measurement reaches. */
interface MeasuredWindow {
  readonly bathsheetHost: {
    readonly model: { readonly dispatch: (command: "EVALUATE_CELLS") => unknown };
    readonly values: (sheet: string) => readonly unknown[][];
  };
}

const readings = 1000;
const additions = 200;
const rounds = 5;

async function largeState(): Promise<string> {
  const functionsScript = await readFile(path.join(distFolder, "functions.js"), "utf8");
  const { host } = await buildHeadlessLog(functionsScript, largeLog(readings, additions));
  return JSON.stringify(host.save());
}

/** Milliseconds of a whole recalculation, each value looked at afterwards so that none is left for later. */
async function recalculations(browser: Browser, address: string, state: string): Promise<readonly number[]> {
  const page = await browser.newPage();
  await page.route("**/demo-week.json", (route) => route.fulfill({ contentType: "application/json", body: state }));
  await page.goto(`${address}/`);
  await page.frameLocator("iframe").getByRole("heading").first().waitFor({ timeout: 120_000 });
  const times = await page.evaluate((count) => {
    const { model, values } = (window as unknown as MeasuredWindow).bathsheetHost;
    return Array.from({ length: count }, () => {
      const start = performance.now();
      model.dispatch("EVALUATE_CELLS");
      values("Readings");
      values("Baths");
      return performance.now() - start;
    });
  }, rounds);
  await page.close();
  return times;
}

/** The longest that the page did not answer, in milliseconds, while a copy of a large log was written. */
async function savingTasks(browser: Browser, address: string, state: string): Promise<readonly number[]> {
  const page = await browser.newPage();
  await page.route("**/demo-week.json", (route) => route.fulfill({ contentType: "application/json", body: state }));
  await page.goto(`${address}/`);
  await page.frameLocator("iframe").getByRole("heading").first().waitFor({ timeout: 120_000 });
  const longest: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    await page.evaluate(() => {
      const watched = window as unknown as { longest: number; watch: ReturnType<typeof setInterval> };
      let last = performance.now();
      watched.longest = 0;
      watched.watch = setInterval(() => {
        const now = performance.now();
        watched.longest = Math.max(watched.longest, now - last);
        last = now;
      }, 1);
    });
    await Promise.all([page.waitForEvent("download", { timeout: 60_000 }), page.locator("#save-copy").click()]);
    longest.push(
      await page.evaluate(() => {
        const watched = window as unknown as { longest: number; watch: ReturnType<typeof setInterval> };
        clearInterval(watched.watch);
        return watched.longest;
      }),
    );
  }
  await page.close();
  return longest;
}

/** Milliseconds from the arrival of the pane's script to the first button that a person can press. */
async function paneStart(browser: Browser, address: string): Promise<number> {
  const page = await browser.newPage();
  await page.goto(`${address}/`);
  const pane = page.frameLocator("iframe");
  await pane.getByRole("tab").first().waitFor();
  const frame = page.frames().find((one) => one.url().endsWith("taskpane.html"));
  if (frame === undefined) throw new Error("The page has no pane.");
  await pane.getByRole("main").getByRole("button").first().waitFor();
  const milliseconds = await frame.evaluate(() => {
    const script = performance.getEntriesByType("resource").find(({ name }) => name.endsWith("/taskpane.js")) as
      PerformanceResourceTiming | undefined;
    return script === undefined ? Number.NaN : performance.now() - script.responseEnd;
  });
  await page.close();
  return milliseconds;
}

/** Prints how long the workbench takes over a large log, and how soon the pane can be used. */
export async function benchWorkbench(): Promise<void> {
  const state = await largeState();
  const { address, close } = await serve(0);
  const browser = await chromium.launch({ executablePath: ensureBrowser(), args: headlessFlags });
  try {
    const times = await recalculations(browser, address, state);
    console.log(
      `recalculation of ${String(readings)} readings and ${String(additions)} additions: ${median(times).toFixed(0)} ms, median of ${String(rounds)} (goal 1,500 ms)`,
    );
    const saving = await savingTasks(browser, address, state);
    console.log(
      `longest wait for the page while a copy of that log is saved: ${median(saving).toFixed(0)} ms, median of ${String(rounds)} (goal 200 ms)`,
    );
    const starts: number[] = [];
    for (let round = 0; round < rounds; round += 1) starts.push(await paneStart(browser, address));
    console.log(
      `pane usable after its script arrived: ${median(starts).toFixed(0)} ms, median of ${String(rounds)} (goal 1,000 ms)`,
    );
  } finally {
    await browser.close();
    await close();
  }
}
