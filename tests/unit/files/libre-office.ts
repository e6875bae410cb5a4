import { execFile, spawnSync } from "node:child_process";
import { mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";

const program = "soffice";

/** Where LibreOffice is not installed the tests that need it are skipped, and their titles say why. */
export const hasLibreOffice = spawnSync(program, ["--version"], { timeout: 20_000 }).status === 0;

/** LibreOffice's setting for recalculating .xlsx files at loading: 0 stands for "always", 1 for "never". */
const recalculation = (mode: 0 | 1): string => `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>${String(mode)}</value></prop></item>
</oor:items>
`;

/** Opens an .xlsx file in LibreOffice, has it work every formula out anew, and gives the file that it saves. */
export function recalculated(file: Uint8Array): Promise<Uint8Array> {
  return saved(file, 0);
}

/** The same without working anything out: with the values that stand in the file. */
export function savedAgain(file: Uint8Array): Promise<Uint8Array> {
  return saved(file, 1);
}

async function saved(file: Uint8Array, mode: 0 | 1): Promise<Uint8Array> {
  const folder = await mkdtemp(path.join(tmpdir(), "recalculated-"));
  try {
    const settings = path.join(folder, "profile", "user");
    await mkdir(settings, { recursive: true });
    await writeFile(path.join(settings, "registrymodifications.xcu"), recalculation(mode));
    await writeFile(path.join(folder, "log.xlsx"), file);
    const profile = `-env:UserInstallation=${pathToFileURL(path.join(folder, "profile")).href}`;
    await promisify(execFile)(
      program,
      [
        profile,
        "--headless",
        "--convert-to",
        "xlsx",
        "--outdir",
        path.join(folder, "out"),
        path.join(folder, "log.xlsx"),
      ],
      { timeout: 60_000 },
    );
    return await readFile(path.join(folder, "out", "log.xlsx"));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
