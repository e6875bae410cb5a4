/** @module-tag landing */
import { readFile } from "node:fs/promises";

import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";

import { partsOf } from "../unit/files/read-parts.ts";
import { openWorkbench, type WorkbenchSession } from "./session/workbench-session.ts";

let bench: WorkbenchSession;

beforeAll(async () => {
  bench = await openWorkbench("?start=empty");
});

afterEach(async ({ task }) => {
  if (task.result?.state === "fail")
    await bench.page.screenshot({ path: `test-results/${task.name.slice(0, 40)}.png` });
});

afterAll(async () => {
  await bench.close();
});

const look = () => bench.pane.getByRole("button", { name: "Look at the demo week" });

describe("the demo week from an empty workbook", () => {
  it("that cannot be fetched says so and what to do, and writes nothing", async () => {
    const before = await bench.contents();
    await bench.page.route("**/demo-week-log.json", (route) => route.abort("internetdisconnected"));
    await look().click();
    await bench.pane
      .getByRole("alert")
      .getByText(/could not be loaded. Nothing was written.*try again/)
      .waitFor();
    expect(await bench.contents()).toEqual(before);
    await bench.page.unroute("**/demo-week-log.json");
    // The refused request is the browser's to report; anything else is a fault.
    expect(bench.faults.splice(0)).toEqual([expect.stringContaining("ERR_INTERNET_DISCONNECTED")]);
  });

  it("cancelled between two batches leaves the workbook as it was", async () => {
    const before = await bench.contents();
    await bench.cancelAt("Building the demo week", 5);
    await look().click();
    await bench.pane.getByText(/what had been added was taken away again, and the workbook is as it was/).waitFor();
    expect(await bench.contents()).toEqual(before);
  });

  it("tried again tells how far it is and then holds the whole week", async () => {
    const seen = bench.pane.locator("body").evaluate(
      (body) =>
        new Promise<string[]>((resolve) => {
          const words = new Set<string>();
          const watch = new MutationObserver(() => {
            const text = body.querySelector('[role="progressbar"]')?.getAttribute("aria-valuetext");
            if (text !== null && text !== undefined) words.add(text);
            // The bar is gone once all is written.
            if (words.size === 0 || body.querySelector('[role="progressbar"]') !== null) return;
            watch.disconnect();
            resolve([...words]);
          });
          watch.observe(body, { childList: true, subtree: true, attributes: true });
        }),
    );
    await look().click();
    expect((await seen).length).toBeGreaterThan(3);
    await bench.pane.getByRole("combobox", { name: "Bath" }).waitFor();
    // The last reading of the invented week, which was typed.
    expect(await bench.lookUp("Readings", "R019", "pH as read")).toBeTypeOf("number");
    expect(bench.faults).toEqual([]);
  });

  it("handed off is a file with the same figures, no formula and no function of the add-in", async () => {
    await bench.pane.getByRole("tab", { name: "Claims" }).click();
    const [download] = await Promise.all([
      bench.page.waitForEvent("download"),
      bench.pane.getByRole("button", { name: "Open a hand-off copy" }).click(),
    ]);
    const parts = [...partsOf(new Uint8Array(await readFile(await download.path())))];
    const sheets = parts.filter(([name]) => name.startsWith("xl/worksheets/")).map(([, text]) => text);
    expect(sheets.length).toBeGreaterThan(10);
    expect(sheets.filter((text) => /<f[ >]/.test(text))).toEqual([]);
    expect(parts.filter(([, text]) => text.includes("BATH.")).map(([name]) => name)).toEqual([]);
    const values = new Set(
      sheets.flatMap((text) => [...text.matchAll(/<v>([^<]*)<\/v>/g)].map(([, value]) => Number(value))),
    );
    const numbers = Object.values((await bench.contents()).sheets)
      .flat(2)
      .filter((value) => typeof value === "number");
    expect(numbers.length).toBeGreaterThan(1000);
    expect(numbers.filter((value) => !values.has(value))).toEqual([]);
  });

  it("copied for one claim is a file without a formula and without the other claims", async () => {
    await bench.pane.getByRole("tab", { name: "Claims" }).click();
    const card = bench.pane.getByRole("region", { name: "Statement" });
    await card.getByRole("combobox", { name: "Claim" }).selectOption("D-0431");
    const [download] = await Promise.all([
      bench.page.waitForEvent("download"),
      card.getByRole("button", { name: "Open a copy of this claim" }).click(),
    ]);
    const whole = [...partsOf(new Uint8Array(await readFile(await download.path())))].flat().join("\n");
    expect(whole).toContain("garage electrical fire");
    expect(whole).not.toMatch(/D-0427|D-0436|kitchen fire|<f[ >]|BATH\./);
  });
});
