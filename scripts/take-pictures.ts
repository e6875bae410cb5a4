/** Takes the pictures in docs/: the workbench as it opens, and the pane in a workbook that holds no log. */
import path from "node:path";

import { chromium } from "playwright-core";

import { build } from "./build.ts";
import { projectFolder } from "./project.ts";
import { sayFailure } from "./say-failure.ts";
import { serve } from "./serve.ts";
import { ensureBrowser, headlessFlags } from "./tests/find-browser.ts";

const pictures = [
  { file: "workbench.png", query: "", size: { width: 1440, height: 860 } },
  { file: "start.png", query: "?start=empty", size: { width: 1200, height: 700 } },
];

await sayFailure(async () => {
  await build();
  const { address, close } = await serve(0);
  const browser = await chromium.launch({ executablePath: ensureBrowser(), args: headlessFlags });
  for (const { file, query, size } of pictures) {
    const page = await browser.newPage({ viewport: size });
    await page.addInitScript(() => {
      // What stays is pictured, not the offer of a tour.
      localStorage.setItem("bathsheet tour", '"seen"');
    });
    await page.goto(`${address}/${query}`);
    await page.frameLocator("iframe").getByRole("heading").first().waitFor();
    // A first visit is told that the page now opens without a network too.
    const told = page.locator(".quiet-line");
    await told.waitFor();
    await told.waitFor({ state: "detached" });
    await page.screenshot({ path: path.join(projectFolder, "docs", file) });
    await page.close();
  }
  await browser.close();
  await close();
});
