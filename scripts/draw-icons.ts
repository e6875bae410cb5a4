import { readFile } from "node:fs/promises";
import path from "node:path";

import { chromium } from "playwright-core";

import { projectFolder } from "./project.ts";
import { ensureBrowser, headlessFlags } from "./tests/find-browser.ts";

/** Draws assets/icon.svg at the sizes that the manifest names. */
const drawing = await readFile(path.join(projectFolder, "assets/icon.svg"), "utf8");
const browser = await chromium.launch({ executablePath: ensureBrowser(), args: headlessFlags });
for (const size of [16, 32, 64, 80]) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(
    `<style>body{margin:0}svg{display:block;width:${size.toString()}px;height:${size.toString()}px}</style>${drawing}`,
  );
  await page.screenshot({ path: path.join(projectFolder, `assets/icon-${size.toString()}.png`), omitBackground: true });
}
await browser.close();
