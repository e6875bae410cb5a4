import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import path from "node:path";

import { addInBundles, checkBundle, functionsBundle, readerBundle, workbenchBundle } from "../../rspack.config.ts";
import { baseUrl, distFolder } from "../project.ts";
import { referencePage } from "../reference-page/reference-page.ts";
import { bundle } from "./bundle.ts";
import { compressFiles } from "./compress-files.ts";
import { functionsMetadata } from "./functions-metadata.ts";
import { checkManifestFor, manifestFor } from "./manifest.ts";
import { weekFiles } from "./typed-week.ts";

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
  await write("excel-check.xml", checkManifestFor(address));
}

/**
 * Fills dist/: bundles, pages, functions.json, reference page, manifest, the workbench's opening state and the invented
 * week, and compressed copies. The functions come first, as the week is typed with them while the rest is bundled.
 */
export async function fillDist(): Promise<void> {
  await rm(distFolder, { recursive: true, force: true });
  await mkdir(distFolder, { recursive: true });
  await bundle(functionsBundle("production"));
  await Promise.all([
    writeWeek(),
    bundle(addInBundles("production")),
    bundle(checkBundle("production")),
    bundle(readerBundle("production")),
    bundle(workbenchBundle("production")),
    writePages(),
  ]);
  await compressFiles(distFolder);
}
