import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

import { describe, expect, it } from "vitest";

import packageFile from "../../package.json" with { type: "json" };
import { identityFaults, manifestFaults, manifestFor, manifestImages } from "../../scripts/build/manifest.ts";
import { projectFolder } from "../../scripts/project.ts";

const development = "https://localhost:3000";
const manifest = manifestFor(development);

/** Faults of who the add-in says it is, as Microsoft's own reader finds them in a file of this text. */
async function identityFaultsIn(xml: string): Promise<readonly string[]> {
  const folder = mkdtempSync(path.join(tmpdir(), "manifest-"));
  try {
    const file = path.join(folder, "manifest.xml");
    writeFileSync(file, xml);
    return await identityFaults(file, packageFile.version);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe("the manifest", () => {
  it("has no fault that Office's XML schema would let through", () => {
    expect(manifestFaults(manifest)).toEqual([]);
  });

  it("names only images that exist, each as many pixels wide and high as its name says", () => {
    const images = manifestImages(manifest, development);
    expect(images.length).toBeGreaterThanOrEqual(4);
    for (const image of images) {
      const bytes = readFileSync(path.join(projectFolder, image));
      const size = Number(/icon-(\d+)/.exec(image)?.[1]);
      expect([image, bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([image, size, size]);
    }
  });

  it("moves every address when it is built for another place", () => {
    const moved = manifestFor("https://bath.example.com/add-in");
    expect(moved).not.toContain("localhost");
    expect(manifestFaults(moved)).toEqual([]);
    expect(moved).toContain("https://bath.example.com/add-in/taskpane.html");
  });

  it("gives the functions the namespace BATH and one shared long-lived runtime", () => {
    expect(manifest).toMatch(/<bt:String id="Functions.Namespace" DefaultValue="BATH"\/>/);
    expect(manifest.match(/<Runtime /g)).toHaveLength(1);
    expect(manifest).toMatch(/<Runtime resid="Pane.Url" lifetime="long"\/>/);
  });

  it.each([
    [
      "a plain-http address",
      (xml: string) => xml.replace(`${development}/taskpane.html`, "http://localhost/taskpane.html"),
      /plain-http/,
    ],
    ["a missing 80 px icon", (xml: string) => xml.replace(/<bt:Image size="80"[^>]*>/, ""), /80 px/],
    [
      "a dangling resid",
      (xml: string) => xml.replace('resid="Group.Label"', 'resid="Gone.Label"'),
      /Gone.Label names no resource/,
    ],
  ])("is refused with %s", (_, spoil, message) => {
    expect(manifestFaults(spoil(manifest)).join("; ")).toMatch(message);
  });

  const schema = path.join(process.env["OFFICE_SCHEMAS"] ?? "", "OfficeAppManifestV1_1.xsd");
  const canValidate = existsSync(schema) && spawnSync("xmllint", ["--version"]).status === 0;
  it.skipIf(!canValidate)("is valid by Office's XML schema [needs xmllint and Office's schemas]", () => {
    const { status, stderr } = spawnSync(
      "xmllint",
      ["--noout", "--schema", schema, path.join(projectFolder, "manifest.xml")],
      { encoding: "utf8" },
    );
    expect([status, stderr]).toEqual([0, expect.stringMatching(/validates\s*$/)]);
  });

  it("says who it is: a GUID, the version of the package, Excel alone", async () => {
    expect(await identityFaultsIn(manifest)).toEqual([]);
  });

  it.each([
    ["an upper-case id", (xml: string) => xml.replace("38749ad2", "38749AD2"), /GUID/],
    [
      "another version than the package's",
      (xml: string) => xml.replace(/<Version>[^<]*</, "<Version>0.0.1.0<"),
      /Version is 0\.0\.1\.0/,
    ],
    [
      "another host beside Excel",
      (xml: string) => xml.replace('<Host Name="Workbook"/>', '<Host Name="Workbook"/><Host Name="Document"/>'),
      /Workbook, Document/,
    ],
  ])("is refused with %s", async (_, spoil, message) => {
    expect((await identityFaultsIn(spoil(manifest))).join("; ")).toMatch(message);
  });
});
