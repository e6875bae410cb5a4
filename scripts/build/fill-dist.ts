import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import path from "node:path";

import {
  addInBundles,
  checkBundle,
  functionsBundle,
  readerBundle,
  workbenchBundle,
  writerBundle,
} from "../../rspack.config.ts";
import { baseUrl, distFolder } from "../project.ts";
import { referencePage } from "../reference-page/reference-page.ts";
import { bundle } from "./bundle.ts";
import { compressFiles } from "./compress-files.ts";
import { playedWeek, savedLog } from "./demo-week-state.ts";
import { functionsMetadata } from "./functions-metadata.ts";
import { checkManifestFor, manifestFor } from "./manifest.ts";
import { tellOfflineFiles } from "./offline-files.ts";

const write = (name: string, text: string): Promise<void> => writeFile(path.join(distFolder, name), text);

async function writeWeek(): Promise<void> {
  const { opening, end } = await playedWeek();
  await write("demo-week-log.json", JSON.stringify(end));
  const functionsScript = await readFile(path.join(distFolder, "functions.js"), "utf8");
  await write("demo-week.json", JSON.stringify(await savedLog(functionsScript, opening)));
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
 * week, the list of what works without a network, and compressed copies. The functions come first, as they work out the opening state while the rest is bundled.
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
    bundle(writerBundle("production")),
    bundle(workbenchBundle("production")),
    writePages(),
  ]);
  await tellOfflineFiles(distFolder);
  await compressFiles(distFolder);
}
