import { mkdir } from "node:fs/promises";
import path from "node:path";

import { chromium } from "playwright-core";

import { build } from "./build.ts";
import { projectFolder } from "./project.ts";
import { serve } from "./serve.ts";
import { ensureBrowser, headlessFlags } from "./tests/find-browser.ts";

/** Takes the README's picture of the workbench as it opens. */
await build();
const { address, close } = await serve(0);
const browser = await chromium.launch({ executablePath: ensureBrowser(), args: headlessFlags });
const page = await browser.newPage({ viewport: { width: 1440, height: 860 } });
await page.goto(address);
await page.frameLocator("iframe").getByRole("heading").first().waitFor();
await page.waitForTimeout(1500);
// A first visit is told that the page now opens without a network too.
const told = page.locator(".quiet-line");
await told.waitFor();
await told.waitFor({ state: "detached" });
const folder = path.join(projectFolder, "docs");
await mkdir(folder, { recursive: true });
await page.screenshot({ path: path.join(folder, "workbench.png") });
await browser.close();
await close();
