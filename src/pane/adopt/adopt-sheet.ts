import { TableEditRegular } from "@fluentui/react-icons/svg/table-edit";

import { editLog } from "../../excel/log-workbook.ts";
import { announce, checkNotCancelled } from "../../excel/long-work.ts";
import type { Receipt } from "../../excel/record/receipt.ts";
import type { Action } from "../record/action.ts";
import type { AdoptTable } from "./adopt-kinds.ts";
import type { Adoption } from "./adopt-rows.ts";

const usualBatch = 200;

export interface AdoptInput {
  readonly table: AdoptTable;
  readonly adoption: Adoption;
  /** Rows that are written in one trip, 200 unless given; between trips the work can be stopped. */
  readonly batchRows?: number;
  /** Told after every trip, so that what is in the log is never written twice and can be taken back. */
  readonly onWritten: (rows: number, receipt: Receipt) => void;
}

const counted = (count: number): string => `${String(count)} ${count === 1 ? "row" : "rows"}`;

/** Writes a sheet's rows to the log, the claims and baths that they name first, and the shares of new claims in a bath. Cancelled, it leaves whole rows. */
export const adoptSheet: Action<AdoptInput, undefined> = {
  name: "Adopt a sheet you already have",
  icon: TableEditRegular,
  needs: "log",
  run: async ({ table, adoption: { taken, before, shares }, batchRows = usualBatch, onWritten }, work = {}) => {
    for (let done = 0; done < taken.length; done += batchRows) {
      const batch = taken.slice(done, done + batchRows).map(({ cells }) => ({ table, row: cells }));
      await announce(work, {
        step: done,
        of: taken.length,
        words: `${counted(done)} of ${String(taken.length)} written`,
      });
      checkNotCancelled(
        work,
        `Cancelled: ${counted(done)} of ${String(taken.length)} are in the log, each of them whole.`,
      );
      const receipt = await editLog({
        rows: done === 0 ? [...before, ...shares, ...batch] : batch,
        idsAsGiven: true,
      });
      onWritten(done + batch.length, receipt);
    }
    return undefined;
  },
};
