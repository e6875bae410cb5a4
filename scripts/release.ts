/** Packs what BASE_URL will serve into release/, with its checksum and its bill of materials. */
import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import path from "node:path";

import * as z from "zod";

import { build } from "./build.ts";
import { baseUrl, distFolder, projectFolder } from "./project.ts";
import { packRelease, sha256 } from "./release/pack-release.ts";
import { sayFailure } from "./say-failure.ts";

const described = z.object({ version: z.string() });

await sayFailure(async () => {
  if (process.env["BASE_URL"] === undefined)
    throw new Error("Say where it will be served from: BASE_URL=https://your.host/path npm run release");
  const { version } = described.parse(JSON.parse(await readFile(path.join(projectFolder, "package.json"), "utf8")));
  await build();
  const { name, zip, bill } = await packRelease(distFolder, version);
  const folder = path.join(projectFolder, "release");
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  const billName = name.replace(/\.zip$/, ".cdx.json");
  await writeFile(path.join(folder, name), zip);
  await writeFile(path.join(folder, billName), bill);
  const sums = [
    [zip, name],
    [new TextEncoder().encode(bill), billName],
  ] as const;
  await writeFile(
    path.join(folder, "SHA256SUMS"),
    sums.map(([content, file]) => `${sha256(content)}  ${file}\n`).join(""),
  );
  console.log(`release/${name} (${(zip.length / 1e6).toFixed(1)} MB) is for ${baseUrl()}; put its folder site there.`);
});
