import { BookOpenRegular } from "@fluentui/react-icons/svg/book-open";

import { editLog } from "../../excel/log-workbook.ts";
import type { LogEdit } from "../../excel/record/log-edit.ts";
import type { Receipt } from "../../excel/record/receipt.ts";
import type { Action } from "../record/action.ts";

/** Posts, reverses, closes or reopens: each is one batch that only adds, or fills what was blank. */
export const writeBooks: Action<LogEdit, Receipt> = {
  name: "Books",
  icon: BookOpenRegular,
  needs: "log",
  run: editLog,
};
