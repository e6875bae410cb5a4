import { DataPieRegular } from "@fluentui/react-icons/svg/data-pie";

import { editLog } from "../../excel/log-workbook.ts";
import type { LogEdit } from "../../excel/record/log-edit.ts";
import type { Receipt } from "../../excel/record/receipt.ts";
import type { Action } from "../record/action.ts";

/** Shares a bath's costs among the claims that were in it: basis and the rows of claims in one batch. */
export const shareBath: Action<LogEdit, Receipt> = {
  name: "Share out this bath",
  icon: DataPieRegular,
  needs: "bath",
  run: editLog,
};
