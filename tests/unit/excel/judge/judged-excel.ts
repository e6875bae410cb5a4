/** Which objects stand behind the global `Excel` of a test. */
import { expect, inject } from "vitest";

import type { Host } from "../../../../src/workbench/host/create-host.ts";
import { type Build, objectModel } from "./object-model.ts";
import { type Request, requestExecutor } from "./request-executor.ts";

/** The stand-in judges by itself, or Microsoft's object model of one of its builds judges over it. */
export type Judge = "stand-in" | Build;

declare module "vitest" {
  interface ProvidedContext {
    readonly judge: Judge | undefined;
  }
}

/**
 * src/excel has the object model, which is stricter and calls the stand-in for all that it answers; that the stand-in's
 * own objects have each member that src/excel uses, stands in tests/contract/stand-in-members.test.ts.
 */
export function judgeOfThisFile(): Judge {
  const isOfExcel = expect.getState().testPath?.includes("/tests/unit/excel/") === true;
  return inject("judge") ?? (isOfExcel ? "web" : "stand-in");
}

/** What passes over the wire under Microsoft's object model, since the workbook was opened. */
export interface Wire {
  readonly requests: Request[];
}

const wires = new WeakMap<Host, Wire>();

/** Undefined where the stand-in judges: it has no wire. */
export function wireOf(host: Host): Wire | undefined {
  return wires.get(host);
}

/** The globals `Excel` and `OfficeExtension` over this workbook. */
export function judgedBy(judge: Judge, host: Host): { readonly Excel: unknown; readonly OfficeExtension: unknown } {
  if (judge === "stand-in") return { Excel: host.Excel, OfficeExtension: host.OfficeExtension };
  const { excel, extension, apiNames, answerWith } = objectModel(judge);
  const wire: Wire = { requests: [] };
  wires.set(host, wire);
  answerWith(() =>
    requestExecutor(host.session, apiNames, (request) => {
      wire.requests.push(request);
    }),
  );
  // Office answers these two itself, not by a request.
  const Excel: unknown = Object.create(excel, {
    createWorkbook: { value: (file?: string) => host.Excel.createWorkbook(file) },
  });
  return { Excel, OfficeExtension: extension };
}
