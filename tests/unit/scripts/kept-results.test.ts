import { mkdir, mkdtemp, readFile, rename, rm, utimes, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { gunzipSync } from "node:zlib";

import { afterEach, beforeEach, describe, expect, it } from "vitest";

import { compressFiles } from "../../../scripts/build/compress-files.ts";
import { fingerprintOfFiles, fingerprintOfTexts } from "../../../scripts/build/fingerprint.ts";

let folder: string;

beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "kept-results-"));
  await mkdir(path.join(folder, "src", "deep"), { recursive: true });
  await writeFile(path.join(folder, "src", "deep", "one.ts"), "one");
  await writeFile(path.join(folder, "src", "two.ts"), "two");
});

afterEach(async () => {
  await rm(folder, { recursive: true, force: true });
});

const fingerprint = (): Promise<string> => fingerprintOfFiles(folder, ["src", "lock.json"]);

describe("the name of what a build reads", () => {
  it("stays when files are only touched", async () => {
    const before = await fingerprint();
    await utimes(path.join(folder, "src", "two.ts"), new Date(0), new Date(0));
    expect(await fingerprint()).toBe(before);
  });

  it.each([
    ["a file says something else", (at: string) => writeFile(path.join(at, "src", "deep", "one.ts"), "One")],
    ["a file comes", (at: string) => writeFile(path.join(at, "src", "deep", "three.ts"), "")],
    ["a file that was missing comes", (at: string) => writeFile(path.join(at, "lock.json"), "")],
    ["a file goes", (at: string) => rm(path.join(at, "src", "two.ts"))],
    [
      "a file gets another name",
      (at: string) => rename(path.join(at, "src", "two.ts"), path.join(at, "src", "too.ts")),
    ],
  ])("changes when %s", async (_, change) => {
    const before = await fingerprint();
    await change(folder);
    expect(await fingerprint()).not.toBe(before);
  });

  it("does not let two texts run together", () => {
    expect(fingerprintOfTexts("ab", "c")).not.toBe(fingerprintOfTexts("a", "bc"));
  });
});

describe("compressed copies", () => {
  it("hold what their files hold, beside them, and leave pictures alone", async () => {
    await writeFile(path.join(folder, "src", "page.html"), "<p>degrees °F</p>");
    await writeFile(path.join(folder, "src", "icon.png"), "not a text");
    await compressFiles(folder);
    expect(gunzipSync(await readFile(path.join(folder, "src", "page.html.gz"))).toString()).toBe("<p>degrees °F</p>");
    await expect(readFile(path.join(folder, "src", "icon.png.gz"))).rejects.toThrow(/ENOENT/);
  });
});
