import * as z from "zod/mini";

import type { WriteRequest } from "../../files/write/write-worker.ts";
import type { CollectedWorkbook } from "./collect-state.ts";
import { workerFault } from "./worker-fault.ts";

const answer = z.union([
  z.object({ refused: z.string() }),
  z.object({ file: z.instanceof(Uint8Array), lost: z.array(z.string()) }),
]);

type Written = Exclude<z.infer<typeof answer>, { refused: string }>;

function written(given: unknown): Written {
  const made = answer.parse(given);
  if ("refused" in made) throw new RangeError(made.refused);
  return made;
}

/** Writes an .xlsx file in a worker, which is loaded for it and gone afterwards. */
export async function writeFile({ book, sheets }: CollectedWorkbook, pause: () => Promise<void>): Promise<Written> {
  const worker = new Worker("write-workbook.js");
  const send = (request: WriteRequest): void => {
    worker.postMessage(request);
  };
  try {
    const made = new Promise<Written>((resolve, reject) => {
      worker.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
        try {
          resolve(written(data));
        } catch (error) {
          reject(error instanceof Error ? error : new Error(String(error)));
        }
      });
      worker.addEventListener("error", (event) => {
        event.preventDefault();
        const fault = workerFault(event);
        reject(
          new Error(
            fault === undefined
              ? "What writes the file did not load. Check the connection, then try again. Nothing was changed."
              : `The file could not be written (${fault}). Nothing was changed.`,
          ),
        );
      });
    });
    // It may fail while the sheets are still on their way.
    made.catch(() => undefined);
    for (const sheet of sheets) {
      send({ sheet });
      await pause();
    }
    send({ book });
    return await made;
  } finally {
    worker.terminate();
  }
}
