/** The page that asks Excel what the add-in relies on, in the workbench, whose answers are known. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";

import { openWorkbench, type WorkbenchSession } from "./workbench-session.ts";

let bench: WorkbenchSession;

beforeAll(async () => {
  bench = await openWorkbench("?start=empty&check");
});
afterAll(async () => {
  await bench.close();
});

describe("x", () => {
  it("y", async () => {
    const { pane, page } = bench;
    await page.evaluate(() => {
      document.querySelector("main")?.style.setProperty("--pane-width", "320px");
    });
    await pane.locator("body").screenshot({ path: "/tmp/p0.png" });
    const t = Date.now();
    await pane.getByRole("button", { name: "Run the check" }).click();
    await page.waitForTimeout(1500);
    await pane.locator("body").screenshot({ path: "/tmp/p1.png" });
    await pane.getByRole("button", { name: "Run it again" }).waitFor({ timeout: 60_000 });
    console.log(Date.now() - t);
    await pane.locator("body").screenshot({ path: "/tmp/p2.png" });
    await page.emulateMedia({ colorScheme: "dark" });
    await pane.locator("summary").first().click();
    await pane.locator("body").screenshot({ path: "/tmp/p3.png" });
    await pane.getByRole("button", { name: "Copy the report" }).click();
    await page.waitForTimeout(300);
    console.log(await pane.getByRole("status").textContent());
    await pane.getByRole("button", { name: "Put it on a sheet" }).click();
    await page.waitForTimeout(500);
    console.log(await pane.getByRole("status").textContent());
    await page.screenshot({ path: "/tmp/p4.png" });
    console.log(await pane.locator("textarea").inputValue());
    console.log(bench.faults, await bench.sheets());
    expect(1).toBe(1);
  });
});
