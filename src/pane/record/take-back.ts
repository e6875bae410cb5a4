import { ArrowUndoRegular } from "@fluentui/react-icons/svg/arrow-undo";

import { takeBack } from "../../excel/log-workbook.ts";
import type { Receipt } from "../../excel/record/receipt.ts";
import type { Action } from "./action.ts";
import type { Draft } from "./entry-form.ts";
import type { EntryId } from "./forms.ts";

/** The entry recorded last: enough to take it back and to open its form again as it was. */
export interface LastEntry {
  readonly form: EntryId;
  readonly what: string;
  readonly bath: string | undefined;
  /** Every field as it stood when it was recorded. */
  readonly values: Draft;
  readonly receipt: Receipt;
}

/** Takes the last entry out of the log; refused, with nothing changed, where any of its cells was changed since. */
export const takeLastEntryBack: Action<Receipt, void> = {
  name: "Take back",
  icon: ArrowUndoRegular,
  needs: "log",
  run: takeBack,
};
