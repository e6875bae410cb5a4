import { readFile } from "node:fs/promises";
import path from "node:path";
import { gzipSync } from "node:zlib";

import { distFolder } from "./project.ts";
import { sayFailure } from "./say-failure.ts";

/** Most bytes that a bundle may have on the way to a user, compressed as web servers do. */
export const sizeBudget: Readonly<Record<string, number>> = { "functions.js": 60_000, "taskpane.js": 250_000 };

/** Bytes of a file after gzip at its usual level. */
export function gzipSize(content: Uint8Array): number {
  return gzipSync(content).length;
}

/** What is wrong with a bundle's size, in a sentence; nothing where it is within its budget. */
export function overBudget(name: string, content: Uint8Array): string | undefined {
  const allowed = sizeBudget[name];
  if (allowed === undefined) throw new RangeError(`${name} has no budget`);
  const size = gzipSize(content);
  return size <= allowed ? undefined : `${name} has ${String(size)} bytes after gzip and may have ${String(allowed)}`;
}

async function checkSizes(): Promise<void> {
  const faults: string[] = [];
  for (const name of Object.keys(sizeBudget)) {
    const content = await readFile(path.join(distFolder, name));
    console.log(`${name}: ${String(gzipSize(content))} bytes after gzip, at most ${String(sizeBudget[name])}`);
    faults.push(...[overBudget(name, content)].filter((fault) => fault !== undefined));
  }
  if (faults.length > 0) throw new Error(faults.join("; "));
}

if (process.argv[1] === import.meta.filename) await sayFailure(checkSizes);
