import { readFileSync } from "node:fs";
import path from "node:path";

import { XMLParser } from "fast-xml-parser";
import { OfficeAddinManifest } from "office-addin-manifest";

import { projectFolder } from "../project.ts";

const developmentAddress = "https://localhost:3000";

/** The manifest with every address moved to where the add-in will be served from. */
export function manifestFor(address: string): string {
  return readFileSync(path.join(projectFolder, "manifest.xml"), "utf8").replaceAll(developmentAddress, address);
}

/** What tells the add-in of the checks from Bathsheet itself. */
const checkWords: readonly (readonly [ours: string, its: string])[] = [
  ["<Id>38749ad2-3b4d-4ded-9d9d-477f757b2488</Id>", "<Id>1635f6ce-17ac-4c2f-957c-9d61c4dddc6b</Id>"],
  ['<DisplayName DefaultValue="Bathsheet"/>', '<DisplayName DefaultValue="Bathsheet check"/>'],
  ["/taskpane.html", "/excel-check.html"],
  ['id="Group.Label" DefaultValue="Bathsheet"', 'id="Group.Label" DefaultValue="Bathsheet check"'],
  ['id="OpenPane.Label" DefaultValue="Bathsheet"', 'id="OpenPane.Label" DefaultValue="Check this Excel"'],
  [
    "Open the pane: what the bath needs now, forms for charges, readings and top-ups, and the function list.",
    "Open the page that tries in this Excel what Bathsheet relies on.",
  ],
  ["Bathsheet is ready", "Bathsheet check is ready"],
  [
    "Open the pane with Bathsheet on the Home tab, or type =BATH. in a cell.",
    "Choose Check this Excel on the Home tab.",
  ],
];

/**
 * The manifest of an add-in that has the same functions and, for a pane, the page of the checks. It is one of its own,
 * not a second button: a shared runtime has one pane, and only in the functions' runtime can the page see their calls.
 */
export function checkManifestFor(address: string): string {
  return checkWords.reduce((xml, [ours, its]) => {
    if (!xml.includes(ours)) throw new Error(`The manifest no longer holds ${ours}`);
    return xml.replaceAll(ours, its);
  }, manifestFor(address));
}

type XmlNode = {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlNode[];
};

function nodesOf(parsed: readonly Record<string, unknown>[]): XmlNode[] {
  return parsed.flatMap((entry) => {
    const name = Object.keys(entry).find((key) => key !== ":@" && !key.startsWith("?"));
    if (name === undefined || name === "#text") return [];
    const inner = entry[name] as readonly Record<string, unknown>[];
    return [{ name, attributes: (entry[":@"] ?? {}) as Record<string, string>, children: nodesOf(inner) }];
  });
}

function allNodes(nodes: readonly XmlNode[]): XmlNode[] {
  return nodes.flatMap((node) => [node, ...allNodes(node.children)]);
}

const resourceElements = new Set(["bt:Image", "bt:Url", "bt:String"]);

/**
 * What the XML schema does not catch: plain-http addresses, a missing 80 px icon, resource ids that
 * are used but not declared, declared but not used, or longer than Office's 32 characters.
 * Returns one sentence for each fault found.
 */
export function manifestFaults(xml: string): string[] {
  const parser = new XMLParser({
    preserveOrder: true,
    ignoreAttributes: false,
    attributeNamePrefix: "",
    parseTagValue: false,
  });
  const nodes = allNodes(nodesOf(parser.parse(xml) as Record<string, unknown>[]));
  const faults: string[] = [];

  for (const { name, attributes } of nodes) {
    const value = attributes["DefaultValue"];
    if (value !== undefined && /^http:/i.test(value)) faults.push(`${name} has the plain-http address ${value}`);
  }

  const declared = nodes.filter((node) => resourceElements.has(node.name) && node.attributes["id"] !== undefined);
  const declaredIds = new Set(declared.map((node) => node.attributes["id"]));
  const usedIds = new Set(nodes.map((node) => node.attributes["resid"]).filter((id) => id !== undefined));
  for (const id of usedIds) if (!declaredIds.has(id)) faults.push(`resid ${id} names no resource`);
  for (const id of declaredIds) if (id !== undefined && !usedIds.has(id)) faults.push(`resource ${id} is never used`);
  for (const id of [...declaredIds, ...usedIds])
    if (id !== undefined && id.length > 32) faults.push(`id ${id} is longer than 32 characters`);
  if (declaredIds.size !== declared.length) faults.push("a resource id is declared twice");

  for (const icon of nodes.filter((node) => node.name === "Icon")) {
    const sizes = icon.children.map((child) => child.attributes["size"]);
    for (const size of ["16", "32", "80"]) if (!sizes.includes(size)) faults.push(`an Icon has no ${size} px image`);
  }
  return faults;
}

/** What is wrong with who a manifest file says the add-in is: its GUID, its version against the package's, its host. */
export async function identityFaults(file: string, packageVersion: string): Promise<string[]> {
  const { id = "", version = "", hosts = [] } = await OfficeAddinManifest.readManifestFile(file);
  const faults: string[] = [];
  if (!/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/.test(id)) faults.push(`Id ${id} is not a GUID in lower case`);
  if (version !== `${packageVersion}.0`) faults.push(`Version is ${version} where package.json has ${packageVersion}`);
  if (hosts.join() !== "Workbook") faults.push(`the hosts are ${hosts.join(", ")} and not Excel alone`);
  return faults;
}

/** The image files that a manifest names, as paths under its address. */
export function manifestImages(xml: string, address: string): string[] {
  return [...xml.matchAll(/DefaultValue="([^"]+\.png)"/g)].map((match) => (match[1] ?? "").replace(`${address}/`, ""));
}
