import { DocumentCopyRegular } from "@fluentui/react-icons/svg/document-copy";

import type { Action } from "../record/action.ts";
import { settledLog } from "./settled-log.ts";

/**
 * Opens a copy of the workbook that holds figures and no formula, for someone without Bathsheet: of the open workbook,
 * or of a file of it where Excel does not hand it over.
 */
export const openHandOff: Action<File | undefined, void> = {
  name: "Open a hand-off copy",
  icon: DocumentCopyRegular,
  needs: "log",
  run: async (saved) => {
    await settledLog();
    const { openHandOffCopy } = await import(/* webpackChunkName: "hand-off" */ "../../excel/hand-off.ts");
    await openHandOffCopy(saved === undefined ? undefined : new Uint8Array(await saved.arrayBuffer()));
  },
};
