import { mkdir, readFile } from "node:fs/promises";
import path from "node:path";

import { generateCertificates, getHttpsServerOptions } from "office-addin-dev-certs";

import { projectFolder } from "./project.ts";

const folder = path.join(projectFolder, ".cache", "certificate");

/**
 * A certificate for localhost that this machine trusts. Where its authority cannot be installed (no
 * right to, as in a container) the certificate is made all the same and `trustByHand` names the file
 * that the person must tell the browser or Excel to trust.
 */
export async function developmentCertificate(): Promise<{ key: Buffer; cert: Buffer; trustByHand?: string }> {
  try {
    const { key, cert } = (await getHttpsServerOptions()) as { key: Buffer; cert: Buffer };
    return { key, cert };
  } catch (error) {
    console.log(
      `The certificate's authority could not be installed: ${error instanceof Error ? error.message : String(error)}`,
    );
    const [authority, certificate, key] = ["authority.crt", "localhost.crt", "localhost.key"].map((name) =>
      path.join(folder, name),
    ) as [string, string, string];
    await mkdir(folder, { recursive: true });
    await generateCertificates(authority, certificate, key);
    return { key: await readFile(key), cert: await readFile(certificate), trustByHand: authority };
  }
}
