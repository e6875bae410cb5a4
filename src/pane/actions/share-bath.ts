import { DataPieRegular } from "@fluentui/react-icons/svg/data-pie";
import { changeLog, type LogChanges } from "../../excel/change-log.ts";
import type { Action } from "./action.ts";

/** Shares a bath's costs among the claims that were in it: bath, basis and the list of claims in one batch. */
export const shareBath: Action<LogChanges, undefined> = {
  name: "Share out this bath",
  icon: DataPieRegular,
  needs: "bath",
  run: async (changes) => {
    await changeLog(changes);
    return undefined;
  },
};
