import { describe, expect, it } from "vitest";

import type { Reference } from "../../functions/reference/reference.ts";
import { tankVolume } from "../../functions/tank/tank-volume.ts";
import { unitConvert } from "../../functions/units/unit-convert.ts";
import { catalogueFaults } from "../../scripts/catalogue/catalogue-faults.ts";
import type { DefinitionFile } from "../../scripts/catalogue/definition-files.ts";
import { isRelease, releaseFaults } from "../../scripts/catalogue/released-ids.ts";

const reference: Reference = { symbols: [], where: {}, source: "By definition", cautions: [] };

const tank: DefinitionFile = {
  file: "tank/tank-volume",
  functions: new Map([["tankVolume", tankVolume]]),
  references: new Map([["tankVolumeReference", reference]]),
};

describe("what a new worksheet function still lacks", () => {
  it("is nothing where a file, its reference and its line are there", () => {
    expect(catalogueFaults([tank], ["tank/tank-volume"])).toEqual([]);
  });

  it("is its reference: the file and the export to add are named", () => {
    const [fault, ...others] = catalogueFaults([{ ...tank, references: new Map() }], ["tank/tank-volume"]);
    expect(others).toEqual([]);
    expect(fault).toContain("add functions/tank/tank-volume.reference.ts");
    expect(fault).toContain("export const tankVolumeReference: Reference");
  });

  it("is its line in the order of the help: file and line are named", () => {
    const [fault, ...others] = catalogueFaults([tank], []);
    expect(others).toEqual([]);
    expect(fault).toContain("functions/tank/tank-volume.ts");
    expect(fault).toContain('add "tank/tank-volume"');
    expect(fault).toContain("functions/help-order.ts");
  });

  it("is its file, where only the line is there", () => {
    const [fault, ...others] = catalogueFaults([tank], ["tank/tank-volume", "tank/tank-depth"]);
    expect(others).toEqual([]);
    expect(fault).toContain("functions/tank/tank-depth.ts defines no function");
  });

  it("is a file of its own, where two are in one, and the function of a reference that stands alone", () => {
    const both = new Map([...tank.functions, ["unitConvert", unitConvert] as const]);
    expect(catalogueFaults([{ ...tank, functions: both }], ["tank/tank-volume"])).toEqual([
      expect.stringContaining("tankVolume and unitConvert"),
    ]);
    expect(catalogueFaults([{ ...tank, functions: new Map() }], [])).toEqual([
      expect.stringContaining("functions/tank/tank-volume.reference.ts stands alone"),
    ]);
  });

  it("is one id and one line: a second of either is named", () => {
    const copy = { ...tank, file: "tank/copy" };
    expect(catalogueFaults([tank, copy], ["tank/tank-volume", "tank/copy"])).toEqual([
      expect.stringContaining("functions/tank/copy.ts defines BATH.TANKVOLUME, which another file defines too"),
    ]);
    expect(catalogueFaults([tank], ["tank/tank-volume", "tank/tank-volume"])).toEqual([
      expect.stringContaining("twice"),
    ]);
  });
});

describe("the list of released ids", () => {
  it("takes no notice of a function that is not released yet", () => {
    expect(releaseFaults([], ["DOSE"], false)).toEqual([]);
    expect(releaseFaults(["DOSE"], ["DOSE", "TANKDEPTH"], false)).toEqual([]);
  });

  it("holds on to a released id that the catalogue lost", () => {
    expect(releaseFaults(["DOSE", "SHARE"], ["DOSE"], false)).toEqual([expect.stringContaining("BATH.SHARE")]);
  });

  it("wants every id once the changelog calls its newest entry released", () => {
    expect(isRelease("# Changelog\n\n## 0.2.0 (unreleased)\n\n## 0.1.0 (2026-12-01)\n")).toBe(false);
    expect(isRelease("# Changelog\n\n## 0.1.0 (2026-12-01)\n")).toBe(true);
    expect(() => isRelease("# Changelog\n")).toThrow(RangeError);
    expect(releaseFaults(["DOSE"], ["DOSE", "SHARE"], true)).toEqual([expect.stringContaining("BATH.SHARE")]);
  });
});
