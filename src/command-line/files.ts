import { open, readFile, rename, rm, stat } from "node:fs/promises";

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

function failure(path: string, error: unknown): CommandFailure {
  const code = error instanceof Error && "code" in error && typeof error.code === "string" ? error.code : "";
  return new CommandFailure(
    `${path}: ${reasons[code] ?? `it cannot be opened (${code === "" ? String(error) : code})`}.`,
  );
}

export const fileAccess: Pick<Surroundings, "readFile" | "writeFile"> = {
  readFile: async (path) => {
    try {
      const { size } = await stat(path);
      if (size > mostBytes)
        throw new CommandFailure(`${path}: it has more than 256 MB, and no log or job is so large.`);
      return await readFile(path);
    } catch (error) {
      throw error instanceof CommandFailure ? error : failure(path, error);
    }
  },
  writeFile: async (path, content, { replace }) => {
    const partial = `${path}.${String(process.pid)}.part`;
    try {
      // Takes the name first, so that nobody's file of this name is written over, then puts the whole file in its place.
      if (!replace) await (await open(path, "wx")).close();
      try {
        const file = await open(partial, "wx");
        try {
          await file.writeFile(content);
          await file.sync();
        } finally {
          await file.close();
        }
        await rename(partial, path);
      } catch (error) {
        await rm(partial, { force: true });
        if (!replace) await rm(path, { force: true });
        throw error;
      }
    } catch (error) {
      throw failure(path, error);
    }
  },
};
