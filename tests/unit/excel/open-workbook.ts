import * as library from "@odoo/o-spreadsheet";
import { inject } from "vitest";

import { catalogue } from "../../../functions/catalogue.ts";
import { functionsMetadata } from "../../../scripts/build/functions-metadata.ts";
import { answerCell } from "../../../src/excel/functions/cell-boundary.ts";
import { createHost, type Host } from "../../../src/workbench/host/create-host.ts";
import { type Judge, judgedBy } from "./judge/judged-excel.ts";

/**
 * A blank workbook in the stand-in host, with the worksheet functions, behind the globals that src/excel speaks to:
 * the stand-in's own objects, or Microsoft's, whichever judge the test project names.
 */
export function openWorkbook(judge: Judge = inject("judge") ?? "stand-in"): Host {
  // The grid library reports every model it makes.
  console.debug = () => undefined;
  const host = createHost(library);
  Object.assign(globalThis, { Office: host.Office, CustomFunctions: host.CustomFunctions, ...judgedBy(judge, host) });
  host.loadFunctions(functionsMetadata("https://localhost/"));
  for (const fn of catalogue)
    host.CustomFunctions.associate(fn.id, (...received: readonly unknown[]) => answerCell(fn, received));
  return host;
}
