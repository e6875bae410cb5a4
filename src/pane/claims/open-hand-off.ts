import { DocumentCopyRegular } from "@fluentui/react-icons/svg/document-copy";

import type { Action } from "../record/action.ts";

/** Opens a copy of the workbook that holds figures and no formula, for someone without Bathsheet. */
export const openHandOff: Action<undefined, void> = {
  name: "Open a hand-off copy",
  icon: DocumentCopyRegular,
  needs: "log",
  run: async () => {
    const { openHandOffCopy } = await import(/* webpackChunkName: "hand-off" */ "../../excel/hand-off.ts");
    await openHandOffCopy();
  },
};
