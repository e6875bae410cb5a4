import { readdir, readFile } from "node:fs/promises";
import path from "node:path";

import { Spec, Validation } from "@cyclonedx/cyclonedx-library";
import { strFromU8, unzipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import * as z from "zod";

import { vendored } from "../../../rspack.config.ts";
import { distFolder, projectFolder } from "../../../scripts/project.ts";
import { packRelease, type Release, sha256 } from "../../../scripts/release/pack-release.ts";

const version = z
  .object({ version: z.string() })
  .parse(JSON.parse(await readFile(path.join(projectFolder, "package.json"), "utf8"))).version;

let release: Release;
let files: ReadonlyMap<string, Uint8Array>;

beforeAll(async () => {
  release = await packRelease(distFolder, version);
  const top = `bathsheet-${version}/`;
  files = new Map(
    Object.entries(unzipSync(release.zip)).map(([name, content]) => {
      expect(name.startsWith(top)).toBe(true);
      return [name.slice(top.length), content];
    }),
  );
});

const text = (name: string): string => strFromU8(files.get(name) ?? new Uint8Array());

describe("a release", () => {
  it("holds all that was built, but the copies for our own server", async () => {
    const built = await readdir(distFolder, { recursive: true, withFileTypes: true });
    const names = built
      .filter((entry) => entry.isFile() && !entry.name.endsWith(".gz"))
      .map((entry) => path.relative(distFolder, path.join(entry.parentPath, entry.name)).replaceAll(path.sep, "/"));
    expect([...files.keys()].filter((name) => name.startsWith("site/")).sort()).toEqual(
      [...names, "_headers"].map((name) => `site/${name}`).sort(),
    );
  });

  it("holds the papers that its page of installation names", async () => {
    const page = await readFile(path.join(projectFolder, "docs", "install.md"), "utf8");
    expect(page).toContain(release.name);
    expect(page).toContain(release.name.replace(/zip$/, "cdx.json"));
    for (const paper of ["manifest.xml", "excel-check.xml", "CHANGELOG.md", "LICENSE.txt"])
      expect(files.get(paper)?.length, paper).toBeGreaterThan(0);
    expect(text("docs/install.md")).toBe(page);
  });

  it("holds all that its pages link to", () => {
    const pages = [...files.keys()].filter((name) => name.endsWith(".md") && !name.startsWith("site/"));
    expect(pages.length).toBeGreaterThan(3);
    const links = pages.flatMap((page) =>
      [...text(page).matchAll(/\]\((?!https?:|#)([^)#]+)[^)]*\)/g)].map((link) =>
        path.posix.join(path.posix.dirname(page), link[1] ?? ""),
      ),
    );
    expect(links.length).toBeGreaterThan(3);
    expect(links.filter((link) => !files.has(link))).toEqual([]);
  });

  it("has a checksum for each of its files", () => {
    const sums = text("SHA256SUMS").trimEnd().split("\n");
    expect(sums).toEqual(
      [...files]
        .filter(([name]) => name !== "SHA256SUMS")
        .map(([name, content]) => `${sha256(content)}  ${name}`)
        .sort((a, b) => (a.slice(66) < b.slice(66) ? -1 : 1)),
    );
  });

  it("comes out the same, to the byte, when it is packed again", async () => {
    expect(sha256((await packRelease(distFolder, version)).zip)).toBe(sha256(release.zip));
  });

  it("has a bill of materials by the standard, with each package that was bundled or copied", async () => {
    const fault: unknown = await new Validation.JsonStrictValidator(Spec.Version.v1dot6).validate(release.bill);
    expect(fault).toBeNull();
    const { components } = z
      .object({
        components: z.array(
          z.object({ name: z.string(), licenses: z.array(z.unknown()), hashes: z.array(z.unknown()) }),
        ),
      })
      .parse(JSON.parse(release.bill));
    const names = components.map(({ name }) => name);
    for (const one of ["react", "@fluentui/react-input", "fflate", ...vendored.map((copied) => copied.package)])
      expect(names).toContain(one);
    for (const { name, licenses, hashes } of components) {
      expect(licenses, name).toHaveLength(1);
      expect(hashes, name).toHaveLength(1);
      expect(text("LICENSES.txt")).toContain(`${name} `);
    }
  });
});
