/** The page that asks Excel what the add-in relies on: what of the hand checks it does, and the manifest that leads to it. */
import { readFileSync } from "node:fs";
import path from "node:path";

import { describe, expect, it } from "vitest";

import { checkManifestFor, manifestFaults, manifestFor } from "../../scripts/build/manifest.ts";
import { projectFolder } from "../../scripts/project.ts";
import { excelChecks } from "../../src/excel/check/checks.ts";

const text = (file: string): string => readFileSync(path.join(projectFolder, file), "utf8");

const ids = excelChecks.map(({ id }) => id);

/** The items of the list, each on one line. */
function handChecks(): readonly string[] {
  const [, section = ""] = text("DEVELOPERS.md").split("## Hand checks in a real Excel\n");
  return section
    .split("\n\n")
    .flatMap((block) => block.split(/\n(?=- )/))
    .filter((item) => item.startsWith("- "))
    .map((item) => item.replace(/\s+/g, " "));
}

/** What an item names in backticks as a check: words joined by hyphens. */
const checksIn = (item: string): readonly string[] =>
  [...item.matchAll(/`([a-z]+(?:-[a-z0-9]+)+)`/g)].map(([, id = ""]) => id);

describe("the list of hand checks", () => {
  it("has each of its items done by checks that exist, or says that it is done by hand", () => {
    const items = handChecks();
    expect(items.length).toBeGreaterThan(5);
    expect(items.filter((item) => checksIn(item).length === 0 && !item.startsWith("- By hand: "))).toEqual([]);
    expect(items.flatMap(checksIn).filter((id) => !ids.includes(id))).toEqual([]);
  });

  it("names every check once", () => {
    expect(handChecks().flatMap(checksIn).toSorted()).toEqual(ids.toSorted());
  });
});

describe("the checks", () => {
  it("say what is asked and expected, under ids of their own", () => {
    expect(new Set(ids).size).toBe(ids.length);
    for (const { id, title, asks, expected } of excelChecks) {
      expect(id).toMatch(/^[a-z]+(-[a-z0-9]+)+$/);
      // The report has a line for each.
      for (const words of [title, asks, expected]) expect(words).toMatch(/^\S.*\S$/);
    }
  });

  it("are named rightly where the sources of what we rely on name them", () => {
    const named = [...text("docs/excel-sources.md").matchAll(/check `([^`]+)`/g)].map(([, id = ""]) => id);
    expect(named.length).toBeGreaterThan(5);
    expect(named.filter((id) => !ids.includes(id))).toEqual([]);
  });
});

describe("the manifest of the check", () => {
  const address = "https://localhost:3000";
  const [ours, its] = [manifestFor(address), checkManifestFor(address)];
  const idOf = (xml: string): string | undefined => /<Id>(.+)<\/Id>/.exec(xml)?.[1];
  const urlsOf = (xml: string): readonly string[] => [...xml.matchAll(/"(https:[^"]+)"/g)].map(([, url = ""]) => url);

  it("has no fault, and is another add-in's", () => {
    expect(manifestFaults(its)).toEqual([]);
    expect(idOf(its)).toMatch(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/);
    expect(idOf(its)).not.toBe(idOf(ours));
    expect(its).toContain('<DisplayName DefaultValue="Bathsheet check"/>');
  });

  it("leads to the page of the checks with the same functions, and to nothing else that ours does not", () => {
    expect(urlsOf(its)).toEqual(
      urlsOf(ours).map((url) => url.replace(`${address}/taskpane.html`, `${address}/excel-check.html`)),
    );
    expect(its).toContain('<Runtime resid="Pane.Url" lifetime="long"/>');
    expect(its).toContain('<bt:String id="Functions.Namespace" DefaultValue="BATH"/>');
  });
});
