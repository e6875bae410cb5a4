import { SaveRegular } from "@fluentui/react-icons/svg/save";
import { changeLog, type LogChanges } from "../../excel/change-log.ts";
import type { Action } from "./action.ts";

/** Writes changed limits and list rows in one batch. */
export const saveShop: Action<LogChanges, void> = { name: "Save", icon: SaveRegular, needs: "log", run: changeLog };
