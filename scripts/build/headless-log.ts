import vm from "node:vm";

import * as gridLibrary from "@odoo/o-spreadsheet";

import { buildLog } from "../../src/excel/log-workbook.ts";
import { jobLog } from "../../src/joblog/job-log.ts";
import { layOut } from "../../src/joblog/layout/lay-out.ts";
import type { LogContent } from "../../src/joblog/model/definition.ts";
import type { WorkbookPlan } from "../../src/joblog/model/plan.ts";
import { createHost, type Host } from "../../src/workbench/host/create-host.ts";
import { baseUrl } from "../project.ts";
import { functionsMetadata } from "./functions-metadata.ts";

/** The grid reports every model it makes on the debug channel. */
const silenceGrid = (): void => {
  console.debug = () => undefined;
};

/** A blank workbook in the workbench's grid without a page; the built functions bundle answers its formulas. */
export function openHeadlessGrid(functionsScript: string): Host {
  silenceGrid();
  const host = createHost(gridLibrary);
  host.loadFunctions(functionsMetadata(baseUrl()));
  vm.runInNewContext(functionsScript, { CustomFunctions: host.CustomFunctions });
  return host;
}

/** Such a workbook behind the globals that the add-in's own code speaks to, as in the browser. */
function openHeadlessWorkbook(functionsScript: string): Host {
  const host = openHeadlessGrid(functionsScript);
  Object.assign(globalThis, { Excel: host.Excel, Office: host.Office, OfficeExtension: host.OfficeExtension });
  return host;
}

/** Builds a log there in one go. */
export async function buildHeadlessLog(
  functionsScript: string,
  content: LogContent,
): Promise<{ host: Host; plan: WorkbookPlan }> {
  const host = openHeadlessWorkbook(functionsScript);
  const plan = layOut(jobLog, { system: "US" }, content);
  await buildLog(plan);
  return { host, plan };
}
