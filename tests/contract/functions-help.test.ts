/** Where the pane keeps what its functions say to readers. */
import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";

import { afterAll, beforeAll, expect, it } from "vitest";

import { catalogue } from "../../functions/catalogue.ts";
import { addInBundles } from "../../rspack.config.ts";
import { bundle } from "../../scripts/build/bundle.ts";

let folder = "";
const bundles = new Map<string, string>();

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "pane-"));
  await bundle({
    ...addInBundles("production"),
    entry: { taskpane: "./src/pane/entry.tsx" },
    output: { path: folder, filename: "[name].js", chunkFilename: "[name].js" },
    plugins: [],
  });
  for (const name of await readdir(folder))
    if (name.endsWith(".js")) bundles.set(name, await readFile(path.join(folder, name), "utf8"));
}, 120_000);

afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

/** A part of each text that no bundler writes otherwise: no quotes, no letters beyond ASCII. */
const plainPart = (text: string): string =>
  text.split(/[^\w ,.:;()-]/).reduce((longest, part) => (part.length > longest.length ? part : longest), "");

const texts = catalogue.flatMap(({ summary, source, notes }) => [summary, source, ...notes].map(plainPart));

it("has all of it in the view that shows it", () => {
  const view = bundles.get("pane-functions.js") ?? "";
  expect(texts.filter((text) => !view.includes(text))).toEqual([]);
});

it("has none of it elsewhere, where the pane's start would wait for it", () => {
  const others = [...bundles].filter(([name]) => name !== "pane-functions.js");
  expect(others.map(([name]) => name)).toContain("taskpane.js");
  const long = texts.filter((text) => text.length > 40);
  expect(long.length).toBeGreaterThan(150);
  expect(
    others.flatMap(([name, text]) => long.filter((one) => text.includes(one)).map((one) => `${name}: ${one}`)),
  ).toEqual([]);
});
