import { readFile } from "node:fs/promises";
import path from "node:path";

import { chromium } from "playwright-core";

import { projectFolder } from "./project.ts";
import { ensureBrowser, headlessFlags } from "./tests/find-browser.ts";

interface Icon {
  readonly name: string;
  readonly size: number;
  /** On a ground that systems may cut to a shape of theirs; they leave the middle four fifths, as the web app manifest has it. */
  readonly isCut?: boolean;
}

/** The sizes that the add-in's manifest names, and those of an installed page. */
const icons: readonly Icon[] = [
  ...[16, 32, 64, 80, 192, 512].map((size) => ({ name: `icon-${size.toString()}`, size })),
  { name: "icon-maskable-512", size: 512, isCut: true },
];

const drawing = await readFile(path.join(projectFolder, "assets/icon.svg"), "utf8");
const browser = await chromium.launch({ executablePath: ensureBrowser(), args: headlessFlags });
for (const { name, size, isCut = false } of icons) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  const drawn = isCut ? size * 0.62 : size;
  const ground = isCut ? "background:#12424e;" : "";
  await page.setContent(
    `<style>body{margin:0;${ground}display:grid;place-content:center;height:${size.toString()}px}svg{display:block;width:${drawn.toString()}px;height:${drawn.toString()}px}</style>${drawing}`,
  );
  await page.screenshot({ path: path.join(projectFolder, `assets/${name}.png`), omitBackground: !isCut });
}
await browser.close();
