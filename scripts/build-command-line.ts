/** Writes bin/: the program `bathsheet`, the queries of its roll-up, and the licenses of the packages in it. */
import { chmod, cp, rm, writeFile } from "node:fs/promises";
import path from "node:path";

import { commandLineBundle } from "../rspack.config.ts";
import { bundle } from "./build/bundle.ts";
import { licenseTexts, packagesOf } from "./build/package-licenses.ts";
import { projectFolder } from "./project.ts";
import { sayFailure } from "./say-failure.ts";

const folder = path.join(projectFolder, "bin");
const figures = path.join(projectFolder, "src", "command-line", "rollup", "figures");

await sayFailure(async () => {
  await rm(folder, { recursive: true, force: true });
  const files = await bundle(commandLineBundle());
  await cp(figures, path.join(folder, "figures"), { recursive: true });
  await chmod(path.join(folder, "bathsheet.js"), 0o755);
  await writeFile(path.join(folder, "LICENSES.txt"), licenseTexts(await packagesOf(files)));
});
