import { mkdir, mkdtemp, open, readdir, readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";

import type { PlacedFile, Surroundings } from "./command.ts";
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

async function writeAll(folder: string, files: readonly PlacedFile[]): Promise<void> {
  for (const { path: beneath, content } of files) {
    const file = path.join(folder, ...beneath.split("/"));
    await mkdir(path.dirname(file), { recursive: true });
    await writeFile(file, content, { flag: "wx" });
  }
}

/** What is in a folder; undefined where there is none. */
async function namesIn(folder: string): Promise<readonly string[] | undefined> {
  try {
    return await readdir(folder);
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT") return undefined;
    throw error;
  }
}

async function requireOurs(
  folder: string,
  { replace, ours }: { readonly replace: boolean; readonly ours: readonly string[] },
): Promise<void> {
  const there = (await namesIn(folder)) ?? [];
  if (there.length > 0 && !replace)
    throw new CommandFailure(`${folder}: it is there already; --replace writes over it.`);
  const foreign = there.find((name) => !ours.includes(name));
  if (foreign !== undefined)
    throw new CommandFailure(`${folder}: it holds ${foreign}, which is none of ours, so it is not replaced.`);
}

/** Puts a whole folder in the place of one that may be there; that one comes back where it fails. */
async function putInPlace(made: string, folder: string, former: string): Promise<void> {
  const isThere = (await namesIn(folder)) !== undefined;
  if (isThere) await rename(folder, former);
  try {
    await rename(made, folder);
  } catch (error) {
    if (isThere) await rename(former, folder);
    throw error;
  }
  await rm(former, { recursive: true, force: true });
}

export const fileAccess: Pick<
  Surroundings,
  "readFile" | "writeFile" | "writeFolder" | "temporaryFolder" | "listFiles" | "isSameFile"
> = {
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
  writeFolder: async (folder, files, how) => {
    const plain = folder.replace(/[\\/]+$/, "");
    const made = `${plain}.${String(process.pid)}.part`;
    try {
      await requireOurs(folder, how);
      try {
        await mkdir(made);
        await writeAll(made, files);
        await putInPlace(made, plain, `${plain}.${String(process.pid)}.former`);
      } finally {
        await rm(made, { recursive: true, force: true });
      }
    } catch (error) {
      throw error instanceof CommandFailure ? error : failure(folder, error);
    }
  },
  temporaryFolder: async (files) => {
    const folder = await mkdtemp(path.join(tmpdir(), "bathsheet-"));
    const remove = (): Promise<void> => rm(folder, { recursive: true, force: true });
    try {
      await writeAll(folder, files);
    } catch (error) {
      await remove();
      throw failure(folder, error);
    }
    return { folder: folder.replaceAll(path.sep, "/"), remove };
  },
};
