/** @module-tag landing */
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

import { catalogue } from "../../functions/catalogue.ts";
import { serve } from "../../scripts/serve.ts";
import { ensureBrowser, headlessFlags } from "../../scripts/tests/find-browser.ts";
import { axeFaultsIn, wcagTags } from "./session/axe-faults.ts";

let browser: Browser;
let server: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  server = await serve(0);
  browser = await chromium.launch({ executablePath: ensureBrowser(), args: headlessFlags });
});

afterAll(async () => {
  await browser.close();
  await server.close();
});

async function open(options: BrowserContextOptions = {}, anchor = ""): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  await page.goto(`${server.address}/reference.html${anchor}`);
  return page;
}

const shown = (page: Page): Promise<string[]> => page.locator(".function:visible h3").allTextContents();

describe("the reference page in a browser", () => {
  it.each([
    [360, "dark"],
    [1280, "light"],
  ] as const)("has no accessibility fault and never scrolls sideways at %i px (%s)", async (width, colorScheme) => {
    const page = await open({ viewport: { width, height: 800 }, colorScheme });
    expect(await axeFaultsIn(page, { tags: [...wcagTags, "best-practice"] })).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(
      0,
    );
    await page.context().close();
  });

  it("asks nothing of any other place, and breaks no rule of its own policy", async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    const asked: string[] = [];
    const faults: string[] = [];
    page.on("request", (request) => asked.push(new URL(request.url()).origin));
    page.on("console", (message) => {
      if (message.type() === "error") faults.push(message.text());
    });
    page.on("pageerror", (error) => faults.push(error.message));
    await page.goto(`${server.address}/reference.html`);
    await page.getByRole("searchbox").fill("dose");
    expect([...new Set(asked)]).toEqual([server.address]);
    expect(faults).toEqual([]);
    await context.close();
  });

  it("finds functions by what their help says, and goes to the one that is named", async () => {
    const page = await open();
    const search = page.getByRole("searchbox", { name: "Search the functions" });
    await search.fill("BATH.jardose");
    expect(await shown(page)).toEqual(["JARDOSE"]);
    await search.press("Enter");
    expect(new URL(page.url()).hash).toBe("#jardose");
    await search.fill("zebra");
    expect(await shown(page)).toEqual([]);
    expect(await page.getByRole("status").textContent()).toContain("No function says that");
    await page.evaluate(() => {
      location.hash = "#dose";
    });
    await page.locator("#dose").waitFor({ state: "visible" });
    expect(await search.inputValue()).toBe("");
    await page.context().close();
  });

  it("shows every function to a reader without script, at the place of its anchor", async () => {
    const page = await open({ javaScriptEnabled: false, viewport: { width: 360, height: 800 } }, "#topup");
    expect(await shown(page)).toHaveLength(catalogue.length);
    expect(await page.getByRole("searchbox").count()).toBe(0);
    expect((await page.locator("#topup").boundingBox())?.y).toBeLessThan(200);
    await page.context().close();
  });

  it("prints without the search field, on white", async () => {
    const page = await open({ colorScheme: "dark" });
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    expect(await page.getByRole("searchbox").count()).toBe(0);
    expect(await page.locator("body").evaluate((body) => getComputedStyle(body).backgroundColor)).toBe(
      "rgb(255, 255, 255)",
    );
    await page.context().close();
  });
});
