import { SaveRegular } from "@fluentui/react-icons/svg/save";

import { editLog } from "../../excel/log-workbook.ts";
import type { LogEdit } from "../../excel/record/log-edit.ts";
import type { Receipt } from "../../excel/record/receipt.ts";
import type { Action } from "../record/action.ts";

/** Writes changed limits and list rows in one batch. */
export const saveShop: Action<LogEdit, Receipt> = { name: "Save", icon: SaveRegular, needs: "log", run: editLog };
