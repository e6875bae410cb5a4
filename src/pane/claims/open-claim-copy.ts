import { DocumentPersonRegular } from "@fluentui/react-icons/svg/document-person";

import type { UnitSystem } from "../../core/units/unit-system.ts";
import { LogProblem } from "../../excel/office-problems.ts";
import type { Action } from "../record/action.ts";
import { settledLog } from "./settled-log.ts";

/** Opens a workbook of values with one claim's statement, pieces, loads and baths, which names no other claim. */
export const openClaimCopy: Action<{ readonly claim: string; readonly system: UnitSystem }, void> = {
  name: "Open a copy of this claim",
  icon: DocumentPersonRegular,
  needs: "log",
  run: async ({ claim, system }) => {
    const log = await settledLog();
    if (log === undefined)
      throw new LogProblem({
        what: "This workbook no longer has a job log.",
        remedy: "Open the log, then try again.",
      });
    const [{ claimCopy }, { openPlainCopy }] = await Promise.all([
      import(/* webpackChunkName: "hand-off" */ "../../advice/claim-copy/claim-copy.ts"),
      import(/* webpackChunkName: "hand-off" */ "../../excel/hand-off.ts"),
    ]);
    await openPlainCopy(claimCopy(log, claim, system));
  },
};
