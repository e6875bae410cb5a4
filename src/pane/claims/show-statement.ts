import { DocumentTextRegular } from "@fluentui/react-icons/svg/document-text";

import { editLog } from "../../excel/log-workbook.ts";
import { showSheet } from "../../excel/show-sheet.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import type { Action } from "../record/action.ts";

/** Works the claim statement out for a claim and brings its sheet to the front, ready to print. */
export const showStatement: Action<{ readonly log: LogSnapshot; readonly claim: string }, undefined> = {
  name: "Show the statement",
  icon: DocumentTextRegular,
  needs: "log",
  run: async ({ log, claim }) => {
    const before = log.fields.statementClaim;
    if (before !== claim) await editLog({ fields: { statementClaim: { before, after: claim } } });
    await showSheet("statement");
    return undefined;
  },
};
