import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import path from "node:path";

import { type Configuration, rspack, type Stats } from "@rspack/core";

import { addInBundles, functionsBundle } from "../../rspack.config.ts";
import { baseUrl, distFolder } from "../project.ts";
import { referencePage } from "../reference-page/reference-page.ts";
import { compressFiles } from "./compress-files.ts";
import { functionsMetadata } from "./functions-metadata.ts";
import { manifestFor } from "./manifest.ts";
import { weekFiles } from "./typed-week.ts";

async function bundle(configuration: Configuration): Promise<void> {
  const compiler = rspack(configuration);
  const stats = await new Promise<Stats>((resolve, reject) => {
    compiler.run((error, result) => {
      if (error) reject(error);
      else if (result) resolve(result);
      else reject(new Error("rspack gave neither a result nor an error"));
    });
  });
  await new Promise<void>((resolve, reject) => {
    compiler.close((error) => {
      if (error) reject(error);
      else resolve();
    });
  });
  if (stats.hasErrors()) throw new Error(stats.toString({ all: false, errors: true, errorDetails: true }));
  console.log(stats.toString({ all: false, assets: true, warnings: true, groupAssetsByPath: true }));
}

const write = (name: string, text: string): Promise<void> => writeFile(path.join(distFolder, name), text);

async function writeWeek(): Promise<void> {
  const week = await weekFiles(await readFile(path.join(distFolder, "functions.js"), "utf8"));
  for (const [name, text] of Object.entries(week)) await write(name, text);
}

async function writePages(): Promise<void> {
  const address = baseUrl();
  await write("functions.json", JSON.stringify(functionsMetadata(address), null, 2));
  await write("reference.html", referencePage());
  await write("manifest.xml", manifestFor(address));
}

/**
 * Fills dist/: bundles, pages, functions.json, reference page, manifest, the workbench's opening state and the invented
 * week, and compressed copies. The functions come first, as the week is typed with them while the rest is bundled.
 */
export async function fillDist(): Promise<void> {
  await rm(distFolder, { recursive: true, force: true });
  await mkdir(distFolder, { recursive: true });
  await bundle(functionsBundle("production"));
  await Promise.all([writeWeek(), bundle(addInBundles("production")), writePages()]);
  await compressFiles(distFolder);
}
