/** Writes what follows from the definitions: catalogue, references, the README's count and, at a release, the list of ids. */
import { readFile, writeFile } from "node:fs/promises";
import path from "node:path";

import { helpOrder } from "../functions/help-order.ts";
import { catalogueFaults } from "./catalogue/catalogue-faults.ts";
import { catalogueTexts } from "./catalogue/catalogue-texts.ts";
import { countInWords } from "./catalogue/count-in-words.ts";
import { definitionFiles } from "./catalogue/definition-files.ts";
import { isRelease, releasedIds, releasedIdsFile } from "./catalogue/released-ids.ts";
import { projectFolder } from "./project.ts";
import { sayFailure } from "./say-failure.ts";

async function writeCatalogue(): Promise<void> {
  const files = await definitionFiles();
  const faults = catalogueFaults(files, helpOrder);
  if (faults.length > 0) throw new Error(faults.join("\n"));
  for (const [name, text] of Object.entries(catalogueTexts(files, helpOrder)))
    await writeFile(path.join(projectFolder, "functions", name), text);

  const readme = path.join(projectFolder, "README.md");
  const counted = (await readFile(readme, "utf8")).replace(
    /(?<=^\| Worksheet functions \| )[A-Z][a-z]+(?:-[a-z]+)?(?=: )/m,
    countInWords(helpOrder.length),
  );
  await writeFile(readme, counted);

  if (isRelease(await readFile(path.join(projectFolder, "CHANGELOG.md"), "utf8"))) {
    const ids = files.flatMap(({ functions }) => [...functions.values()].map(({ id }) => id));
    await writeFile(releasedIdsFile, `${[...new Set([...releasedIds(), ...ids])].sort().join("\n")}\n`);
  }
  console.log(`${countInWords(helpOrder.length)} worksheet functions.`);
}

await sayFailure(writeCatalogue);
