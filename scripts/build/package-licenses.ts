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

interface BundledPackage {
  readonly name: string;
  readonly version: string;
  /** By its SPDX expression. */
  readonly license: string;
}

interface WithText extends BundledPackage {
  readonly text: string;
}

async function packageIn(folder: string): Promise<WithText> {
  const about = described.parse(JSON.parse(await readFile(path.join(folder, "package.json"), "utf8")));
  const texts = await textsIn(folder, about.name);
  if (texts.length === 0)
    throw new Error(
      `The package ${about.name} brings no text of its license (${about.license}), so it cannot be passed on.`,
    );
  const read = await Promise.all(texts.map(async (file) => (await readFile(file, "utf8")).trim()));
  return { ...about, text: read.join("\n\n") };
}

/** The packages of which files were read for a bundle, or were copied, by name. */
export async function packagesOf(files: readonly string[]): Promise<readonly WithText[]> {
  const folders = new Set(files.flatMap((file) => packageFolder(file) ?? []));
  const packages = await Promise.all([...folders].sort().map(packageIn));
  const first = (one: WithText, index: number): boolean =>
    packages.findIndex(({ name, version }) => name === one.name && version === one.version) === index;
  return packages.filter(first);
}

/** The license texts of packages, one after the other. */
export function licenseTexts(packages: readonly WithText[]): string {
  return packages
    .map(({ name, version, license, text }) => `${name} ${version} (${license})\n\n${text}\n`)
    .join(`\n${"-".repeat(80)}\n\n`);
}
