import { readFile } from "node:fs/promises";
import path from "node:path";

import { Enums, Models, Serialize, Spec } from "@cyclonedx/cyclonedx-library";
import { PackageURL } from "packageurl-js";
import * as z from "zod";

import type { AboutData } from "../../src/pane/about/about-data.ts";
import { projectFolder } from "../project.ts";

const lockFile = z.object({ packages: z.record(z.string(), z.object({ integrity: z.string().optional() })) });

function addressOf(name: string, version: string): string {
  const [scope, rest = name] = name.startsWith("@") ? name.split("/") : [undefined];
  return new PackageURL("npm", scope, rest, version, undefined, undefined).toString();
}

/** The checksum that npm compares a package with, as hexadecimal digits. */
function checksum(integrity: string | undefined): string | undefined {
  const encoded = integrity?.split(" ").find((one) => one.startsWith("sha512-"));
  return encoded === undefined ? undefined : Buffer.from(encoded.slice("sha512-".length), "base64").toString("hex");
}

/**
 * What a release is made of, by the open standard CycloneDX 1.6 (ECMA-424) in JSON. It has neither time nor serial
 * number, so that the same release gives the same bytes.
 */
export async function billOfMaterials(version: string, packages: AboutData["packages"]): Promise<string> {
  const lock = lockFile.parse(JSON.parse(await readFile(path.join(projectFolder, "package-lock.json"), "utf8")));
  const bom = new Models.Bom();
  bom.metadata.component = new Models.Component(Enums.ComponentType.Application, "bathsheet", {
    version,
    purl: addressOf("bathsheet", version),
    bomRef: `bathsheet@${version}`,
  });
  bom.metadata.component.licenses.add(new Models.SpdxLicense("MIT"));
  for (const { name, version: packed, license } of packages) {
    const component = new Models.Component(Enums.ComponentType.Library, name, {
      version: packed,
      purl: addressOf(name, packed),
      bomRef: `${name}@${packed}`,
    });
    component.licenses.add(
      /[ ()]/.test(license) ? new Models.LicenseExpression(license) : new Models.SpdxLicense(license),
    );
    const hex = checksum(lock.packages[`node_modules/${name}`]?.integrity);
    if (hex !== undefined) component.hashes.set(Enums.HashAlgorithm["SHA-512"], hex);
    bom.components.add(component);
    bom.metadata.component.dependencies.add(component.bomRef);
  }
  const serializer = new Serialize.JsonSerializer(new Serialize.JSON.Normalize.Factory(Spec.Spec1dot6));
  return `${serializer.serialize(bom, { sortLists: true, space: 2 })}\n`;
}
