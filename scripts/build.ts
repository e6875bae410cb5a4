import { readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import webpack from "webpack";
import { configuration } from "../webpack.config.ts";
import { playedWeek } from "./demo-week-state.ts";
import { functionsMetadata } from "./functions-metadata.ts";
import { manifestFor } from "./manifest.ts";
import { baseUrl, distFolder } from "./project.ts";
import { referencePage } from "./reference-page.ts";
import { sayFailure } from "./say-failure.ts";

async function bundle(): Promise<void> {
  const compiler = webpack(configuration("production"));
  const stats = await new Promise<webpack.Stats>((resolve, reject) => {
    compiler.run((error, result) => {
      if (error) reject(error);
      else if (result) resolve(result);
      else reject(new Error("webpack gave neither a result nor an error"));
    });
  });
  await new Promise<void>((resolve, reject) => {
    compiler.close((error) => { if (error) reject(error); else resolve(); });
  });
  if (stats.hasErrors()) throw new Error(stats.toString({ all: false, errors: true, errorDetails: true }));
  console.log(stats.toString({ all: false, assets: true, warnings: true, groupAssetsByPath: true }));
}

/** Fills dist/: bundles, pages, functions.json, reference page, manifest, the workbench's opening state and the invented week. */
export async function build(): Promise<void> {
  const address = baseUrl();
  await bundle();
  const write = (name: string, text: string): Promise<void> => writeFile(path.join(distFolder, name), text);
  await write("functions.json", JSON.stringify(functionsMetadata(address), null, 2));
  await write("reference.html", referencePage());
  await write("manifest.xml", manifestFor(address));
  const functionsScript = await readFile(path.join(distFolder, "functions.js"), "utf8");
  const { state, content } = await playedWeek(functionsScript);
  await write("demo-week.json", JSON.stringify(state));
  await write("demo-week-log.json", JSON.stringify(content));
}

if (process.argv[1] === import.meta.filename) await sayFailure(build);
