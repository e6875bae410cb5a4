import { createHash } from "node:crypto";
import { readdir, readFile } from "node:fs/promises";
import path from "node:path";

import { strToU8, zipSync } from "fflate";

import { aboutData } from "../../src/pane/about/about-data.ts";
import { projectFolder } from "../project.ts";
import { billOfMaterials } from "./bill-of-materials.ts";

/** A zip's times have no zone; one time for all makes the same release the same bytes. */
const packedAt = new Date(2000, 0, 1);

/**
 * For hosts that read such a file; others need not. Excel on the web asks for functions.json from a page of its own. What
 * has its contents in its name never changes; the rest is asked for anew each time, so that no two versions mix.
 */
const headersFile = `/*
  Access-Control-Allow-Origin: *
  Cache-Control: no-cache
  X-Content-Type-Options: nosniff
`;

export interface Release {
  /** The zip's name, such as bathsheet-0.1.0.zip. */
  readonly name: string;
  readonly zip: Uint8Array;
  /** The bill of materials, which is in the zip too. */
  readonly bill: string;
  /** A line for each file in the zip, as sha256sum writes and checks it. */
  readonly checksums: string;
}

async function filesIn(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).replaceAll(path.sep, "/"));
}

export function sha256(content: Uint8Array): string {
  return createHash("sha256").update(content).digest("hex");
}

const docs = path.join(projectFolder, "docs");

/**
 * A built folder as a zip to publish: `site` goes to a web server as it is, and beside it stand how to install it, the
 * manifests for Excel, the licenses and what it is made of.
 */
export async function packRelease(built: string, version: string): Promise<Release> {
  const served = (await filesIn(built)).filter((file) => !file.endsWith(".gz"));
  const read = async (file: string): Promise<Uint8Array> => new Uint8Array(await readFile(file));
  const { packages } = aboutData.parse(JSON.parse(await readFile(path.join(built, "about.json"), "utf8")));
  const bill = await billOfMaterials(version, packages);
  const site = await Promise.all(
    served.map(async (file) => [`site/${file}`, await read(path.join(built, file))] as const),
  );
  const papers = await Promise.all(
    (
      [
        ["manifest.xml", path.join(built, "manifest.xml")],
        ["excel-check.xml", path.join(built, "excel-check.xml")],
        ["LICENSES.txt", path.join(built, "licenses.txt")],
        ["LICENSE.txt", path.join(projectFolder, "LICENSE")],
        ["CHANGELOG.md", path.join(projectFolder, "CHANGELOG.md")],
        ...(await filesIn(docs)).map((file) => [`docs/${file}`, path.join(docs, file)] as const),
      ] as const
    ).map(async ([name, file]) => [name, await read(file)] as const),
  );
  const all = [
    ...site,
    ...papers,
    ["site/_headers", strToU8(headersFile)] as const,
    ["bill-of-materials.cdx.json", strToU8(bill)] as const,
  ].sort(([a], [b]) => (a < b ? -1 : 1));
  const checksums = all.map(([name, content]) => `${sha256(content)}  ${name}\n`).join("");
  const top = `bathsheet-${version}`;
  const entries = [...all, ["SHA256SUMS", strToU8(checksums)] as const];
  const zip = zipSync(Object.fromEntries(entries.map(([name, content]) => [`${top}/${name}`, content])), {
    level: 9,
    mtime: packedAt,
  });
  return { name: `${top}.zip`, zip, bill, checksums };
}
