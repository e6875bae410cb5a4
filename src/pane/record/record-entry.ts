import type { FluentIcon } from "@fluentui/react-icons";

import { editLog } from "../../excel/log-workbook.ts";
import type { Receipt } from "../../excel/record/receipt.ts";
import type { Action, Need } from "./action.ts";
import type { EntryForm, Meaning } from "./entry-form.ts";

/** Recording one kind of event: its form, and the write that follows it. */
export interface RecordAction extends Action<Meaning, Receipt> {
  readonly form: EntryForm;
}

/** The action of a form; its name is the form's title. */
export function recordAction(form: EntryForm, icon: FluentIcon, needs: Need): RecordAction {
  return { name: form.title, icon, needs, form, run: editLog };
}
