import * as z from "zod/mini";

import type { ReadRequest } from "../../files/read/read-worker.ts";
import type { Loss } from "../../files/read/reading.ts";
import { readState } from "../../state/read-state.ts";
import type { WorkbookState } from "../../state/workbook-state.ts";
import type { GivenValues } from "../host/state/try-out.ts";
import { workerFault } from "./worker-fault.ts";

/** What a file holds, before anything is opened. */
export interface FoundWorkbook {
  readonly state: WorkbookState;
  /** What the file gives beside formulas that the grid may work out otherwise. */
  readonly values: GivenValues;
  readonly losses: readonly Loss[];
  /** What was changed to make it fit, in sentences. */
  readonly changes: readonly string[];
  /** Of a job log: the version and the units. */
  readonly ownLog?: { readonly version: number; readonly system: string };
}

/** Why a file is not opened, in sentences for the person. */
export class FileNotRead extends Error {}

const opened = z.object({
  state: z.unknown(),
  values: z.record(
    z.string(),
    z.array(z.nullable(z.union([z.string(), z.number(), z.boolean(), z.object({ error: z.string() })]))),
  ),
  losses: z.array(z.object({ what: z.string(), sheet: z.exactOptional(z.string()) })),
  changes: z.array(z.string()),
  ownLog: z.optional(z.object({ version: z.number(), system: z.string() })),
});

const answer = z.union([z.object({ refused: z.string() }), z.object({ opened })]);

function found(given: unknown): FoundWorkbook {
  const read = answer.parse(given);
  if ("refused" in read) throw new FileNotRead(read.refused);
  const { state, ownLog, ...more } = read.opened;
  return { ...more, state: readState(state), ...(ownLog === undefined ? {} : { ownLog }) };
}

/** Reads a file in a worker, which is loaded for it and gone afterwards. Rejects with FileNotRead. */
export async function readFile(file: Blob, functions: readonly string[]): Promise<FoundWorkbook> {
  const request: ReadRequest = { file: new Uint8Array(await file.arrayBuffer()), functions };
  const worker = new Worker("read-workbook.js");
  try {
    return await new Promise<FoundWorkbook>((resolve, reject) => {
      worker.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
        try {
          resolve(found(data));
        } catch (error) {
          reject(error instanceof Error ? error : new Error(String(error)));
        }
      });
      worker.addEventListener("error", (event) => {
        event.preventDefault();
        reject(
          new FileNotRead(
            `The file could not be read (${workerFault(event) ?? "its reader did not load"}). Nothing was changed.`,
          ),
        );
      });
      worker.postMessage(request, [request.file.buffer]);
    });
  } finally {
    worker.terminate();
  }
}
