/** Whether src/excel uses no more of Office.js than the manifest asks for, or than it asks Excel about. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

import { XMLParser } from "fast-xml-parser";
import { z } from "zod";

import { type RequiredSet, type UsedMember, usedMembers } from "./api-floor/used-sets.ts";
import { projectFolder } from "./project.ts";
import { sayFailure } from "./say-failure.ts";

/** Whether version `a` is at least version `b`: 1.10 is later than 1.9. */
export function isAtLeast(a: string, b: string): boolean {
  return a.localeCompare(b, "en", { numeric: true }) >= 0;
}

const manifest = z.object({
  OfficeApp: z.object({
    Requirements: z.object({
      Sets: z.object({ Set: z.array(z.object({ Name: z.string(), MinVersion: z.string() })) }),
    }),
  }),
});

/** The sets that a host must have for Office to offer the add-in, by name. */
export function setsOfManifest(xml: string): ReadonlyMap<string, string> {
  const parser = new XMLParser({ ignoreAttributes: false, attributeNamePrefix: "", parseAttributeValue: false });
  const { Set: sets } = manifest.parse(parser.parse(xml)).OfficeApp.Requirements.Sets;
  return new Map(sets.map(({ Name, MinVersion }) => [Name, MinVersion]));
}

/** Sets that a file's text asks Excel about before it uses them. */
function setsAskedFor(text: string): ReadonlyMap<string, string> {
  const asked = /isSetSupported\(\s*"(\w+)",\s*"([\d.]+)"/g;
  return new Map([...text.matchAll(asked)].map(([, name = "", version = ""]) => [name, version]));
}

/** Uses for which neither the manifest nor the file itself makes sure of a set, in sentences. */
export function overFloor(
  used: readonly UsedMember[],
  floor: ReadonlyMap<string, string>,
  askedIn: (file: string) => ReadonlyMap<string, string>,
): readonly string[] {
  return used.flatMap(({ member, at, sets }) => {
    const asked = askedIn(at.replace(/:\d+$/, ""));
    const isSure = ({ name, version }: RequiredSet): boolean =>
      [floor.get(name), asked.get(name)].some((sure) => sure !== undefined && isAtLeast(sure, version));
    if (sets.some(isSure)) return [];
    const wanted = sets.map(({ name, version }) => `${name} ${version}`).join(" or ");
    return [`${at}: ${member} needs ${wanted}`];
  });
}

/** The highest version of each set that is used. */
function highest(used: readonly UsedMember[]): ReadonlyMap<string, RequiredSet & { readonly member: string }> {
  const most = new Map<string, RequiredSet & { readonly member: string }>();
  for (const { member, sets } of used) {
    for (const { name, version } of sets) {
      if (!isAtLeast(most.get(name)?.version ?? "0", version)) most.set(name, { name, version, member });
    }
  }
  return most;
}

function checkApiFloor(): Promise<void> {
  const folder = path.join(projectFolder, "src", "excel");
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => path.join(folder, file));
  const used = usedMembers(files);
  const floor = setsOfManifest(readFileSync(path.join(projectFolder, "manifest.xml"), "utf8"));
  for (const { name, version, member } of highest(used).values())
    console.log(`${name} ${version} for ${member}; the manifest asks for ${floor.get(name) ?? "none"}`);
  const faults = overFloor(used, floor, (file) => setsAskedFor(readFileSync(file, "utf8")));
  if (used.length === 0) throw new Error("No use of Office.js was found, so nothing was checked.");
  if (faults.length > 0) throw new Error(`Used without being sure of it:\n${faults.join("\n")}`);
  return Promise.resolve();
}

if (process.argv[1] === import.meta.filename) await sayFailure(checkApiFloor);
