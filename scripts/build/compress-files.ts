import { readdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { promisify } from "node:util";
import { gzip } from "node:zlib";

const compressed = promisify(gzip);

/** Kinds of files that gain by it; pictures and fonts are compressed already. */
const gains = /\.(?:js|json|html|css|xml|txt|md)$/;

/** Puts a compressed copy beside each file in a folder that gains by it, for a server to send in its place. */
export async function compressFiles(folder: string): Promise<void> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile() && gains.test(entry.name))
    .map((entry) => path.join(entry.parentPath, entry.name));
  await Promise.all(
    files.map(async (file) => {
      await writeFile(`${file}.gz`, await compressed(await readFile(file)));
    }),
  );
}
