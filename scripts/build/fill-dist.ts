import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import path from "node:path";

import {
  addInBundles,
  checkBundle,
  functionsBundle,
  readerBundle,
  vendorFiles,
  workbenchBundle,
  writerBundle,
} from "../../rspack.config.ts";
import { type AboutData, aboutData } from "../../src/pane/about/about-data.ts";
import { constantRows, countConstants } from "../../tests/reference/chemistry/constants-table.ts";
import { baseUrl, distFolder, projectFolder } from "../project.ts";
import { referencePage } from "../reference-page/reference-page.ts";
import { bundle } from "./bundle.ts";
import { compressFiles } from "./compress-files.ts";
import { playedWeek, savedLog } from "./demo-week-state.ts";
import { functionsMetadata } from "./functions-metadata.ts";
import { checkManifestFor, manifestFor } from "./manifest.ts";
import { tellOfflineFiles } from "./offline-files.ts";
import { licenseTexts, packagesOf } from "./package-licenses.ts";

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

/** What the pane says of this version, and the texts of the licenses of all packages in what is served. */
async function writeAbout(files: readonly string[]): Promise<void> {
  const packages = await packagesOf(files);
  const listed = packages.map(({ name, version, license }) => ({ name, version, license }));
  const { version } = aboutData
    .pick({ version: true })
    .parse(JSON.parse(await readFile(path.join(projectFolder, "package.json"), "utf8")));
  const { constants, byStatus, confirmedBy } = countConstants(constantRows);
  const about: AboutData = {
    version,
    packages: listed,
    constants: {
      count: constants,
      confirmed: byStatus.confirmed,
      confirmedBy: confirmedBy.map(([of, count]) => [of, count]),
    },
  };
  await write("about.json", JSON.stringify(about, null, 2));
  await write("licenses.txt", licenseTexts(packages));
}

/**
 * Fills dist/: bundles, pages, functions.json, reference page, manifest, the workbench's opening state and the invented
 * week, the list of what works without a network, and compressed copies. The functions come first, as they work out the opening state while the rest is bundled.
 */
export async function fillDist(): Promise<void> {
  await rm(distFolder, { recursive: true, force: true });
  await mkdir(distFolder, { recursive: true });
  const functions = await bundle(functionsBundle("production"));
  const [bundles] = await Promise.all([
    Promise.all(
      [addInBundles, checkBundle, readerBundle, writerBundle, workbenchBundle].map((of) => bundle(of("production"))),
    ),
    writeWeek(),
    writePages(),
  ]);
  await writeAbout([functions, ...bundles, vendorFiles.map(({ from }) => from)].flat());
  await tellOfflineFiles(distFolder);
  await compressFiles(distFolder);
}
