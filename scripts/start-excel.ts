import path from "node:path";

import { OfficeAddinManifest } from "office-addin-manifest";

import { build } from "./build.ts";
import { developmentCertificate } from "./development-certificate.ts";
import { distFolder } from "./project.ts";
import { sayFailure } from "./say-failure.ts";
import { portFromEnvironment, serve } from "./serve.ts";

const sideLoading = `
First with this Excel? Side-load dist/excel-check.xml, choose Check this Excel on the Home tab, and press its one button.
Remove it again before you side-load the add-in itself: both bring the functions.

Side-load dist/manifest.xml (or dist/excel-check.xml) into Excel:
  Windows  Put a copy of dist/manifest.xml in a shared folder. In Excel: File > Options > Trust Center >
           Trust Center Settings > Trusted Add-in Catalogs, add the folder's network path, tick "Show in Menu",
           restart Excel, then Home > Add-ins > More Add-ins > Shared Folder > Bathsheet.
  Mac      Copy dist/manifest.xml to ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef/ and restart
           Excel, then Insert > My Add-ins > Bathsheet.
  Web      Home > Add-ins > More Add-ins > Upload My Add-in, and choose dist/manifest.xml.
`;

await sayFailure(async () => {
  const port = portFromEnvironment();
  process.env["BASE_URL"] ??= `https://localhost:${port}`;
  const certificate = await developmentCertificate();
  const { address } = await serve(port, certificate);
  await build();
  const { displayName = "The add-in", version = "" } = await OfficeAddinManifest.readManifestFile(
    path.join(distFolder, "manifest.xml"),
  );
  console.log(`\n${displayName} ${version} is served from ${address}  (stop it with Ctrl+C)${sideLoading}`);
  if (certificate.trustByHand !== undefined)
    console.log(`Tell the browser or Excel to trust ${certificate.trustByHand} first.`);
});
