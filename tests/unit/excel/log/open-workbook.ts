import * as library from "@odoo/o-spreadsheet";

import { catalogue } from "../../../../functions/catalogue.ts";
import { functionsMetadata } from "../../../../scripts/build/functions-metadata.ts";
import { answerCell } from "../../../../src/excel/functions/cell-boundary.ts";
import { createHost, type Host } from "../../../../src/workbench/host/create-host.ts";
import { type Judge, judgedBy, judgeOfThisFile } from "../judge/judged-excel.ts";

/**
 * A blank workbook in the stand-in host, with the worksheet functions, behind the globals that src/excel speaks to:
 * the stand-in's own objects, or Microsoft's, whichever judge has the file.
 */
export function openWorkbook(judge: Judge = judgeOfThisFile()): Host {
  // The grid library reports every model it makes.
  console.debug = () => undefined;
  const host = createHost(library);
  Object.assign(globalThis, { Office: host.Office, CustomFunctions: host.CustomFunctions, ...judgedBy(judge, host) });
  host.loadFunctions(functionsMetadata("https://localhost/"));
  registerFunctions();
  return host;
}

/** What functions.js does when it loads. */
export function registerFunctions(): void {
  for (const fn of catalogue)
    CustomFunctions.associate(fn.id, (...received: readonly unknown[]) => answerCell(fn, received));
}
