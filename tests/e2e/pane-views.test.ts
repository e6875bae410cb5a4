import { readFile } from "node:fs/promises";

import { afterAll, beforeAll, describe, expect, it } from "vitest";
import * as z from "zod";

import { openWorkbench, type WorkbenchSession } from "./session/workbench-session.ts";

let bench: WorkbenchSession;

beforeAll(async () => {
  bench = await openWorkbench();
});

afterAll(async () => {
  await bench.close();
});

const button = (name: string | RegExp) => bench.pane.getByRole("button", { name });
const main = () => bench.pane.getByRole("main");

describe("the views beside Now and Record", () => {
  it("put a tried formula in the selected cell, which then shows the same figure", async () => {
    await bench.view("Try");
    await bench.pane.getByText("Dose for a strength").click();
    await bench.pane.getByLabel("Strength", { exact: true }).first().fill("1+40");
    await bench.select("Job!P60");
    await button("Put in sheet: Dose for a strength").click();
    await bench.pane.getByText(/The formula is in/).waitFor();
    // 121.175 gal in 41 parts.
    await expect.poll(() => bench.value("Job!P60")).toBeCloseTo(121.175 / 41, 3);
  });

  it("share the bath out by the basis chosen, from its loads, to the cent", async () => {
    await bench.view("Claims");
    await bench.pane.getByLabel("Shared by").selectOption("basket-minutes");
    await button("Share out this bath").click();
    await bench.pane.getByText(/is shared out by basket-minutes/).waitFor();
    await bench.pane.getByText("Every cost of this bath is charged to someone, to the cent.").waitFor();
  });

  it("record a cost line and take it back", async () => {
    await bench.view("Claims");
    await button("Add a cost line").click();
    await bench.pane.getByRole("combobox", { name: "What" }).fill("Filter bags");
    await bench.pane.getByRole("textbox", { name: "Amount" }).fill("12.50");
    await button("Record cost line").click();
    await bench.pane.getByText("Recorded: cost line of 12.50, Filter bags.").waitFor();
    await button(/^Take back/).click();
    await bench.pane.getByRole("form", { name: "Cost line" }).waitFor();
    await button("Claims").click();
  });

  it("bring a claim's statement to the front", async () => {
    await bench.view("Claims");
    await bench.pane.getByLabel("Claim", { exact: true }).selectOption("D-0431");
    await button("Show the statement").click();
    await bench.pane.getByText(/is the statement of claim D-0431/).waitFor();
  });

  it("change a limit of the shop, and refuse one out of range beside its field", async () => {
    await bench.view("Shop");
    await button("Limits").click();
    const life = bench.pane.getByRole("textbox", { name: /^Bath old after/ });
    await life.fill("500");
    await button("Save").click();
    expect(await main().innerText()).toMatch(/"500" is out of range\. Allowed: 1 to 60/);
    await life.fill("5");
    await button("Save").click();
    await bench.pane.getByText("Saved: Limits.").waitFor();
    await button("Limits").click();
    expect(await life.inputValue()).toBe("5");
    await button("Shop").click();
  });

  it("save the shop's defaults to a file and refuse a file that is none", async () => {
    await bench.view("Shop");
    await bench.pane.getByText("As a file").click();
    const waiting = bench.page.waitForEvent("download");
    await button("Save to a file").click();
    const saved = z
      .looseObject({ limits: z.record(z.string(), z.unknown()) })
      .parse(JSON.parse(await readFile(await (await waiting).path(), "utf8")));
    expect(saved.limits["bathLife"]).toBe(5);
    await bench.pane
      .locator("input[type=file]")
      .setInputFiles({ name: "other.json", mimeType: "application/json", buffer: Buffer.from("{}") });
    await bench.pane.getByText(/no file of shop defaults/).waitFor();
    const changed = JSON.stringify({ ...saved, limits: { ...saved.limits, bathLife: 6 } });
    await bench.pane
      .locator("input[type=file]")
      .setInputFiles({ name: "shop.json", mimeType: "application/json", buffer: Buffer.from(changed) });
    await bench.pane.getByText("Bath old after: 5 → 6").waitFor();
    await button("Apply these changes").click();
    await bench.pane.getByText("Loaded: 1 change.").waitFor();
  });

  it("say when a file of the add-in does not come, and go on when asked again", async () => {
    await bench.page.route("**/pane-functions.*.js", (route) => route.abort());
    await bench.view("Functions");
    await bench.pane.getByText("This view could not be loaded.").waitFor();
    await bench.page.unroute("**/pane-functions.*.js");
    await button("Try again").click();
    await bench.pane.getByRole("searchbox").waitFor();
    await bench.page.route("**/write-workbook.js", (route) => route.abort());
    await bench.page.locator("#save-copy").click();
    await bench.page.getByRole("dialog").getByText("What writes the file did not load.").waitFor();
    await bench.page.getByRole("button", { name: "OK" }).click();
    await bench.page.unroute("**/write-workbook.js");
    const [copy] = await Promise.all([bench.page.waitForEvent("download"), bench.page.locator("#save-copy").click()]);
    expect(copy.suggestedFilename()).toBe("Demo week.xlsx");
    expect(bench.strangers).toEqual([]);
  });
});
