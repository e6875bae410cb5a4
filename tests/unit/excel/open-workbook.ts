import * as library from "@odoo/o-spreadsheet";

import { catalogue } from "../../../functions/catalogue.ts";
import { functionsMetadata } from "../../../scripts/build/functions-metadata.ts";
import { answerCell } from "../../../src/excel/functions/cell-boundary.ts";
import { createHost, type Host } from "../../../src/workbench/host/create-host.ts";

/** A blank workbook in the stand-in host, with the worksheet functions, behind the globals that src/excel speaks to. */
export function openWorkbook(): Host {
  // The grid library reports every model it makes.
  console.debug = () => undefined;
  const host = createHost(library);
  Object.assign(globalThis, {
    Excel: host.Excel,
    Office: host.Office,
    CustomFunctions: host.CustomFunctions,
    OfficeExtension: host.OfficeExtension,
  });
  host.loadFunctions(functionsMetadata("https://localhost/"));
  for (const fn of catalogue)
    host.CustomFunctions.associate(fn.id, (...received: readonly unknown[]) => answerCell(fn, received));
  return host;
}
