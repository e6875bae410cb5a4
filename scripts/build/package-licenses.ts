import { readdir, readFile } from "node:fs/promises";
import path from "node:path";

import * as z from "zod";

const described = z.object({ name: z.string(), version: z.string(), license: z.string() });

/** Folder of the package that a file of node_modules belongs to; undefined for our own files. */
function packageFolder(file: string): string | undefined {
  return /^.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+/.exec(file)?.[0];
}

/** License texts of packages whose repository has one and whose package leaves it out. */
const ours = path.join(import.meta.dirname, "licenses");

async function textsIn(folder: string, name: string): Promise<readonly string[]> {
  const files = (await readdir(folder)).filter((file) => /^(?:licen[cs]e|notice|third)/i.test(file)).sort();
  const paths = files.map((file) => path.join(folder, file));
  if (files.some((file) => /^licen[cs]e/i.test(file))) return paths;
  const added = `${name.replace("/", "-")}.txt`;
  return (await readdir(ours)).includes(added) ? [path.join(ours, added), ...paths] : [];
}

async function licenseOf(folder: string): Promise<string> {
  const { name, version, license } = described.parse(
    JSON.parse(await readFile(path.join(folder, "package.json"), "utf8")),
  );
  const texts = await textsIn(folder, name);
  if (texts.length === 0)
    throw new Error(`The package ${name} brings no text of its license (${license}), so it cannot be passed on.`);
  const read = await Promise.all(texts.map(async (file) => (await readFile(file, "utf8")).trim()));
  return `${name} ${version} (${license})\n\n${read.join("\n\n")}\n`;
}

/** The license texts of all packages of which files were read for a bundle. */
export async function packageLicenses(files: readonly string[]): Promise<string> {
  const folders = new Set(files.flatMap((file) => packageFolder(file) ?? []));
  const texts = await Promise.all([...folders].sort().map(licenseOf));
  return texts.join(`\n${"-".repeat(80)}\n\n`);
}
