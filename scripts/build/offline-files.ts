import { createHash } from "node:crypto";
import { readdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";

import { fingerprintOfTexts } from "./fingerprint.ts";

const worker = "service-worker.js";

/** What the page never asks for: what Office or a reader of licences asks for, and the copies for the server to send. */
const isLeftOut = (file: string): boolean =>
  file === worker ||
  /\.(?:gz|txt|md|woff)$/.test(file) ||
  /^(?:manifest\.xml|excel-check.*)$/.test(file) ||
  /^assets\/icon-(?:16|64|80)\.png$/.test(file);

/**
 * Tells the service worker which files make up the page, each with its fingerprint, and so makes it another worker when
 * any of them has changed. Call when they are all there.
 */
export async function tellOfflineFiles(folder: string): Promise<void> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const names = entries
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).replaceAll(path.sep, "/"))
    .filter((name) => !isLeftOut(name))
    .sort();
  const files = await Promise.all(
    names.map(
      async (name) =>
        [
          name,
          createHash("sha256")
            .update(await readFile(path.join(folder, name)))
            .digest("hex"),
        ] as const,
    ),
  );
  const told = { version: fingerprintOfTexts(...files.flat()).slice(0, 16), files: Object.fromEntries(files) };
  const script = await readFile(path.join(folder, worker), "utf8");
  await writeFile(path.join(folder, worker), `self.bathsheetFiles = ${JSON.stringify(told)};\n${script}`);
}
