import { open, readdir, readFile, rename, rm, stat } from "node:fs/promises";
import path from "node:path";

import type { Surroundings } from "./command.ts";
import { CommandFailure } from "./failure.ts";

/** More than any log or job holds; a larger file is not even read into memory. */
const mostBytes = 256 * 1024 * 1024;

const reasons: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file or folder",
  EACCES: "this user may not open it",
  EPERM: "this user may not open it",
  EISDIR: "it is a folder",
  ENOTDIR: "a part of its path is no folder",
  EEXIST: "it is there already; --replace writes over it",
  ENOSPC: "there is no room left for it",
  EROFS: "its disk cannot be written to",
};

function failure(file: string, error: unknown): CommandFailure {
  const code = error instanceof Error && "code" in error && typeof error.code === "string" ? error.code : "";
  return new CommandFailure(
    `${file}: ${reasons[code] ?? `it cannot be opened (${code === "" ? String(error) : code})`}.`,
  );
}

export const fileAccess: Pick<Surroundings, "readFile" | "writeFile" | "listFiles" | "isSameFile"> = {
  readFile: async (file) => {
    try {
      const { size } = await stat(file);
      if (size > mostBytes)
        throw new CommandFailure(`${file}: it has more than 256 MB, and no log or job is so large.`);
      return await readFile(file);
    } catch (error) {
      throw error instanceof CommandFailure ? error : failure(file, error);
    }
  },
  listFiles: async (folder) => {
    try {
      const entries = await readdir(folder, { recursive: true, withFileTypes: true });
      return entries
        .filter((entry) => entry.isFile())
        .map((entry) => path.join(entry.parentPath, entry.name).replaceAll(path.sep, "/"))
        .sort();
    } catch (error) {
      throw failure(folder, error);
    }
  },
  isSameFile: (one, other) => path.resolve(one) === path.resolve(other),
  writeFile: async (file, content, { replace }) => {
    const partial = `${file}.${String(process.pid)}.part`;
    try {
      // Takes the name first, so that nobody's file of this name is written over, then puts the whole file in its place.
      if (!replace) await (await open(file, "wx")).close();
      try {
        const written = await open(partial, "wx");
        try {
          await written.writeFile(content);
          await written.sync();
        } finally {
          await written.close();
        }
        await rename(partial, file);
      } catch (error) {
        await rm(partial, { force: true });
        if (!replace) await rm(file, { force: true });
        throw error;
      }
    } catch (error) {
      throw failure(file, error);
    }
  },
};
