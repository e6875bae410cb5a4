import { createHash } from "node:crypto";
import { readdir, readFile, stat } from "node:fs/promises";
import path from "node:path";

/** The paths of all files at or beneath a path that may be missing, in an order of their own. */
async function filesOf(place: string): Promise<readonly string[]> {
  const found = await stat(place).catch(() => undefined);
  if (found === undefined) return [];
  if (!found.isDirectory()) return [place];
  const entries = await readdir(place, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => path.join(entry.parentPath, entry.name))
    .sort();
}

function shortHash(parts: readonly (string | Uint8Array)[]): string {
  const hash = createHash("sha256");
  // Each part goes in with its length, so that no two lists of parts run together to the same text.
  for (const part of parts) hash.update(`${String(Buffer.byteLength(part))}:`).update(part);
  return hash.digest("hex");
}

/** A name for what some texts say. */
export function fingerprintOfTexts(...texts: readonly string[]): string {
  return shortHash(texts);
}

/** A name for the contents of files and folders (paths from `folder`; a missing one is as good as an empty one). When they were written does not matter. */
export async function fingerprintOfFiles(folder: string, places: readonly string[]): Promise<string> {
  const files = (await Promise.all(places.map((place) => filesOf(path.join(folder, place))))).flat();
  const contents = await Promise.all(files.map((file) => readFile(file)));
  return shortHash(
    files.flatMap((file, index) => [path.relative(folder, file).replaceAll(path.sep, "/"), contents[index] ?? ""]),
  );
}
