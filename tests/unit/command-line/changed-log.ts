import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

import { planOf } from "../../../src/command-line/job/write-log.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { cellAddress } from "../../../src/joblog/layout/addresses.ts";

/** A log's file with the parts of such a name changed. */
export function changed(file: Uint8Array, part: RegExp, change: (text: string) => string): Uint8Array {
  const parts = unzipSync(file);
  const names = Object.keys(parts).filter((name) => part.test(name));
  let done = 0;
  for (const name of names) {
    const before = strFromU8(parts[name] ?? new Uint8Array());
    const after = change(before);
    if (after !== before) done += 1;
    parts[name] = strToU8(after);
  }
  if (done === 0) throw new Error("The test changed nothing.");
  return zipSync(parts, { level: 0 });
}

/** A log in US units as if it were of another version. */
export function ofVersion(file: Uint8Array, number: string): Uint8Array {
  const cell = jobLog.sheets.flatMap(({ fields }) => fields).find(({ id }) => id === "logVersion");
  const plan = planOf({ log: 1, system: "US" });
  const place = plan.names.find(({ name }) => name === cell?.name);
  const sheet = plan.sheets.findIndex(({ name }) => name === place?.sheet) + 1;
  const address = cellAddress(place?.row ?? 0, place?.column ?? 0);
  const inCell = new RegExp(`(<c r="${address}"[^>]*><v>)[^<]*`);
  return changed(file, new RegExp(`worksheets/sheet${String(sheet)}\\.xml$`), (text) =>
    text.replace(inCell, `$1${number}`),
  );
}
